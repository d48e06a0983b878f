/** A take that is nowhere but in memory: what would lose it waits for the player's word. */
import type { TakeDetails } from './take.ts';

export class UnsavedTake {
  /** When the take began that was last saved as a file, or given up by the player. */
  #settled: string | null = null;
  #awaited = $state.raw<(() => void) | null>(null);

  /** Whether the player is asked. */
  get isAsked(): boolean {
    return this.#awaited !== null;
  }

  /** Whether a take that is not kept would be lost. */
  wouldLose({ startedAt }: TakeDetails): boolean {
    return startedAt !== this.#settled;
  }

  /** Saved as a file, or given up. */
  settle(details: TakeDetails | undefined): void {
    this.#settled = details?.startedAt ?? null;
  }

  ask(go: () => void): void {
    this.#awaited = go;
  }

  /** What waited for the player's word, which has come. */
  answered(): (() => void) | null {
    const go = this.#awaited;
    this.#awaited = null;
    return go;
  }
}
