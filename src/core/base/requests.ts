import type { Problem } from '../words/problem.ts';
import { failure, type Outcome } from './outcome.ts';

/**
 * Requests to a worker, which answers later and in any order; each answer is matched to its request by number. When the
 * worker has stopped, `fail` answers all requests that are still open, so that no caller waits for ever.
 */
export class Requests {
  #last = 0;
  #gone: Problem | null = null;
  readonly #open = new Map<number, (answer: Outcome<unknown>) => void>();

  /**
   * Opens a request and sends it.
   * @param send called with the number of the request
   */
  ask<T>(send: (id: number) => void): Promise<Outcome<T>> {
    if (this.#gone !== null) return Promise.resolve(failure(this.#gone));
    const id = ++this.#last;
    return new Promise((resolve) => {
      this.#open.set(id, resolve as (answer: Outcome<unknown>) => void);
      send(id);
    });
  }

  /** Resolves a request; an answer to a request that is not open is ignored. */
  answer(id: number, answer: Outcome<unknown>): void {
    const resolve = this.#open.get(id);
    this.#open.delete(id);
    resolve?.(answer);
  }

  /** The worker has stopped: every open request, and every later one, fails with the problem. */
  fail(problem: Problem): void {
    this.#gone = problem;
    for (const id of [...this.#open.keys()]) this.answer(id, failure(problem));
  }
}
