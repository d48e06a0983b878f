import type { Problem } from '../words/problem.ts';
import { failure, type Outcome } from './outcome.ts';

/**
 * Questions sent to somebody who answers later and in any order (a worker), each matched to its answer by
 * number. When the answerer is gone, `fail` answers all that are still open, so that nobody waits for ever.
 */
export class Requests {
  #last = 0;
  #gone: Problem | null = null;
  readonly #open = new Map<number, (answer: Outcome<unknown>) => void>();

  /**
   * Opens a question and sends it.
   * @param send called with the question's number
   */
  ask<T>(send: (id: number) => void): Promise<Outcome<T>> {
    if (this.#gone !== null) return Promise.resolve(failure(this.#gone));
    const id = ++this.#last;
    return new Promise((resolve) => {
      this.#open.set(id, resolve as (answer: Outcome<unknown>) => void);
      send(id);
    });
  }

  /** An answer to a question that is not open (any more) is dropped. */
  answer(id: number, answer: Outcome<unknown>): void {
    const resolve = this.#open.get(id);
    this.#open.delete(id);
    resolve?.(answer);
  }

  /** The answerer is gone: every open question, and every later one, fails with the problem. */
  fail(problem: Problem): void {
    this.#gone = problem;
    for (const id of [...this.#open.keys()]) this.answer(id, failure(problem));
  }
}
