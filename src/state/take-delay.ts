/** A take with the delay that its own notes make probable. */
import { firstBeatAfterChange } from '../core/take/round-trip.ts';
import type { FinishedTake } from './finished-take.ts';
import type { DevicePair } from './measured-room.ts';
import type { Review } from './phase.ts';
import type { TakeDetails } from './take.ts';

export interface RedelayedTake {
  readonly take: FinishedTake;
  /** What of its details is not as it was kept. */
  readonly changed: Partial<TakeDetails>;
  /** The round trip for the devices of a take that was just played; null for every other. */
  readonly devices: (DevicePair & { readonly delaySeconds: number }) | null;
}

/** @returns null where no delay is suspected */
export function withSuspectedDelay({
  id,
  details,
  content,
  report,
  playedThrough,
}: Review): RedelayedTake | null {
  if (report.suspectedDelay === null) return null;
  const seconds = report.suspectedDelay.ms / 1000;
  const moved = firstBeatAfterChange(
    details.firstBeatSeconds ?? 0,
    { roundTripSeconds: 0 },
    { roundTripSeconds: seconds },
  );
  // Graded now, the round trip is known and not looked for in the sound; a later listening may look for it again.
  const { assumedRoundTripSeconds, ...known } = details;
  return {
    take: {
      id,
      details: { ...known, firstBeatSeconds: moved },
      content,
      ...(playedThrough && { playedThrough }),
    },
    changed: {
      firstBeatSeconds: moved,
      ...(assumedRoundTripSeconds !== undefined && {
        assumedRoundTripSeconds: assumedRoundTripSeconds + seconds,
      }),
    },
    devices: playedThrough
      ? { ...playedThrough.pair, delaySeconds: moved - playedThrough.undelayedFirstBeatSeconds }
      : null,
  };
}
