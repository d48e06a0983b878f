/** What is wrong with a score: what ends its reading, and what is only said. */
import type { Notice, Problem } from '../../words/problem.ts';

/** Leaves the reading of a score with a problem; caught by the reader. */
export class UnreadableScore extends Error {
  readonly problem: Problem;
  constructor(told: Problem) {
    super(told.code);
    this.problem = told;
  }
}

/** So many notices are read; the rest of a score that is odd throughout says nothing new. */
const MOST_WARNINGS = 50;

/** Adds a notice; the same thing may be odd in many bars, and is said once. */
export function warnOnce(warnings: Notice[], told: Notice): void {
  if (warnings.length >= MOST_WARNINGS) return;
  const known = JSON.stringify(told);
  if (!warnings.some((warning) => JSON.stringify(warning) === known)) warnings.push(told);
}
