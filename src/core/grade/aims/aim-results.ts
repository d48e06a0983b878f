/** How a take did by each aim, and which to take next. */
import { chordKeys } from '../../chart/keys-through.ts';
import type { AimResult, NextAim, Share } from '../../take/schema.ts';
import type { Aim } from './aim.ts';
import { findAimEvents, isOver, type AimGround } from './aim-events.ts';
import { AIM_LADDER } from './aims.ts';
import { eventShare, LUCK } from '../chance/shares.ts';

/** Shares that add up in binary may fall a hair short of the share to reach. */
const ROUNDING = 1e-9;

/** Measures the ladder of the house, and the aims tried for beside it. */
export function judgeAims(tried: readonly Aim[], ground: AimGround): readonly AimResult[] {
  const ids = new Set(tried.map((aim) => aim.id));
  const others = AIM_LADDER.filter((aim) => !ids.has(aim.id));
  return [
    ...tried.map((aim) => judgeAim(aim, true, ground)),
    ...others.map((aim) => judgeAim(aim, false, ground)),
  ];
}

function judgeAim(aim: Aim, tried: boolean, ground: AimGround): AimResult {
  const events = findAimEvents(aim, ground);
  const result = eventShare(events, aim.leastEvents);
  const verdict = verdictOf(aim, result, ground);
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
    result,
  };
}

const reachesShare = (aim: Aim, { share }: Share): boolean =>
  share !== null && share >= aim.shareToReach - ROUNDING;

function verdictOf(aim: Aim, result: Share, ground: AimGround): AimResult['verdict'] {
  const { of, fairTail } = result;
  if (of === 0 && !chartHas(aim, ground)) return 'not in this chart';
  if (of < aim.leastEvents || of === 0) return 'too short to tell';
  const lucky = aim.againstLuck && (fairTail === null || fairTail >= LUCK);
  return reachesShare(aim, result) && !lucky ? 'reached' : 'not yet';
}

/** Whether the chart holds a chord that the aim asks about. */
function chartHas(aim: Aim, { timeline }: AimGround): boolean {
  const spans = timeline.spansBetween(0, timeline.bars * timeline.beatsPerBar);
  const keyOf = chordKeys(timeline);
  return spans.some(({ chord }) => chord !== null && isOver(aim, chord, keyOf(chord)));
}

/**
 * The aim to take next: the first one tried for that is not reached yet, else the first rung of the ladder that is
 * not; null when all are reached.
 */
export function chooseNextAim(results: readonly AimResult[]): NextAim | null {
  const rungs = AIM_LADDER.map(({ id }) => results.find((result) => result.id === id)).filter(
    (result) => result !== undefined,
  );
  const open = ({ verdict }: AimResult) => verdict === 'not yet' || verdict === 'too short to tell';
  const next = results.find((result) => result.tried && open(result)) ?? rungs.find(open);
  return next === undefined ? null : { id: next.id };
}
