/** What a command answers with: an outcome, of which a slip of the caller's is told apart. */
import { bad, type Failure, type Outcome } from '../core/base/outcome.ts';
import type { ProblemCode, ProblemFacts } from '../core/words/problem.ts';

export interface WrongUsage extends Failure {
  readonly wrongUsage: true;
}

export type Answer<T> = Outcome<T> | WrongUsage;

export const wrongUsage = <Code extends ProblemCode>(
  code: Code,
  ...facts: ProblemFacts<Code>
): WrongUsage => ({ ...bad(code, ...facts), wrongUsage: true });
