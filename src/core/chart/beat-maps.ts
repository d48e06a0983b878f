/** Beats against seconds: at one tempo, as a list of beats, or as a round of beats that comes again and again. */
import type { BeatMap } from './timeline.ts';

/** One tempo for ever. @param bpm beats a minute, above 0 */
export const steadyBeatMap = (bpm: number, firstBeatSeconds: number): BeatMap => ({
  bpm,
  beatAt: (seconds) => ((seconds - firstBeatSeconds) * bpm) / 60,
  secondsAt: (beat) => firstBeatSeconds + (beat * 60) / bpm,
});

/**
 * The same beats at another speed, about second 0.
 * @param speed above 0: 0.5 is half as fast
 */
export const slowedBeatMap = (map: BeatMap, speed: number): BeatMap => ({
  bpm: map.bpm === null ? null : map.bpm * speed,
  beatAt: (seconds) => map.beatAt(seconds * speed),
  secondsAt: (beat) => map.secondsAt(beat) / speed,
});

/**
 * Straight lines between listed beats, the outer ones drawn on. At a listed beat the position is exact.
 * @param times rising, two or more
 */
export function listedBeatMap(times: readonly number[]): BeatMap {
  const intervalAt = (found: number) => Math.min(Math.max(found, 0), times.length - 2);
  return {
    bpm: null,
    beatAt(seconds) {
      const index = intervalAt(lastAtOrBefore(times, seconds));
      const from = times[index] ?? 0;
      return index + (seconds - from) / ((times[index + 1] ?? 0) - from);
    },
    secondsAt(beat) {
      const index = intervalAt(Math.floor(beat));
      const from = times[index] ?? 0;
      return from + (beat - index) * ((times[index + 1] ?? 0) - from);
    },
  };
}

/** So many beats tell the pace that a round is entered at. */
const BEATS_OF_ENTRY = 4;

/**
 * A round of beats that is gone round without end: a recording that is looped. Before its first downbeat it is counted
 * in at the pace of its first beats.
 * @param beatSeconds seconds of each beat from the first downbeat of the round: 0 first, rising; the last is where the
 * round begins again, so that n + 1 numbers hold n beats
 * @param firstBeatSeconds where the first round's first downbeat lies
 * @throws RangeError for a round that does not rise from 0
 * @example roundBeatMap([0, 0.5, 1.02], 2).secondsAt(3) // 2 + 1.02 + 0.5
 */
export function roundBeatMap(beatSeconds: readonly number[], firstBeatSeconds: number): BeatMap {
  if (!isRound(beatSeconds)) throw new RangeError('a round of beats rises from 0 and holds a beat at least');
  const beats = beatSeconds.length - 1;
  const length = beatSeconds[beats]!;
  const entry = Math.min(BEATS_OF_ENTRY, beats);
  const entrySeconds = beatSeconds[entry]! / entry;
  const inside = listedBeatMap(beatSeconds);
  return {
    bpm: (60 * beats) / length,
    beatAt(seconds) {
      const passed = seconds - firstBeatSeconds;
      if (passed < 0) return passed / entrySeconds;
      const round = Math.floor(passed / length);
      return round * beats + inside.beatAt(passed - round * length);
    },
    secondsAt(beat) {
      if (beat < 0) return firstBeatSeconds + beat * entrySeconds;
      const round = Math.floor(beat / beats);
      return firstBeatSeconds + round * length + inside.secondsAt(beat - round * beats);
    },
  };
}

/** Whether these are the beats of a round: 0 first, then rising. */
export const isRound = (beatSeconds: readonly number[]): boolean =>
  beatSeconds.length >= 2 &&
  beatSeconds[0] === 0 &&
  beatSeconds.every((seconds, i) => i === 0 || seconds > beatSeconds[i - 1]!);

/** Index of the last of rising values that is not above `value`, or −1. */
export function lastAtOrBefore(values: readonly number[], value: number): number {
  let low = 0;
  let high = values.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((values[middle] ?? Infinity) <= value) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
