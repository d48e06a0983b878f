/** How much room the takes need, and which sound may go before the disk is full. Grades and notes are never removed. */
import type { TakeCard, TakeId } from './take.ts';
import type { Library } from './library.svelte.ts';
import { withMessage } from './messages.ts';
import type { TakesPort } from './ports.ts';
import type { Message } from '../core/words/problem.ts';

/** Bytes, as the browser estimates them for this page. */
export interface Estimate {
  readonly usedBytes: number;
  readonly quotaBytes: number;
}

/** Half an hour of a take with its band, at 48 kHz: what a player may record next. */
const LEAST_FREE_BYTES = 30 * 60 * 48_000 * 2 * 2;

/** Bytes of the sound of each take. */
export type SoundSizes = Readonly<Record<TakeId, number>>;

/** Old sound that may go to make room. */
export interface OldSound {
  readonly ids: readonly TakeId[];
  readonly bytes: number;
}

export class DiskRoom {
  readonly #takes: TakesPort;
  readonly #library: Library;
  readonly #estimate: () => Promise<Estimate | null>;
  #bytes = $state.raw<SoundSizes>({});
  #freeBytes = $state.raw<number | null>(null);
  #notices = $state.raw<readonly Message[]>([]);

  constructor(ports: {
    readonly takes: TakesPort;
    readonly library: Library;
    /** null where the browser does not tell. */
    readonly estimate: () => Promise<Estimate | null>;
  }) {
    this.#takes = ports.takes;
    this.#library = ports.library;
    this.#estimate = ports.estimate;
  }

  /** Bytes of the sound of each take; 0 for one without. */
  get bytes(): SoundSizes {
    return this.#bytes;
  }

  get totalBytes(): number {
    return Object.values(this.#bytes).reduce((sum, bytes) => sum + bytes, 0);
  }

  /** null where the browser does not tell. */
  get freeBytes(): number | null {
    return this.#freeBytes;
  }

  /** What could not be removed, and why. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  /** The oldest sound without a star that has to go so that there is room for a take; null while there is room. */
  get oldSound(): OldSound | null {
    if (this.#freeBytes === null || this.#freeBytes >= LEAST_FREE_BYTES) return null;
    let missing = LEAST_FREE_BYTES - this.#freeBytes;
    const ids: TakeId[] = [];
    let bytes = 0;
    for (const { id } of oldestFirst(this.#library.takes)) {
      const own = this.#bytes[id] ?? 0;
      if (own === 0 || missing <= 0) continue;
      ids.push(id);
      bytes += own;
      missing -= own;
    }
    return ids.length === 0 ? null : { ids, bytes };
  }

  async load(): Promise<void> {
    const sizes = await Promise.all(
      this.#library.takes.map(
        async ({ id }) => [id, await this.#takes.soundBytes(id).catch(() => 0)] as const,
      ),
    );
    const estimate = await this.#estimate();
    this.#bytes = Object.fromEntries(sizes);
    this.#freeBytes = estimate && Math.max(0, estimate.quotaBytes - estimate.usedBytes);
  }

  async removeOldSound(): Promise<void> {
    this.#notices = [];
    for (const id of this.oldSound?.ids ?? []) {
      const removed = await this.#takes.removeSound(id);
      if (!removed.ok) this.#notices = withMessage(this.#notices, removed.problem);
    }
    await this.#library.load();
    await this.load();
  }
}

const oldestFirst = (takes: readonly TakeCard[]): readonly TakeCard[] =>
  takes.filter(({ starred }) => !starred).toSorted((a, b) => (a.startedAt < b.startedAt ? -1 : 1));
