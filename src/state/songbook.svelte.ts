/** The player's own charts that are kept, by title. */
import { writeChart } from '../core/chart/write-chart.ts';
import type { ReadChartFile } from '../core/files/charts/read-musicxml.ts';
import type { writeMusicXml } from '../core/files/charts/write-musicxml.ts';
import { parseChart } from '../core/chart/parse-chart.ts';
import { writeKey } from '../core/music/keys.ts';
import type { Outcome } from '../core/base/outcome.ts';
import { problem, type Message } from '../core/words/problem.ts';
import { withMessage } from './messages.ts';
import type { ChartsPort, FilesPort, KeptChart } from './ports.ts';

/** Reading and writing files of charts: fetched when the first one is opened or saved. */
export interface ChartFiles {
  readonly read: (file: File, signal: AbortSignal) => Promise<Outcome<ReadChartFile>>;
  readonly write: typeof writeMusicXml;
}

export class Songbook {
  readonly #store: ChartsPort;
  readonly #newId: () => string;
  readonly #files: FilesPort;
  readonly #chartFiles: () => Promise<ChartFiles | null>;
  #charts = $state.raw<readonly KeptChart[]>([]);
  #notices = $state.raw<readonly Message[]>([]);
  #reading = $state.raw<AbortController | null>(null);

  constructor(ports: {
    readonly charts: ChartsPort;
    readonly files: FilesPort;
    readonly newId: () => string;
    /** null where they can't be fetched. */
    readonly chartFiles: () => Promise<ChartFiles | null>;
  }) {
    this.#store = ports.charts;
    this.#newId = ports.newId;
    this.#files = ports.files;
    this.#chartFiles = ports.chartFiles;
  }

  get charts(): readonly KeptChart[] {
    return this.#charts;
  }

  /** What could not be read, and why the last action failed, if it did. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  /** Whether a file is being read. */
  get isReading(): boolean {
    return this.#reading !== null;
  }

  /** Ends the reading of a file; nothing is changed by it. */
  stopReading(): void {
    const reading = this.#reading;
    this.#reading = null;
    reading?.abort();
  }

  /** The kept chart with this text, or null. */
  withText(chartText: string): KeptChart | null {
    return this.#charts.find((chart) => chart.chartText === chartText) ?? null;
  }

  /** The kept chart of this title, in whatever key it stands now; null where there is none. */
  called(title: string | null): KeptChart | null {
    return this.#charts.find((chart) => chart.title === title) ?? null;
  }

  async load(): Promise<void> {
    const { charts, messages } = await this.#store.list();
    this.#charts = charts;
    this.#notices = messages;
  }

  /** Keeps a chart under a title; one of the same title is written over. A chart that can't be read is not kept. */
  async keep(title: string, chartText: string): Promise<void> {
    const chart = parseChart(chartText);
    const tidy = title.trim();
    if (tidy === '' || !chart.ok) return;
    const id = this.#charts.find((kept) => kept.title === tidy)?.id ?? this.#newId();
    await this.#afterwards(
      await this.#store.save({ id, title: tidy, chartText, key: writeKey(chart.value.key) }),
    );
  }

  async rename(id: string, title: string): Promise<void> {
    const chart = this.#charts.find((kept) => kept.id === id);
    const tidy = title.trim();
    if (chart && tidy !== '') await this.#afterwards(await this.#store.save({ ...chart, title: tidy }));
  }

  async remove(id: string): Promise<void> {
    await this.#afterwards(await this.#store.remove(id));
  }

  /**
   * The chart in a file (text, MusicXML, MIDI with chord markers) as our text; null, and a notice, where there is none;
   * null alone where the reading was stopped.
   */
  async open(file: File): Promise<string | null> {
    this.stopReading();
    const reading = new AbortController();
    this.#reading = reading;
    const files = await this.#filesOfCharts();
    const read = files && (await files.read(file, reading.signal));
    if (this.#reading !== reading) return null;
    this.#reading = null;
    if (read === null) return null;
    this.#notices = read.ok ? read.value.warnings : [read.problem];
    return read.ok ? writeChart(read.value.chart) : null;
  }

  /** Downloads a chart as MusicXML. One that can't be read is not saved. */
  async save(title: string, chartText: string): Promise<void> {
    const chart = parseChart(chartText);
    const files = chart.ok ? await this.#filesOfCharts() : null;
    if (!chart.ok || files === null) return;
    const named = title.trim() || chart.value.title || 'chart';
    const score = files.write({ ...chart.value, title: chart.value.title ?? named });
    const fileName = `${named.replaceAll(/[^\p{L}\p{N} #.-]/gu, '').trim() || 'chart'}.musicxml`;
    this.#files.save(new Blob([score], { type: 'application/vnd.recordare.musicxml+xml' }), fileName);
  }

  async #filesOfCharts(): Promise<ChartFiles | null> {
    const files = await this.#chartFiles();
    if (files === null) this.#notices = [problem('site.partMissing')];
    return files;
  }

  async #afterwards(outcome: Outcome<void>): Promise<void> {
    await this.load();
    if (!outcome.ok) this.#notices = withMessage(this.#notices, outcome.problem);
  }
}
