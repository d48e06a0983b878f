/** A part of the program that is fetched once the page stands: quietly ahead, or at the press that needs it. */
import { problem, type Problem } from '../core/words/problem.ts';

export class LatePart<T> {
  readonly #fetchPart: () => Promise<T>;
  #now = $state.raw<T | null>(null);
  #problem = $state.raw<Problem | null>(null);
  #isAwaited = $state.raw(false);
  #hasFailed = $state.raw(false);
  #coming: Promise<T | null> | null = null;

  /** @param fetchPart rejects where the part can't be fetched; is called again at the next attempt */
  constructor(fetchPart: () => Promise<T>) {
    this.#fetchPart = fetchPart;
  }

  /** null until it is there. */
  get now(): T | null {
    return this.#now;
  }

  /** Whether the player waits for it. */
  get isAwaited(): boolean {
    return this.#isAwaited;
  }

  /** Why what the player asked for did not happen, or null. */
  get problem(): Problem | null {
    return this.#problem;
  }

  /** Whether what somebody asked for did not come; a later attempt may be going on. */
  get hasFailed(): boolean {
    return this.#hasFailed;
  }

  forgetProblem(): void {
    this.#problem = null;
  }

  /** Fetches it ahead. Nobody waits for it, so that a failure is not told. */
  async fetchAhead(): Promise<void> {
    await this.#fetch();
  }

  /**
   * Acts with the part: at once where it is there, so that what needs the player's gesture has it; else when it has come.
   * Where it does not come, `act` is not called and `problem` says so.
   */
  use(act: (part: T) => unknown = () => undefined): void {
    this.#problem = null;
    if (this.#now !== null) act(this.#now);
    else if (!this.#isAwaited) void this.#useLater(act);
  }

  async #useLater(act: (part: T) => unknown): Promise<void> {
    this.#isAwaited = true;
    const part = await this.#fetch();
    this.#isAwaited = false;
    this.#hasFailed = part === null;
    if (part === null) this.#problem = problem('site.partMissing');
    else act(part);
  }

  /** null where it can't be fetched. */
  #fetch(): Promise<T | null> {
    this.#coming ??= this.#fetchPart().then(
      (part) => (this.#now = part),
      () => (this.#coming = null),
    );
    return this.#coming;
  }
}
