/** What a command answers with: an outcome, of which a slip of the caller's is told apart. */
import type { Outcome } from '../core/base/outcome.ts';

export interface WrongUsage {
  readonly ok: false;
  readonly sentence: string;
  readonly wrongUsage: true;
}

export type Answer<T> = Outcome<T> | WrongUsage;

export const wrongUsage = (sentence: string): WrongUsage => ({ ok: false, sentence, wrongUsage: true });
