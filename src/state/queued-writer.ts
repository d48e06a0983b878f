/**
 * Writes a take from its first sample on, though the store may take a moment to open: nobody waits for a disk before
 * the count-in, and what is played before it is open waits in order.
 */
import type { Outcome } from '../core/base/outcome.ts';
import type { TakeWriter } from './ports.ts';
import type { TakeDetails, TakeId } from './take.ts';

export class QueuedWriter {
  readonly #opened: Promise<TakeWriter | null>;
  #writer: TakeWriter | null = null;
  /** What is to be done with the writer as soon as there is one; null where there will be none. */
  #waiting: ((writer: TakeWriter) => void)[] | null = [];

  /** @param told called with the sentence where the store can't be opened; the take goes on in memory */
  constructor(opening: Promise<Outcome<TakeWriter>>, told: (sentence: string) => void) {
    this.#opened = opening.then((opened) => {
      const waiting = this.#waiting ?? [];
      this.#waiting = null;
      if (!opened.ok) {
        told(opened.sentence);
        return null;
      }
      for (const act of waiting) act(opened.value);
      return (this.#writer = opened.value);
    });
  }

  append(samples: Int16Array, band: Int16Array | null): void {
    this.#do((writer) => writer.append(samples, band));
  }

  change(details: Partial<TakeDetails>): void {
    this.#do((writer) => writer.change(details));
  }

  /** The take's id where all of it is safe, else null. */
  async finish(): Promise<TakeId | null> {
    const writer = await this.#opened;
    return writer !== null && (await writer.finish()) === null ? writer.id : null;
  }

  /** Ends the writing of a take that is to be thrown away; answers with what is to be removed. */
  async abandon(): Promise<TakeId | null> {
    const writer = await this.#opened;
    await writer?.finish();
    return writer?.id ?? null;
  }

  #do(act: (writer: TakeWriter) => void): void {
    if (this.#writer) act(this.#writer);
    else this.#waiting?.push(act);
  }
}
