/** What was taken out of a recording, in a player's words. */
import type { Report } from '../../core/take/schema.ts';

type Backing = Report['source']['backing'];

/** Nearer to the recording's beginning than this, nobody would call it a place. */
const AT_ONCE_SECONDS = 0.3;
/** Slower or faster by less is no drift but the fineness of the measurement. */
const DRIFT_WORTH_A_WORD_PPM = 20;

/** "band taken out by 17 dB", or null where nothing was. */
export const takenOutWords = (backing: Backing): string | null =>
  backing ? `band taken out by ${Math.round(backing.removedDb)} dB` : null;

/** Where a backing was found in a recording and how much of it is gone; for null, that it was not found. */
export function backingSentence(name: string, backing: Backing): string {
  if (!backing) return `${name} was not heard in it, so nothing was taken out: see the note below.`;
  const { offsetSeconds, driftPpm, removedDb } = backing;
  const drift = Math.round(driftPpm);
  const clock =
    Math.abs(drift) < DRIFT_WORTH_A_WORD_PPM
      ? ''
      : `, its clock ${Math.abs(drift)} millionths ${drift > 0 ? 'fast' : 'slow'}`;
  return `${name} ${beginWords(offsetSeconds)}${clock}; it was taken out by ${Math.round(removedDb)} dB.`;
}

function beginWords(offsetSeconds: number): string {
  const exact = `${Math.abs(offsetSeconds).toFixed(2)} s`;
  if (Math.abs(offsetSeconds) < AT_ONCE_SECONDS) return `begins with the recording (${exact} away)`;
  return offsetSeconds > 0
    ? `begins ${exact} into the recording`
    : `had run for ${exact} when the recording began`;
}
