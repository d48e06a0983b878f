/** Takes that come in from files, and all takes as one file. */
import { failure, type Outcome } from '../core/base/outcome.ts';
import type { ByteSource } from '../core/files/bytes/bytes.ts';
import { readKeptReport } from '../core/kept-report.ts';
import { countTake } from '../core/practice/take-counts.ts';
import { LibraryWriter, takesInLibrary } from '../core/take-file/library-file.ts';
import { isTakeFile, readTakeFile } from '../core/take-file/read-take-file.ts';
import { writeTakeFile } from '../core/take-file/write-take-file.ts';
import { notice, problem, type Message } from '../core/words/problem.ts';
import { blobBytes, isUnreadable } from './blob-bytes.ts';
import { fileStem } from './export-files.ts';
import type { Library } from './library.svelte.ts';
import { withMessage } from './messages.ts';
import type { Arrival, ArrivalsPort, FileSink, LargeFilesPort } from './file-ports.ts';
import type { TakesPort } from './ports.ts';
import type { TakeId } from './take.ts';

/** How far a long piece of work has come. */
export interface TakesDone {
  readonly what: 'coming in' | 'going out';
  readonly done: number;
  readonly of: number;
}

/** So many bad files are named one by one. */
const MOST_NAMED = 5;

export class LibraryFiles {
  readonly #takes: TakesPort;
  readonly #arrivals: ArrivalsPort;
  readonly #files: LargeFilesPort;
  readonly #library: Library;
  readonly #today: () => Date;
  #busy = $state.raw<TakesDone | null>(null);
  #stopped = false;
  #notices = $state.raw<readonly Message[]>([]);

  constructor(ports: {
    readonly takes: TakesPort;
    readonly arrivals: ArrivalsPort;
    readonly files: LargeFilesPort;
    readonly library: Library;
    readonly today: () => Date;
  }) {
    this.#takes = ports.takes;
    this.#arrivals = ports.arrivals;
    this.#files = ports.files;
    this.#library = ports.library;
    this.#today = ports.today;
  }

  /** null where nothing is under way. */
  get busy(): TakesDone | null {
    return this.#busy;
  }

  /** Ends what is under way after the take that is in hand. What came in is here; a file that is half written is not kept. */
  stop(): void {
    this.#stopped = true;
  }

  /** What came in the last time, and why other files did not. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  /**
   * Takes from take files and libraries. A bad file changes nothing and is told; the others come in all the same.
   * @returns the take, where one alone was wanted and is here now
   */
  async bringIn(files: readonly File[]): Promise<TakeId | null> {
    if (this.#busy !== null) return null;
    this.#stopped = false;
    this.#notices = [];
    const arrivals: Arrival[] = [];
    let bad = 0;
    const take = (arrived: Outcome<Arrival>) => {
      if (arrived.ok) arrivals.push(arrived.value);
      else if (++bad <= MOST_NAMED) this.#tell(arrived.problem);
    };
    for (const file of files) {
      try {
        await this.#bringAll(blobBytes(file, file.name), take);
      } catch (error) {
        if (!isUnreadable(error)) throw error;
        take(failure(problem('file.gone', { name: file.name })));
      }
    }
    this.#busy = null;
    const count = (was: Arrival['was']) => arrivals.filter((one) => one.was === was).length;
    if (arrivals.length > 0)
      this.#tell(
        notice('library.cameIn', {
          fresh: count('new'),
          sounds: count('without sound'),
          here: count('here'),
        }),
      );
    await this.#library.load();
    return arrivals.length === 1 && bad === 0 ? arrivals[0]!.id : null;
  }

  /** Each take of a file, one after the other, until it is stopped. Rejects where the file can't be read. */
  async #bringAll(file: ByteSource, take: (arrived: Outcome<Arrival>) => void): Promise<void> {
    const sources = await this.#takesIn(file);
    for (const [k, open] of sources.entries()) {
      if (this.#stopped) return;
      this.#busy = { what: 'coming in', done: k, of: sources.length };
      const source = await open();
      take(source.ok ? await this.#bringOne(source.value) : source);
    }
  }

  /** All finished takes in one file, one take in memory at a time. */
  async saveAll(): Promise<void> {
    const cards = this.#library.takes;
    if (this.#busy !== null || cards.length === 0) return;
    this.#stopped = false;
    this.#notices = [];
    const today = this.#today().toISOString();
    this.#busy = { what: 'going out', done: 0, of: cards.length };
    const sink = await this.#files.open(`landfall ${today.slice(0, 10)}.zip`);
    if (sink.ok && sink.value !== null) await this.#writeAll(sink.value, today);
    else if (!sink.ok) this.#tell(sink.problem);
    this.#busy = null;
  }

  async #writeAll(sink: FileSink, today: string): Promise<void> {
    const cards = this.#library.takes;
    const writer = new LibraryWriter(today);
    let written = 0;
    for (const card of cards) {
      this.#busy = { what: 'going out', done: written, of: cards.length };
      if (this.#stopped) return void (await sink.giveUp());
      const stored = await this.#takes.open(card.id);
      if (!stored.ok) {
        this.#tell(stored.problem);
        continue;
      }
      const { durationSeconds, ...take } = stored.value;
      const report = readKeptReport(take).ok ? take.report : null;
      const frames = Math.round(durationSeconds * take.details.sampleRate);
      const parts = writer.take(fileStem(take.details), writeTakeFile({ ...take, report, frames }));
      const put = await sink.write(parts);
      if (!put.ok) {
        await sink.giveUp();
        return this.#tell(put.problem);
      }
      written += 1;
    }
    const end = await sink.write(writer.finish());
    const closed = end.ok ? await sink.close() : end;
    this.#tell(closed.ok ? notice('library.wentOut', { takes: written }) : closed.problem);
  }

  /** What a file holds: one take, or a library of them. */
  async #takesIn(source: ByteSource): Promise<readonly (() => Promise<Outcome<ByteSource>>)[]> {
    const one = () => Promise.resolve({ ok: true, value: source } as const);
    if (await isTakeFile(source)) return [one];
    const library = await takesInLibrary(source);
    // The sentence comes when it is read.
    return library.ok ? library.value.map(({ open }) => open) : [() => Promise.resolve(library)];
  }

  async #bringOne(source: ByteSource): Promise<Outcome<Arrival>> {
    const read = await readTakeFile(source);
    if (!read.ok) return read;
    const { line, band, report, ...take } = read.value;
    const kept = readKeptReport({ report, details: take.details });
    return this.#arrivals.bringIn({
      ...take,
      report,
      summary: kept.ok ? { ...kept.value.summary, counts: countTake(kept.value) } : null,
      line: line && line.samples(),
      band: band && band.samples(),
    });
  }

  #tell(message: Message): void {
    this.#notices = withMessage(this.#notices, message);
  }
}
