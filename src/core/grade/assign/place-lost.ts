import type { Timeline } from '../../chart/timeline.ts';
import type { LostSound, LostStretch } from '../../take/lost-sound.ts';

/** The stretches with their places in the form. */
export function placeLost(lost: readonly LostStretch[], timeline: Timeline): LostSound[] {
  return lost.map(({ atSeconds, seconds }) => {
    const beat = timeline.beatMap.beatAt(atSeconds);
    if (beat < 0) return { atSeconds, seconds, beat, bar: null, chorus: null };
    const chorus = Math.floor(beat / timeline.roundBeats);
    const bar = Math.floor((beat - chorus * timeline.roundBeats) / timeline.beatsPerBar);
    return { atSeconds, seconds, beat, bar, chorus };
  });
}
