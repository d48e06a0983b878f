/** What was good in a take beside its headline: shares that are more than luck, landings that the line puts right. */
import type { Report } from '../take/schema.ts';
import { isChordTone } from '../grade/assign/roles.ts';
import type { Words } from '../words/words.ts';

/** So few landings put right are no habit. */
const LEAST_PUT_RIGHT = 3;
const MOST_SENTENCES = 2;

/** Two sentences at most, none where nothing is surely good. */
export function goodSentences(
  { shares, landings, summary }: Pick<Report, 'shares' | 'landings' | 'summary'>,
  { report: { good } }: Words,
): readonly string[] {
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
  const putRight = outside.filter((landing) => landing.putRight !== null || landing.leansInto !== null);
  if (putRight.length >= LEAST_PUT_RIGHT && putRight.length * 2 >= outside.length)
    sentences.push(good.putRight({ count: putRight.length, of: outside.length }));
  return sentences.slice(0, MOST_SENTENCES);
}
