/** The audio clock against the beat: everything that sounds or is shown is placed by it. */

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

/**
 * The moment of the audio clock that reaches the ear now. What the screen shows should be read at this time:
 * `currentTime` is ahead of the loudspeaker by the output latency. Browsers that don't report it count as 0.
 */
export function heardContextSeconds(context: Pick<AudioContext, 'currentTime' | 'outputLatency'>): number {
  const latency = Number.isFinite(context.outputLatency) ? context.outputLatency : 0;
  return context.currentTime - latency;
}
