/** What the sound check has measured, in the player's words. */
import type { LevelReading } from '../../core/room/check/input-level.ts';
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

/** Sweeps whose delays differ by less agree. */
const STEADY_MS = 0.5;

export function describeRoom(room: MeasuredRoom, { soundCheck }: Words): readonly string[] {
  const { delaySeconds, spreadSeconds, leakDb, removedDb, path } = room;
  const spreadMs = 1000 * spreadSeconds;
  const delay =
    delaySeconds === null
      ? soundCheck.delayUnknown
      : soundCheck.delay({
          ms: Math.round(1000 * delaySeconds),
          spreadMs: spreadMs < STEADY_MS ? null : spreadMs,
        });
  if (path === null) return [soundCheck.headphones, delay];
  const leak = leakDb === null ? '' : ` ${soundCheck.leak({ db: Math.round(leakDb) })}`;
  return [`${soundCheck.speakers({ db: Math.round(removedDb) })}${leak}`, delay];
}

export const describeNudge = ({ nudgeSeconds }: MeasuredRoom, { soundCheck }: Words): string =>
  soundCheck.nudge({ ms: Math.round(1000 * nudgeSeconds) });
