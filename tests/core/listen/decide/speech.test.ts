/** What tells playing from speaking, from frames made by hand: each limit on both sides. */
import { describe, expect, test } from 'vitest';
import { SemitoneGrid } from '../../../../src/core/listen/decide/semitone-grid.ts';
import { SpeechGuard, SpeechOdds, syllableFeatures } from '../../../../src/core/listen/decide/speech.ts';
import type { HeardNote } from '../../../../src/core/take/note.ts';
import { pitches, times, trackOf } from './made-track.ts';

describe('what speaks for a syllable', () => {
  const featuresOf = (...midis: readonly number[]) =>
    syllableFeatures(trackOf(pitches(...midis)), { from: 0, last: midis.length - 1 }, 0.5);

  test('is not told by fewer than four frames of pitch', () => {
    expect(featuresOf(60, 60, 60, NaN)).toBeNull();
    expect(featuresOf(60, 60, 60, 60)).not.toBeNull();
  });

  test('rest, length and number of frames', () => {
    const half = featuresOf(...times(8, {}).map(() => 60))!;
    expect(half.length).toBeCloseTo(0.5, 9);
    expect(half.frames).toBeCloseTo(Math.log(8), 9);
    expect(half.rest).toBe(1);
    const long = featuresOf(...times(80, {}).map(() => 60))!;
    expect(long.length).toBe(1);
    expect(long.frames).toBeCloseTo(Math.log(50), 9);
    expect(featuresOf(60, 60, 60, 60, 60, 60.14)!.rest).toBe(1);
    expect(featuresOf(60, 60, 60, 60, 60, 60.16)!.rest).toBeCloseTo(5 / 6, 9);
  });

  test('the stillest six frames and the change within three, as logarithms', () => {
    // A steady rise of a tenth of a semitone a frame: half a semitone in six frames, 0.3 in three.
    const rising = featuresOf(...Array.from({ length: 20 }, (_, i) => 60 + i / 10))!;
    expect(rising.still).toBeCloseTo(Math.log(0.52), 3);
    expect(rising.step).toBeCloseTo(Math.log(0.32), 3);
    expect(featuresOf(...times(20, {}).map(() => 60))!.still).toBeCloseTo(Math.log(0.02), 6);
  });
});

describe('one grid of semitones', () => {
  const strengthAfter = (...notes: readonly (readonly [midi: number, seconds: number])[]) => {
    const grid = new SemitoneGrid();
    for (const [midi, seconds] of notes) grid.take(midi, seconds);
    return grid.strength;
  };

  test('is weak before anything is heard', () => {
    expect(strengthAfter()).toBeCloseTo(0.1 / 0.125, 9);
    // One note of 0.2 s: (0.2 + 0.1) / (0.2 + 0.125).
    expect(strengthAfter([60.3, 0.2])).toBeCloseTo(0.3 / 0.325, 9);
  });

  test('forgets, and a long note counts as 0.3 s', () => {
    // A note half a semitone off it takes away: |0.85 · 0.3 − 0.2| + 0.1 over 0.85 · 0.3 + 0.2 + 0.125.
    expect(strengthAfter([60, 5], [60.5, 0.2])).toBeCloseTo(0.155 / 0.58, 9);
  });
});

describe('the odds from note to note', () => {
  const admits = (frames: number, covered = false) => {
    const note: HeardNote = {
      onsetSeconds: 0,
      offsetSeconds: 0.05,
      midi: 60,
      confidence: 1,
      levelDb: -20,
      attack: 'struck',
      bendSemitones: 0,
      vibrato: null,
      second: null,
    };
    const span = { ...note, from: 0, last: frames - 1, peakDb: -20, plateauFrom: 0, pitch: 60 };
    const guard = new SpeechGuard();
    return { admitted: guard.admits(trackOf(times(frames, {})), span, note, covered), guard, span, note };
  };

  test('a note too short to tell is a little more like speech, unless strings ring over it', () => {
    expect(admits(3).admitted).toBe(false);
    expect(admits(3, true).admitted).toBe(true);
    expect(admits(40).admitted).toBe(true);
  });

  test.each([
    [11.5, true],
    [12.8, false],
  ])('fade by a tenth a note and with 30 s: a note too short, and silence for %d s', (seconds, speech) => {
    const { guard, span, note } = admits(3);
    // 0.5 · 0.9 · e^(−12.2 / 30) is 0.3.
    guard.admits(trackOf(times(3, {})), { ...span, onsetSeconds: seconds }, note, true);
    expect(guard.hearsSpeech).toBe(speech);
  });

  test('no note says more than 2.5, and the sum stays between −4 and 6', () => {
    const after = (...own: readonly number[]) => {
      const odds = new SpeechOdds();
      for (const value of own) odds.take(value, 0);
      return odds.hearsSpeech;
    };
    // −2.5 · 0.9 = −2.25.
    expect(after(-9, 2.4)).toBe(false);
    expect(after(-9, 2.6)).toBe(false);
    expect(after(-9, 9, 0.06)).toBe(false);
    expect(after(-9, 9, 0.09)).toBe(true);
    // 2.5 · 0.9 = 2.25: no more, however sure the first note was.
    expect(after(9, -1.9)).toBe(true);
    expect(after(9, -2)).toBe(false);
    // −4 · 0.9 + 2.5 = −1.1, and · 0.9 + 1.25 or 1.33.
    expect(after(-9, -9, -9, 9, 1.25)).toBe(false);
    expect(after(-9, -9, -9, 9, 1.33)).toBe(true);
    // 6 · 0.9 − 2.5 = 2.9, · 0.9 − 2.5 = 0.11.
    expect(after(9, 9, 9, 9, -9, -2.28)).toBe(true);
    expect(after(9, 9, 9, 9, -9, -2.34)).toBe(false);
  });

  test('while it is speech only a note that is clearly played passes', () => {
    const passes = (own: number) => {
      const odds = new SpeechOdds();
      odds.take(9, 0);
      odds.take(9, 0);
      return odds.take(own, 0);
    };
    expect(passes(-1.45)).toBe(true);
    expect(passes(-1.35)).toBe(false);
  });
});
