/** A tempo that rises as the form goes round: used by band, clock and grading alike. */
import type { BeatMap, TempoRise } from './timeline.ts';

/** A tempo rises up to this; one that starts faster stays as it is. */
export const MOST_RISEN_BPM = 280;

/**
 * The tempo at a beat counted from the first downbeat; what comes before it (count-in, pickup) has the first tempo.
 * @example bpmAt({ bpm: 100, rise: { byBpm: 4, everyBars: 12 }, beatsPerBar: 4 }, 48) // 104
 */
export function bpmAt({ bpm, rise, beatsPerBar }: RisingTempo, beat: number): number {
  if (rise === null || beat < 0) return bpm;
  return bpmOfStep(bpm, rise, Math.floor(beat / (rise.everyBars * beatsPerBar) + SAME_BEAT));
}

/** The next beat after this one at which the tempo changes, or Infinity. */
export function nextTempoBeat(tempo: RisingTempo, beat: number): number {
  const { rise, beatsPerBar } = tempo;
  if (rise === null) return Infinity;
  const stepBeats = rise.everyBars * beatsPerBar;
  const next = Math.max(1, Math.floor(beat / stepBeats + SAME_BEAT) + 1) * stepBeats;
  return bpmAt(tempo, next) > bpmAt(tempo, beat) ? next : Infinity;
}

export interface RisingTempo {
  /** The first tempo, beats a minute. */
  readonly bpm: number;
  /** null: the tempo stays. */
  readonly rise: TempoRise | null;
  readonly beatsPerBar: number;
}

/** Beats are sums of fractions: this much apart, in steps, they are the same. */
const SAME_BEAT = 1e-9;

const bpmOfStep = (bpm: number, rise: TempoRise, step: number): number =>
  Math.min(Math.max(bpm, MOST_RISEN_BPM), bpm + step * rise.byBpm);

/**
 * Beats against seconds under a rising tempo. `bpm` of the map is the first tempo.
 * @throws RangeError for a rise that is none
 */
export function risingBeatMap(tempo: RisingTempo, firstBeatSeconds: number): BeatMap {
  const { bpm, rise, beatsPerBar } = tempo;
  if (rise !== null && !(rise.byBpm > 0 && Number.isInteger(rise.everyBars) && rise.everyBars >= 1))
    throw new RangeError('a tempo rises by more than 0 after 1 or more whole bars');
  const stepBeats = rise === null ? Infinity : rise.everyBars * beatsPerBar;
  /** Seconds from the first downbeat at which each step begins; the last step goes on for ever. */
  const starts = [0];
  for (let step = 0; rise !== null; step++) {
    const pace = bpmOfStep(bpm, rise, step);
    if (bpmOfStep(bpm, rise, step + 1) === pace) break;
    starts.push(starts[step]! + (stepBeats * 60) / pace);
  }
  const paceOf = (step: number) => (rise === null ? bpm : bpmOfStep(bpm, rise, step));
  const stepOfBeat = (beat: number) =>
    Math.min(starts.length - 1, Math.max(0, Math.floor(beat / stepBeats + SAME_BEAT)));
  return {
    bpm,
    beatAt(seconds) {
      const passed = seconds - firstBeatSeconds;
      const step = Math.max(
        0,
        starts.findLastIndex((start) => start <= passed),
      );
      const before = step === 0 ? 0 : step * stepBeats;
      return before + ((passed - starts[step]!) * paceOf(step)) / 60;
    },
    secondsAt(beat) {
      const step = stepOfBeat(beat);
      const before = step === 0 ? 0 : step * stepBeats;
      return firstBeatSeconds + starts[step]! + ((beat - before) * 60) / paceOf(step);
    },
  };
}
