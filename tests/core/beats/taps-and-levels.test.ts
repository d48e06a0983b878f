/** Tapped beats, and the same pulse counted on another level. */
import { describe, expect, test } from 'vitest';
import { chance } from '../../../src/core/base/random.ts';
import { atLevel, feltBeats } from '../../../src/core/beats/levels.ts';
import { bpmOfTaps } from '../../../src/core/beats/tapped-tempo.ts';
import { beatsOfTaps } from '../../../src/core/beats/taps.ts';
import { beatFMeasure, wanderingSeconds } from './rendered-track.ts';

/** A hand: it comes early by `early`, and scatters evenly within ±`scatter`. */
function tapped(beats: readonly number[], early: number, scatter: number, seed: number): number[] {
  const luck = chance(seed);
  return beats.map((beat) => beat - early + (2 * luck.next() - 1) * scatter);
}
const worst = (found: readonly number[], truth: readonly number[]) =>
  Math.max(...found.map((beat, i) => Math.abs(beat - truth[i]!)));

describe('taps', () => {
  const secondsAt = wanderingSeconds(104, 0.06, 64);
  const beats = Array.from({ length: 48 }, (_, i) => 2 + secondsAt(i));

  test('tell a tempo from the fourth on', () => {
    expect(bpmOfTaps([1, 1.5, 2])).toBeNull();
    expect(bpmOfTaps([2.5, 1, 1.5, 2])).toBeCloseTo(120, 9);
    expect(beatsOfTaps([1, 1.5, 2], [])).toEqual([]);
  });

  test('with attacks they land where the beats are, though the hand is early and scatters', () => {
    // Eighths of attacks, a few missing, as a band has them.
    const attacks = beats
      .flatMap((beat, i) => [beat, (beat + (beats[i + 1] ?? beat + 0.57)) / 2])
      .filter((_, i) => i % 7 !== 3);
    const found = beatsOfTaps(tapped(beats, 0.03, 0.035, 5), attacks);
    expect(found).toHaveLength(beats.length);
    expect(beatFMeasure(found, beats, 0.025)).toBeGreaterThan(0.95);
  });

  test('without attacks the scatter is smoothed and the drift is followed', () => {
    const hand = tapped(beats, 0, 0.035, 6);
    const found = beatsOfTaps(hand, []);
    const rms = (times: readonly number[]) =>
      Math.sqrt(times.reduce((sum, time, i) => sum + (time - beats[i]!) ** 2, 0) / times.length);
    expect(rms(found)).toBeLessThan(0.7 * rms(hand));
    expect(worst(found, beats)).toBeLessThan(0.035);
  });
});

describe('levels', () => {
  const beats = [0, 1, 2, 3, 4, 5, 6];
  test('the first downbeat stays a beat', () => {
    expect(atLevel(beats, 'half', 3)).toEqual([1, 3, 5]);
    expect(atLevel(beats, 'a third', 4)).toEqual([1, 4]);
    expect(atLevel([0, 1, 2], 'twice', 0)).toEqual([0, 0.5, 1, 1.5, 2]);
    expect(atLevel([0, 1, 2], 'three times', 0)).toHaveLength(7);
  });

  test('quick beats of which every third is stronger are the eighths of a slow triple pulse', () => {
    const strengths = beats.map((_, i) => (i % 3 === 1 ? 6 : 0));
    expect(feltBeats(beats, strengths, 180)).toEqual([1, 4]);
    expect(feltBeats(beats, strengths, 90)).toEqual(beats);
  });
});
