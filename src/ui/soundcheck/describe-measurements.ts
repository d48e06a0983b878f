/** What the sound check has measured, in the player's words. */
import type { LevelReading } from '../../core/room/check/input-level.ts';
import type { RoundTrip } from '../../core/take/round-trip.ts';
import type { Words } from '../../core/words/words.ts';
import type { MeasuredRoom } from '../../state/measured-room.ts';
import type { TuningReading } from '../../state/tuning-check.ts';

export function describeLevel(
  level: LevelReading | null,
  { soundCheck }: Words,
): { readonly verdict: string; readonly facts: string } {
  if (level === null) return { verdict: soundCheck.levels.silent, facts: soundCheck.notOpen };
  return {
    verdict: soundCheck.levels[level.verdict],
    facts: soundCheck.levelFacts({
      peakDb: Math.round(level.peakDb),
      floorDb: Math.round(level.floorDb),
      clipped: level.verdict === 'too hot',
    }),
  };
}

export function describeTuning({ strings, referenceHz }: TuningReading, { soundCheck }: Words): string {
  if (strings.every(({ cents }) => cents === null)) return soundCheck.letRing;
  return referenceHz === null ? soundCheck.againstStandard : soundCheck.agreeOn({ hz: referenceHz });
}

/** What came back of the sweeps; nothing where none were played. */
export function describeLeak(
  { isSwept, leakDb, removedDb, path }: MeasuredRoom,
  { soundCheck }: Words,
): string | null {
  if (!isSwept) return null;
  if (path === null) return soundCheck.headphones;
  const leak = leakDb === null ? '' : ` ${soundCheck.leak({ db: Math.round(leakDb) })}`;
  return `${soundCheck.speakers({ db: Math.round(removedDb) })}${leak}`;
}

/** Sweeps whose delays differ by less agree. */
const STEADY_MS = 0.5;

/** Where the delay that counts comes from, and how exact it is. */
export function describeDelay(
  room: MeasuredRoom | null,
  { seconds, basis }: RoundTrip,
  { soundCheck }: Words,
): string {
  const ms = Math.round(1000 * seconds);
  if (basis === 'set') return soundCheck.delaySet({ ms });
  if (room === null || basis === 'assumed')
    return room?.isSwept === true ? soundCheck.delayUnknown : soundCheck.delayAssumed({ ms });
  const spreadMs = 1000 * room.spreadSeconds;
  return room.delayFrom === 'strokes'
    ? soundCheck.byStrokes({ ms, spreadMs: Math.round(spreadMs), strokes: room.strokes })
    : soundCheck.delay({ ms, spreadMs: spreadMs < STEADY_MS ? null : spreadMs });
}
