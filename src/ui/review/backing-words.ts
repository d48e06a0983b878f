/** What was taken out of a recording, in the player's words. */
import type { Report } from '../../core/take/schema.ts';
import type { Words } from '../../core/words/words.ts';

type Backing = Report['source']['backing'];

/** A backing that begins nearer to the recording's beginning than this begins with it. */
const AT_ONCE_SECONDS = 0.3;
/** A smaller drift is the uncertainty of the measurement. */
const LEAST_DRIFT_PPM = 20;

/** Where a backing was found in a recording and how much of it is gone; for null, that it was not found. */
export function describeBacking(name: string, backing: Backing, { review }: Words): string {
  if (!backing) return review.backingNotFound({ name });
  const { offsetSeconds, driftPpm, removedDb } = backing;
  const drift = Math.round(driftPpm);
  return review.backingTakenOut({
    name,
    offsetSeconds,
    atOnce: Math.abs(offsetSeconds) < AT_ONCE_SECONDS,
    driftPpm: Math.abs(drift) < LEAST_DRIFT_PPM ? 0 : drift,
    db: Math.round(removedDb),
  });
}
