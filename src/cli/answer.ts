/** What a command answers with: an outcome, of which a slip of the caller's is told apart. */
import { badSentence, type Failure, type Outcome } from '../core/base/outcome.ts';

export interface WrongUsage extends Failure {
  readonly wrongUsage: true;
}

export type Answer<T> = Outcome<T> | WrongUsage;

export const wrongUsage = (sentence: string): WrongUsage => ({
  ...badSentence(sentence),
  wrongUsage: true,
});
