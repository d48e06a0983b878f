/** What was good in a take beside its headline: shares that are more than luck, landings that the line puts right. */
import { poissonBinomial, tailFrom } from '../base/statistics.ts';
import type { Report } from '../take/schema.ts';
import { isChordTone } from '../grade/assign/roles.ts';
import type { Words } from '../words/words.ts';

/**
 * How often a line that goes on by step to anywhere puts a landing right: four of the seven tones of a scale are the
 * chord's. Put right more often than such a line does in one take of twenty, it is told.
 */
const PUT_RIGHT_BY_LUCK = 0.5;
const LUCK = 0.05;
const MOST_SENTENCES = 2;

/** Two sentences at most; none where nothing is surely good, or where the chart itself is in doubt. */
export function goodSentences(
  { shares, landings, summary, suspected }: Pick<Report, 'shares' | 'landings' | 'summary' | 'suspected'>,
  { report: { good } }: Words,
): readonly string[] {
  if (suspected !== null) return [];
  const sentences: string[] = [];
  // Who lands on thirds is told so by the headline.
  const follows = shares.landings[summary.asked].verdict === 'above chance';
  const tones = (['chordTones', 'guideTones'] as const).find(
    (set) => set !== summary.asked && shares.landings[set].verdict === 'above chance',
  );
  if (!follows && tones !== undefined) sentences.push(good.landings({ ...shares.landings[tones], tones }));
  const { chordTones: strong } = shares.strongBeats;
  if (strong.verdict === 'above chance') sentences.push(good.strongBeats(strong));
  const outside = landings.filter(({ role }) => role !== null && !isChordTone(role));
  const atOnce = outside.filter(
    ({ note, putRight, leansInto }) => (putRight?.note ?? leansInto) === (note ?? 0) + 1,
  );
  const byLuck = poissonBinomial(new Array<number>(outside.length).fill(PUT_RIGHT_BY_LUCK));
  if (tailFrom({ from: 0, weights: byLuck }, atOnce.length) < LUCK)
    sentences.push(good.putRight({ count: atOnce.length, of: outside.length }));
  return sentences.slice(0, MOST_SENTENCES);
}
