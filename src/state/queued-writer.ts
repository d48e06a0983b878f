/**
 * Writes a take from its first sample or message on, though the store may take a moment to open. The
 * count-in does not wait for it: what is played before the store is open is queued and written in order.
 */
import type { Outcome } from '../core/base/outcome.ts';
import { problem, type Problem } from '../core/words/problem.ts';
import type { TakeDetails, TakeId } from './take.ts';

/** What the writers of sound and of MIDI messages have in common. */
interface Writer {
  readonly id: TakeId;
  change(details: Partial<TakeDetails>): void;
}

/** Ends the writing of a take; null when all of it is safe, else what stopped the writing. */
type End<W> = (writer: W) => Promise<Problem | null>;

export class QueuedWriter<W extends Writer> {
  readonly #opened: Promise<W | null>;
  #writer: W | null = null;
  /** What is to be done with the writer as soon as there is one; null where there will be none. */
  #queue: ((writer: W) => void)[] | null = [];

  /**
   * @param begin opens the store; calls `onFull` at most once, when nothing more can be written
   * @param tell called then, and where the store can't be opened: the take goes on in memory
   */
  constructor(
    begin: (onFull: (problem: Problem) => void) => Promise<Outcome<W>>,
    tell: (problem: Problem) => void,
  ) {
    const onFull = (stopped: Problem) => tell(ofTake(stopped));
    this.#opened = begin(onFull).then((opened) => {
      const queue = this.#queue ?? [];
      this.#queue = null;
      if (!opened.ok) {
        onFull(opened.problem);
        return null;
      }
      for (const act of queue) act(opened.value);
      return (this.#writer = opened.value);
    });
  }

  /** The writer; null before it is open, and where it could not be opened. */
  get opened(): W | null {
    return this.#writer;
  }

  /** Does something with the writer, now or as soon as it is open. */
  write(act: (writer: W) => void): void {
    if (this.#writer) act(this.#writer);
    else this.#queue?.push(act);
  }

  change(details: Partial<TakeDetails>): void {
    this.write((writer) => writer.change(details));
  }

  /** The take's id where all of it is safe, else null. */
  async finish(end: End<W>): Promise<TakeId | null> {
    const writer = await this.#opened;
    return writer !== null && (await end(writer)) === null ? writer.id : null;
  }

  /** Ends the writing of a take that is thrown away, and removes what was written of it. */
  async discard(end: End<W>, remove: (id: TakeId) => Promise<unknown>): Promise<void> {
    const writer = await this.#opened;
    if (writer === null) return;
    await end(writer);
    await remove(writer.id);
  }
}

/** What stopped the writing, as it is told of a take that goes on. */
const ofTake = (stopped: Problem): Problem =>
  stopped.code === 'storage.diskFull' ? problem('take.onlyInMemory') : stopped;
