/** The sentences that the page and the review share: the take in a sentence, its time, what was lost of it. */
import type { LostSound } from '../take/lost-sound.ts';
import type { Report, Share, Timing } from '../take/schema.ts';
import { LEAST_EVENTS } from '../grade/chance/shares.ts';
import type { Words } from '../words/words.ts';

/** Of fewer events one more or less would move the share by ten points: per cent would say more than is known. */
const LEAST_FOR_PERCENT = 10;

/** A share of a whole for a sentence, or null where the events are too few for per cent. */
export const shareForPercent = ({ share, of }: Share): number | null =>
  of < LEAST_FOR_PERCENT ? null : share;

/** What luck would give, in events, counted as the verdict counts it; null where that is not known. */
export const expectedByLuck = ({ expected, fairExpected }: Share): number | null => fairExpected ?? expected;

/** The take in one sentence: landings on the third, of how many, how surely, and against luck. */
export function headlineOf(
  { shares }: { readonly shares: Pick<Report['shares'], 'landings' | 'allNotes'> },
  { report: { headline } }: Words,
): string {
  const { thirds } = shares.landings;
  if (shares.allNotes.thirds.of === 0) return headline.noNotes;
  if (thirds.of === 0) return headline.noLandings;
  const counted = {
    hits: thirds.hits,
    of: thirds.of,
    share: shareForPercent(thirds),
    expected: expectedByLuck(thirds),
  };
  if (thirds.of < LEAST_EVENTS) return headline.few({ ...counted, least: LEAST_EVENTS });
  const { low, high, verdict, fairTail } = thirds;
  return headline.judged({ ...counted, low, high, verdict, tail: fairTail });
}

/** Whether the whole take lies early or late, or null where there is nothing to say of it. */
export function timingSentence({ verdict, medianMs }: Timing, { report: { timing } }: Words): string | null {
  if (medianMs === null || (verdict !== 'ahead' && verdict !== 'behind')) return null;
  return timing[verdict]({ ms: Math.abs(Math.round(medianMs)) });
}

/** At most so many bars are named. */
const MOST_BARS = 5;

/** How much sound the browser lost and where, or null where nothing was lost. */
export function lostSentence(lost: readonly LostSound[] | undefined, words: Words): string | null {
  if (lost === undefined || lost.length === 0) return null;
  const told = words.report.lost;
  const ms = Math.max(1, Math.round(1000 * lost.reduce((sum, { seconds }) => sum + seconds, 0)));
  const places = [
    ...new Set(
      lost.map(({ bar, chorus }) =>
        bar === null ? told.countIn : told.bar({ bar: bar + 1, chorus: (chorus ?? 0) + 1 }),
      ),
    ),
  ];
  const more = places.length - MOST_BARS;
  const named = places.slice(0, MOST_BARS);
  return told.told({ ms, places: more > 0 ? [...named, told.more({ bars: more })] : named });
}
