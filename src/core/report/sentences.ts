/** The sentences that the page and the review share: the take in a sentence, its time, what was lost of it. */
import type { LostSound } from '../take/lost-sound.ts';
import type { Report, Share, SuspectedDelay } from '../take/schema.ts';
import { spelledKey } from '../words/spelling.ts';
import type { Words } from '../words/words.ts';
import { toldChoruses } from './more-choruses.ts';

/** The take in one sentence: landings on the third (or a guide tone), of how many, and against luck. */
export function headlineOf({ summary, shares }: Pick<Report, 'summary' | 'shares'>, words: Words): string {
  const { headline } = words.report;
  const landings = askedLandings({ summary, shares });
  if (summary.notes === 0) return headline.noNotes;
  if (landings.of === 0) return headline.noLandings;
  const { hits, of, expected, verdict, moreChoruses } = landings;
  return headline.judged({
    hits,
    of,
    tones: summary.asked,
    expected,
    verdict,
    moreChoruses: toldChoruses(moreChoruses),
  });
}

/** The numbers behind the sentence: the interval and p; null without a landing. */
export function headlineNumbers(report: Pick<Report, 'summary' | 'shares'>, words: Words): string | null {
  const { low, high, tail } = askedLandings(report);
  if (low === null || high === null || tail === null) return null;
  return words.report.headline.numbers({ low, high, tail });
}

const askedLandings = ({ summary, shares }: Pick<Report, 'summary' | 'shares'>): Share =>
  shares.landings[summary.asked];

/** That the chart fits better somewhere else, or null where it does not. */
export function suspectedSentence({ suspected, timeline }: Report, words: Words): string | null {
  if (suspected === null) return null;
  const { what, beats, tonic, shareHere, shareThere } = suspected;
  const told = words.report.suspected;
  if (what === 'place') return told.place({ beats, shareHere, shareThere });
  const { mode } = timeline.key;
  return told.key({
    here: spelledKey(timeline.key, words),
    there: spelledKey({ tonic, mode }, words),
    shareHere,
    shareThere,
  });
}

/** That the delay of the take must be wrong, or null where nothing says so. */
export function delaySentence(
  suspected: SuspectedDelay | null,
  { report: { suspectedDelay } }: Words,
): string | null {
  if (suspected === null) return null;
  const { ms, spreadMs, notes, isOnlyOne } = suspected;
  const facts = { ms: Math.abs(Math.round(ms)), isLate: ms > 0, spreadMs: Math.round(spreadMs), notes };
  return isOnlyOne ? suspectedDelay.known(facts) : suspectedDelay.unclear(facts);
}

/**
 * Whether the whole take lies early or late, or null where there is nothing to say of it. Where the delay is suspected,
 * nothing is said of the player.
 */
export function timingSentence(
  { timing: { verdict, medianMs }, suspectedDelay }: Pick<Report, 'timing' | 'suspectedDelay'>,
  { report: { timing } }: Words,
): string | null {
  if (suspectedDelay !== null) return null;
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

/** What was corrected by hand, or null where all notes are as they were heard. */
export function correctedSentence({ corrections }: Pick<Report, 'corrections'>, words: Words): string | null {
  if (corrections === undefined) return null;
  const { notes, added, deleted, leftOut } = corrections;
  return words.report.corrected({ notes, added, deleted: deleted.length, leftOut: leftOut.length });
}
