/** The takes that are kept, and those that were cut off. */
import type { Outcome } from '../core/base/outcome.ts';
import type { TakesPort } from './ports.ts';
import type { Message } from '../core/words/problem.ts';
import { withMessage } from './messages.ts';
import type { TakeCard, TakeId, TakeMark, UnfinishedTake } from './take.ts';

type ListedTakes = Pick<TakesPort, 'list' | 'unfinished' | 'mark' | 'remove'>;

export class Library {
  readonly #store: ListedTakes;
  #turn = 0;
  #takes = $state.raw<readonly TakeCard[]>([]);
  #unfinished = $state.raw<readonly UnfinishedTake[]>([]);
  #notices = $state.raw<readonly Message[]>([]);

  constructor(ports: { readonly takes: ListedTakes }) {
    this.#store = ports.takes;
  }

  /** Newest first. */
  get takes(): readonly TakeCard[] {
    return this.#takes;
  }

  /** Takes that were cut off and can still be graded (`session.openTake`). */
  get unfinished(): readonly UnfinishedTake[] {
    return this.#unfinished;
  }

  /** Records that could not be read, and why the last action failed, if it did. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  async load(): Promise<void> {
    const turn = ++this.#turn;
    const [{ takes, messages }, unfinished] = await Promise.all([
      this.#store.list(),
      this.#store.unfinished(),
    ]);
    // A later call has read newer data.
    if (turn !== this.#turn) return;
    this.#takes = takes;
    this.#unfinished = unfinished;
    this.#notices = messages;
  }

  /** Names a take, or takes its name away with an empty one; stars it, or takes the star away. */
  async mark(id: TakeId, change: TakeMark): Promise<void> {
    await this.#afterwards(await this.#store.mark(id, change));
  }

  async remove(id: TakeId): Promise<void> {
    await this.#afterwards(await this.#store.remove(id));
  }

  /** The list as it is now; a failure is added after it, so that the new list does not wipe it out. */
  async #afterwards(outcome: Outcome<void>): Promise<void> {
    await this.load();
    if (!outcome.ok) this.#notices = withMessage(this.#notices, outcome.problem);
  }
}
