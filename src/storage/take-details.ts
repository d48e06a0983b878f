/** What becomes known about a take while it is played: collected, and written after what is being written. */
import type { TakeDetails } from '../core/take/details-schema.ts';

export class DetailChanges {
  readonly #write: (change: Partial<TakeDetails>) => Promise<void>;
  #waiting: Partial<TakeDetails> | null = null;

  constructor(write: (change: Partial<TakeDetails>) => Promise<void>) {
    this.#write = write;
  }

  /** @returns what is to be done now, or null where an earlier change that still waits will include this one */
  add(change: Partial<TakeDetails>): (() => Promise<void>) | null {
    const alone = this.#waiting === null;
    this.#waiting = { ...this.#waiting, ...change };
    return alone ? () => this.#flush() : null;
  }

  /** Never rejects: a detail that can't be written is no reason to stop a take. */
  async #flush(): Promise<void> {
    const change = this.#waiting ?? {};
    this.#waiting = null;
    await this.#write(change).catch(() => undefined);
  }
}
