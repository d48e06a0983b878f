/** How a take did by each aim, and which to take next. */
import { chordKeys } from '../../chart/keys-through.ts';
import type { AimResult, NextAim, Share } from '../../take/schema.ts';
import type { Aim } from './aim.ts';
import { holm } from '../../base/statistics.ts';
import { hasMajorThird } from '../assign/roles.ts';
import { holds } from '../assign/tone-sets.ts';
import { askShare } from '../chance/shares.ts';
import { LUCK } from '../chance/verdict.ts';
import { isOver } from './aim-chords.ts';
import { aimTones, findAimEvents, type AimGround } from './aim-events.ts';
import { AIM_LADDER, COVERS } from './aims.ts';

/** Shares that add up in binary may fall a hair short of the share to reach. */
const ROUNDING = 1e-9;

/** The aim that the headline asks about: it is asked alone, like those tried for. */
const HEADLINE_AIM = 'third-on-arrival';

/** Who keeps off a tone has shown it only where the take uses that tone elsewhere, this often at least. */
const LEAST_USES_ELSEWHERE = 4;

/** An aim with its share, and the p value that it is judged by. */
interface Measured {
  readonly aim: Aim;
  readonly tried: boolean;
  readonly result: Share;
}

/**
 * Measures the ladder of the house, and the aims tried for beside it. Each is reached only where its share is reached
 * and is more than luck; among those that nobody tried for, p is corrected for their number (Holm).
 */
export function judgeAims(tried: readonly Aim[], ground: AimGround): readonly AimResult[] {
  const ids = new Set(tried.map((aim) => aim.id));
  const others = AIM_LADDER.filter((aim) => !ids.has(aim.id));
  const measure = (aim: Aim, isTried: boolean): Measured => {
    const events = findAimEvents(aim, ground);
    return {
      aim,
      tried: isTried,
      result: askShare(events, ground.own, aim.shareToReach, ground.choruses).share,
    };
  };
  const all = [...tried.map((aim) => measure(aim, true)), ...others.map((aim) => measure(aim, false))];
  const beside = all.filter(
    ({ aim, tried: isTried, result }) => !isTried && aim.id !== HEADLINE_AIM && result.tail !== null,
  );
  const corrected = holm(beside.map(({ result }) => result.tail!));
  const results = all.map((measured) => {
    const place = beside.indexOf(measured);
    return judgeAim(measured, place < 0 ? (measured.result.tail ?? 1) : corrected[place]!, ground);
  });
  return results.map((result) => ({ ...result, coveredBy: coveredBy(result.id, results) }));
}

/** A harder aim that was reached and shows this one by itself. */
const coveredBy = (id: string, results: readonly AimResult[]): string | null =>
  results.find((other) => other.verdict === 'reached' && COVERS.get(other.id)?.includes(id))?.id ?? null;

function judgeAim({ aim, tried, result }: Measured, p: number, ground: AimGround): AimResult {
  const { verdict, missing } = verdictOf(aim, result, p, ground);
  const { id, own = null, events: counted, over = null, shareToReach, leastEvents, againstLuck } = aim;
  return {
    id,
    own,
    tried,
    verdict,
    events: counted,
    over,
    shareToReach,
    leastEvents,
    againstLuck,
    result: { ...result, correctedTail: result.tail === null ? null : p },
    coveredBy: null,
    missing,
  };
}

const reachesShare = (aim: Aim, { share }: Share): boolean =>
  share !== null && share >= aim.shareToReach - ROUNDING;

type Answer = Pick<AimResult, 'verdict' | 'missing'>;

function verdictOf(aim: Aim, result: Share, p: number, ground: AimGround): Answer {
  const { of, high } = result;
  if (of === 0 && !chartHas(aim, ground)) return { verdict: 'not in this chart', missing: null };
  if (of < aim.leastEvents || of === 0) return { verdict: 'too short to tell', missing: 'events' };
  if (aim.test === 'is none of' && usesElsewhere(aim, ground) < LEAST_USES_ELSEWHERE)
    return { verdict: 'too short to tell', missing: 'use elsewhere' };
  const isShare = reachesShare(aim, result);
  if (isShare && (p < LUCK || !aim.againstLuck)) return { verdict: 'reached', missing: null };
  const missing = isShare ? 'luck' : 'share';
  const mayReach = high === null || high >= aim.shareToReach;
  const isOpen = aim.againstLuck && mayReach && result.verdict === 'too short to tell';
  return { verdict: isOpen ? 'too short to tell' : 'not yet', missing };
}

/** How often the take uses the tones that an aim keeps off, over the chords that it is not about. */
function usesElsewhere(aim: Aim, ground: AimGround): number {
  const keyOf = chordKeys(ground.timeline);
  const maskFor = aimTones(ground);
  return ground.notes.filter(
    ({ chord, pitchClass }) =>
      chord !== null && !isOver(aim, chord, keyOf(chord)) && holds(maskFor(aim.tones, chord), pitchClass),
  ).length;
}

/** Whether the chart holds a chord that the aim asks about, with a tone that it asks for. */
function chartHas(aim: Aim, ground: AimGround): boolean {
  const { timeline } = ground;
  const keyOf = chordKeys(timeline);
  const maskFor = aimTones(ground);
  return timeline.spansBetween(0, timeline.roundBeats).some(({ chord }) => {
    if (chord === null || !isOver(aim, chord, keyOf(chord)) || maskFor(aim.tones, chord) === 0) return false;
    return aim.events !== 'flat thirds' || hasMajorThird(chord);
  });
}

/**
 * The aim to take next: the first one tried for that is not reached yet, else the first rung of the ladder that the take
 * has not shown, by itself or by a harder one; null when all are.
 */
export function chooseNextAim(results: readonly AimResult[]): NextAim | null {
  const rungs = AIM_LADDER.map(({ id }) => results.find((result) => result.id === id)).filter(
    (result) => result !== undefined,
  );
  const open = ({ verdict, coveredBy: harder }: AimResult) =>
    (verdict === 'not yet' || verdict === 'too short to tell') && harder === null;
  const next = results.find((result) => result.tried && open(result)) ?? rungs.find(open);
  return next === undefined ? null : { id: next.id };
}
