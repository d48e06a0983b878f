/** A tempo that is tapped by hand, tap by tap. */

/** Four taps tell a tempo: three intervals. */
export const LEAST_TAPS = 4;
/** After a pause this long a new tempo is being tapped: a beat of 24 a minute, slower than anything is counted, seconds. */
const NEW_TEMPO_SECONDS = 2.5;
/** Of a longer row the last count: a hand settles, or follows a band that does. */
const LAST_TAPS = 12;

/**
 * The taps with one more.
 * @param seconds of any clock that goes on evenly
 */
export function withTap(taps: readonly number[], seconds: number): readonly number[] {
  const last = taps.at(-1);
  const goesOn = last !== undefined && seconds - last < NEW_TEMPO_SECONDS;
  return [...(goesOn ? taps : []), seconds].slice(-LAST_TAPS);
}

/** The tempo of taps in beats a minute, or null for fewer than {@link LEAST_TAPS}. */
export function bpmOfTaps(taps: readonly number[]): number | null {
  if (taps.length < LEAST_TAPS) return null;
  const rising = taps.toSorted((a, b) => a - b);
  return (60 * (rising.length - 1)) / (rising.at(-1)! - rising[0]!);
}

/** The tempo of the taps so far to the whole beat a minute; null for fewer than four. */
export function tappedBpm(taps: readonly number[]): number | null {
  const bpm = bpmOfTaps(taps);
  return bpm === null ? null : Math.round(bpm);
}
