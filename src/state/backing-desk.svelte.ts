/** A recording on the desk: its beats are found or tapped and judged by ear, a chart is put on it, and it is kept. */
import { barsIn } from '../core/beats/round.ts';
import { LEAST_TAPS } from '../core/beats/tapped-tempo.ts';
import type { Chart } from '../core/chart/chart.ts';
import { parseChart } from '../core/chart/parse-chart.ts';
import { withMeter } from '../core/chart/with-meter.ts';
import type { Outcome } from '../core/base/outcome.ts';
import type { Backings } from './backings.svelte.ts';
import { BeatEditor } from './beat-editor.svelte.ts';
import { BeatTaps } from './beat-taps.svelte.ts';
import type { ChordDesk } from './chord-desk.ts';
import { ChordFinding, type FoundAndSet } from './chord-finding.svelte.ts';
import type { AudioPort, BackingSource, FilesPort, FramesPort, OpenBacking } from './ports.ts';
import {
  beatsTable,
  clickMarks,
  freshRecord,
  placeOfDownbeat,
  withTrack,
  type BackingFields,
} from './backing-fields.ts';
import { problem, type Message } from '../core/words/problem.ts';
import { beatTrack, type BackingRecord } from './chosen-backing.ts';

/** What the desk is doing; null when it waits for the player. */
type Busy = 'reading' | 'listening' | null;

interface DeskPorts {
  readonly audio: AudioPort;
  readonly frames: FramesPort;
  readonly files: FilesPort;
  readonly backings: Backings;
  readonly newId: () => string;
}

export class BackingDesk implements ChordDesk {
  readonly #ports: DeskPorts;
  readonly editor = new BeatEditor();
  readonly finding = new ChordFinding({
    text: () => this.#record?.chartText ?? null,
    write: (chartText) => this.takeChart(chartText),
  });
  readonly taps = new BeatTaps();
  #record = $state.raw<BackingRecord | null>(null);
  #sound = $state.raw<OpenBacking | null>(null);
  #busy = $state.raw<Busy>(null);
  #problem = $state.raw<Message | null>(null);
  #playing = $state.raw(false);
  #seconds = $state.raw(0);
  /** The file of a recording that is not kept yet. */
  #fresh = $state.raw<File | null>(null);
  #written = $state.raw(false);
  #attacks: readonly number[] = [];
  #stopFrames: (() => void) | null = null;
  /** Ends what is being read and looked through. */
  #stop = new AbortController();

  constructor(ports: DeskPorts) {
    this.#ports = ports;
  }

  /** null: nothing is on the desk. */
  get record(): BackingRecord | null {
    return this.#record;
  }

  /** null until the recording is read. */
  get sound(): OpenBacking | null {
    return this.#sound;
  }

  get busy(): Busy | 'finding chords' {
    return this.finding.share === null ? this.#busy : 'finding chords';
  }

  /** What went wrong last, or null. */
  get problem(): Message | null {
    return this.#problem;
  }

  get playing(): boolean {
    return this.#playing;
  }
  /** Where the playing is, or will begin. */
  get seconds(): number {
    return this.#seconds;
  }

  get chart(): Outcome<Chart> {
    return parseChart(this.#record?.chartText ?? '');
  }

  get beatsPerBar(): number {
    return this.chart.ok ? this.chart.value.meter.beatsPerBar : 4;
  }

  /** Whether something would be lost if the desk were cleared now. */
  get changed(): boolean {
    return this.#sound !== null && (this.#fresh !== null || this.#written || this.editor.canUndo);
  }

  /** Whole bars from the first downbeat on. */
  get bars(): number {
    return barsIn(this.editor.track, this.beatsPerBar);
  }

  takeChart = (chartText: string): void => this.write({ chartText });

  takeFound(known?: FoundAndSet): void {
    if (known) this.finding.takeOver(known);
    const { kept, proposal } = this.finding;
    if (kept === null || proposal === null) return;
    const { attacks, beats } = kept.found;
    // None where the beats were given.
    if (attacks.length > 0) this.#attacks = attacks;
    this.editor.lay(beats, proposal.downbeat);
    this.takeChart(proposal.chart);
  }

  get canKeep(): boolean {
    return this.chart.ok && this.bars > 0 && this.#record !== null && this.#record.title.trim() !== '';
  }

  /**
   * Opens a new recording and finds its beats and its chords. It has no chart until one is found or written.
   * @param known what was found in it already
   */
  async openFile(file: File, known: FoundAndSet | null = null): Promise<void> {
    const id = this.#ports.newId();
    this.#fresh = file;
    const source = { id, name: file.name, file: () => Promise.resolve({ ok: true, value: file } as const) };
    const opened = await this.#open(source, freshRecord(id, file.name));
    if (opened) await (known ? this.takeFound(known) : this.findChart(null));
  }

  /** One that is kept, to correct it. */
  async openKept(id: string): Promise<void> {
    const record = this.#ports.backings.kept.find((kept) => kept.id === id);
    if (!record) return;
    this.#fresh = null;
    if (!(await this.#open(this.#ports.backings.backingSource(record), record))) return;
    // Its beats stay as they were set; the attacks are what later taps are drawn to.
    const { signal } = this.#stop;
    const found = await this.#sound?.findBeats(signal);
    if (found?.ok && !signal.aborted) this.#attacks = found.value.attacks;
  }

  /**
   * Finds beats and chords, and writes the chart that is proposed.
   * @param over beats in seconds that are kept as they are; null looks for beats too
   */
  async findChart(over: readonly number[] | null): Promise<void> {
    const sound = this.#sound;
    if (!sound || this.busy) return;
    const found = await this.finding.search(sound, over);
    if (found === null) return;
    // The beats may be found where no chord is.
    if (!found.ok && over === null && found.problem.code === 'harmony.noChords') await this.findBeats();
    if (this.#sound !== sound) return;
    this.#problem = found.ok ? null : found.problem;
    if (found.ok) this.takeFound();
  }

  async findBeats(): Promise<void> {
    const sound = this.#sound;
    if (!sound || this.busy) return;
    const { signal } = this.#stop;
    this.#busy = 'listening';
    const found = await sound.findBeats(signal);
    if (signal.aborted) return;
    this.#busy = null;
    this.#problem = found.ok ? null : found.problem;
    if (!found.ok) return;
    this.#attacks = found.value.attacks;
    this.editor.lay(found.value.beats);
    this.#click();
  }

  /** One beat, tapped to what is heard now. Does nothing while nothing plays. */
  tap(): void {
    if (this.#playing && this.#sound) this.taps.add(this.#sound.positionSeconds());
  }

  /** The taps become beats; too few of them are forgotten, and that is said. */
  useTaps(): void {
    const beats = this.taps.beats(this.#attacks);
    if (beats.length > 0) this.editor.layWithin(beats);
    this.#problem = beats.length > 0 ? null : problem('backing.tooFewTaps', { least: LEAST_TAPS });
    this.taps.forget();
    this.#click();
  }

  play(fromSeconds: number = this.#seconds): void {
    const sound = this.#sound;
    if (!sound) return;
    void this.#ports.audio.wake();
    this.#seconds = fromSeconds;
    this.#playing = true;
    sound.play(fromSeconds, this.#marks);
    this.#stopFrames ??= this.#ports.frames.each(() => (this.#seconds = sound.positionSeconds()));
  }

  pause(): void {
    this.#sound?.pause();
    this.#halt();
  }

  /** Where playing begins next. */
  goTo(seconds: number): void {
    if (this.#playing) this.play(seconds);
    else this.#seconds = seconds;
  }

  /** Moves the clicks to the beats after any change of them. */
  #click(): void {
    this.#sound?.setMarks(this.#marks);
  }

  /** Runs one action of the editor; the clicks follow the beats to their new places. */
  edit(act: (editor: BeatEditor) => void): void {
    act(this.editor);
    const { track } = this.editor;
    if (this.finding.standing !== null) this.finding.setDownbeat(placeOfDownbeat(track, this.finding.beats));
    this.#click();
  }

  write(change: Partial<BackingFields>): void {
    if (this.#record) this.#record = { ...this.#record, ...change };
    this.#written = true;
    this.#click();
  }

  setMeter = (written: string): void =>
    this.write({ chartText: withMeter(this.#record?.chartText ?? '', written) });

  /** Keeps the recording with all that was set, chooses it for the next take, and closes it here. */
  async keep(): Promise<void> {
    const record = this.#record;
    if (!record || !this.canKeep) return;
    const kept = withTrack(record, this.editor.track);
    const fresh = this.#fresh;
    this.close();
    if (fresh) await this.#ports.backings.keepFile(kept.id, fresh);
    await this.#ports.backings.save(kept);
  }

  /** Downloads the beats with their chords as the table that the command line reads. */
  saveBeats(): void {
    const chart = this.chart;
    if (!this.#record || !chart.ok || this.bars < 1) return;
    const table = beatsTable(this.#record, chart.value, this.editor.track);
    this.#ports.files.save(new Blob([table], { type: 'text/csv' }), `${this.#record.title} beats.csv`);
  }

  /** Clears the desk, and ends whatever it is doing; what was not kept is gone. */
  close(): void {
    this.#stop.abort();
    this.#stop = new AbortController();
    this.#halt();
    this.finding.forget();
    this.#sound?.dispose();
    this.#sound = this.#record = this.#fresh = null;
    this.#busy = this.#problem = null;
    this.#written = false;
    this.taps.forget();
  }

  get #marks() {
    return clickMarks(this.editor.track, this.beatsPerBar);
  }

  async #open(source: BackingSource, record: BackingRecord): Promise<boolean> {
    const fresh = this.#fresh;
    this.close();
    this.#fresh = fresh;
    const { signal } = this.#stop;
    this.#record = record;
    this.#busy = 'reading';
    const sound = await this.#ports.audio.openBacking(source, signal);
    if (signal.aborted) return false;
    this.#busy = null;
    this.#problem = sound.ok ? (sound.value.facts.warnings[0] ?? null) : sound.problem;
    if (!sound.ok) return false;
    const { durationSeconds } = sound.value.facts;
    this.#record = { ...record, durationSeconds };
    this.editor.open(beatTrack(record), durationSeconds);
    this.#sound = sound.value;
    this.#seconds = 0;
    this.#attacks = [];
    sound.value.onEnded(() => this.#halt());
    return true;
  }

  #halt(): void {
    this.#playing = false;
    this.#stopFrames?.();
    this.#stopFrames = null;
  }
}
