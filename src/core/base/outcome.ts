/**
 * What comes back from the outside world (a file, a chart, a device): a value, or a problem, which the catalogue of
 * words turns into one sentence that says what is wrong, where, and what to do. A caller's bug throws instead.
 */
import { problem, type Problem, type ProblemCode, type ProblemFacts } from '../words/problem.ts';

export interface Failure {
  readonly ok: false;
  readonly problem: Problem;
}
export type Outcome<T> = { readonly ok: true; readonly value: T } | Failure;

export const good = <T>(value: T): Outcome<T> => ({ ok: true, value });

/** @example bad('file.empty', { name: 'take.wav' }) */
export const bad = <Code extends ProblemCode>(code: Code, ...facts: ProblemFacts<Code>): Failure =>
  failure(problem(code, ...facts));

/** Hands a problem on that is at hand already. */
export const failure = (told: Problem): Failure => ({ ok: false, problem: told });
