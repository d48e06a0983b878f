/** The audio clock against the beat: everything that sounds or is shown is placed by it. */

/** A tempo that began at a known moment of the audio clock. */
export interface BandClock {
  /** Context time (seconds of AudioContext.currentTime) at which beat 0 is scheduled. */
  readonly firstBeatContextSeconds: number;
  beatAt(contextSeconds: number): number;
  contextSecondsAt(beat: number): number;
}

/** A clock of constant tempo. */
export function bandClock(firstBeatContextSeconds: number, bpm: number): BandClock {
  const beatSeconds = 60 / bpm;
  return {
    firstBeatContextSeconds,
    beatAt: (contextSeconds) => (contextSeconds - firstBeatContextSeconds) / beatSeconds,
    contextSecondsAt: (beat) => firstBeatContextSeconds + beat * beatSeconds,
  };
}

/**
 * The moment of the audio clock that reaches the ear now. What the screen shows should be read at this time:
 * `currentTime` is ahead of the loudspeaker by the output latency. Browsers that don't report it count as 0.
 */
export function heardContextSeconds(context: Pick<AudioContext, 'currentTime' | 'outputLatency'>): number {
  const latency = Number.isFinite(context.outputLatency) ? context.outputLatency : 0;
  return context.currentTime - latency;
}
