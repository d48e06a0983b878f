/** The audio clock and the beat: everything that sounds or is shown takes its time from here. */

import type { BeatMap } from '../../core/chart/timeline.ts';

/** A tempo that began at a known moment of the audio clock. */
export interface BandClock {
  /** Context time (seconds of AudioContext.currentTime) at which beat 0 is scheduled. */
  readonly firstBeatContextSeconds: number;
  beatAt(contextSeconds: number): number;
  contextSecondsAt(beat: number): number;
}

/** @param beats beats against seconds from the first downbeat */
export const bandClock = (
  firstBeatContextSeconds: number,
  { beatAt, secondsAt }: Pick<BeatMap, 'beatAt' | 'secondsAt'>,
): BandClock => ({
  firstBeatContextSeconds,
  beatAt: (contextSeconds) => beatAt(contextSeconds - firstBeatContextSeconds),
  contextSecondsAt: (beat) => firstBeatContextSeconds + secondsAt(beat),
});
