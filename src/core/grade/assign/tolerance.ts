/**
 * Hands and microphones are not exact to the millisecond, so that no grade may hang on one: the edges round a change
 * are this much wider, in seconds at any tempo.
 */
import type { Timeline } from '../../chart/timeline.ts';

/** What a player may ask for, in seconds. Half of skilled soloists' spread round the beat lies within (trade figures). */
export const TOLERANCE_SECONDS = 0.05;
export const MOST_TOLERANCE_SECONDS = 0.1;

/** At a fast tempo it stays under a sixteenth, so that a played sixteenth keeps its place. */
const MOST_OF_THE_BEAT = 0.25;

/** The tolerance at a change, in seconds: as asked, but never more than a quarter of the beat before it. */
export function toleranceAt(
  { beatMap }: Pick<Timeline, 'beatMap'>,
  changeBeat: number,
  toleranceSeconds: number,
): number {
  const beatSeconds = beatMap.secondsAt(changeBeat) - beatMap.secondsAt(changeBeat - 1);
  return Math.min(toleranceSeconds, MOST_OF_THE_BEAT * beatSeconds);
}

/** Times are compared to a hundred-thousandth of a second, "or less" including equal. */
export const SAME_SECONDS = 1e-5;

/** The tolerance behind a beat, in beats. */
export const toleranceBeats = (
  timeline: Pick<Timeline, 'beatMap'>,
  beat: number,
  toleranceSeconds: number,
): number => {
  const { beatMap } = timeline;
  return beatMap.beatAt(beatMap.secondsAt(beat) + toleranceAt(timeline, beat, toleranceSeconds)) - beat;
};
