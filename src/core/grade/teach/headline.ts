/** The take in one sentence: landings on the third, of how many, how surely, and against luck. */
import type { Share, Verdict } from '../../take/schema.ts';
import { LEAST_EVENTS } from '../chance/shares.ts';
import { countAndPercent, interval, luckClause, pValue, several } from './telling.ts';

/** @param thirds the share of landings on the third; open changes are not among them */
export function headline(thirds: Share, notesUnderChords: number): string {
  if (notesUnderChords === 0) return 'No note was heard under a chord: there is nothing to grade yet.';
  if (thirds.of === 0) return 'No chord arrived while you played: there is no landing to judge.';
  const counted = `${countAndPercent(thirds)} ${several(thirds.of, 'landing')} on the third`;
  if (thirds.of < LEAST_EVENTS) {
    return `${counted}, ${luckClause(thirds)}: too short to tell (${LEAST_EVENTS} landings say something).`;
  }
  return `${counted}, 95 % interval ${interval(thirds) ?? ''}; ${luckClause(thirds)}: ${judgement(thirds)}.`;
}

const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  'above chance': 'more than luck',
  'at chance': 'no more than luck',
  'below chance': 'less than luck gives',
  'too short to tell': 'too short to tell',
};

function judgement({ verdict, fairTail }: Share): string {
  return fairTail === null ? VERDICT_WORDS[verdict] : `${VERDICT_WORDS[verdict]} (${pValue(fairTail)})`;
}
