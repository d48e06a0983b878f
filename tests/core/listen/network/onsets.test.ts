/** Which of several onsets that lie near each other is the note. Times in frames of 16 ms, pitches in semitones. */
import { describe, expect, it } from 'vitest';
import { isTakenBy, onsetsOf, type Onset } from '../../../../src/core/listen/network/onsets.ts';
import { Outputs } from '../../../../src/core/listen/network/outputs.ts';
import { PITCHES } from '../../../../src/core/listen/network/settings.ts';

const onset = (at: number, pitch: number, sure: number): Onset => ({
  ...{ frame: Math.round(at), pitch, at, semitone: pitch, onset: sure, body: 1 },
});
const taken = (one: Onset, other: Onset) => [isTakenBy(one, other), isTakenBy(other, one)];

describe('two onsets of different pitches', () => {
  it('are one stroke within three frames: the surer stays', () => {
    expect(taken(onset(20, 30, 0.8), onset(23, 35, 0.9))).toEqual([true, false]);
    expect(taken(onset(20, 30, 0.9), onset(23, 35, 0.8))).toEqual([false, true]);
    expect(taken(onset(20, 30, 0.8), onset(23.1, 35, 0.9))).toEqual([false, false]);
  });

  it('that are equally sure are the earlier one, or the lower', () => {
    expect(taken(onset(20, 35, 0.8), onset(21, 30, 0.8))).toEqual([false, true]);
    expect(taken(onset(20, 30, 0.8), onset(20, 35, 0.8))).toEqual([false, true]);
  });
});

describe('two onsets of one pitch', () => {
  it('within four frames are the first, unless it has less than 0.6 of the other’s probability', () => {
    expect(taken(onset(20, 30, 0.6), onset(24, 30, 1))).toEqual([false, true]);
    expect(taken(onset(20, 30, 0.59), onset(24, 30, 1))).toEqual([true, false]);
    expect(taken(onset(20, 30, 0.6), onset(24.1, 30, 1))).toEqual([false, false]);
  });

  it('may lie a semitone apart', () => {
    expect(taken(onset(20, 30, 0.8), onset(24, 31, 0.8))).toEqual([false, true]);
    expect(taken(onset(20, 30, 0.8), onset(24, 32, 0.8))).toEqual([false, false]);
  });
});

describe('the onsets of a frame', () => {
  /** Answers of ten frames; each entry is an onset's frame, semitone and probability. All sounds from there on. */
  const found = (onsets: readonly (readonly [number, number, number])[], sounding = 1, frame = 4) => {
    const outputs = new Outputs();
    for (let f = 0; f < 10; f++) {
      const begins = new Float32Array(PITCHES);
      const sounds = new Float32Array(PITCHES);
      for (const [at, pitch, probability] of onsets) {
        if (at === f) begins[pitch] = probability;
        if (f > at) sounds[pitch] = sounding;
      }
      outputs.push(begins, sounds);
    }
    const list: Onset[] = [];
    onsetsOf(outputs, frame, list);
    return list;
  };

  it('are dated and pitched by the probabilities about them', () => {
    const [one] = found(
      [
        [4, 30, 0.6],
        [5, 30, 0.2],
        [4, 31, 0.2],
      ],
      0.9,
    );
    expect(one).toMatchObject({ frame: 4, pitch: 30 });
    expect(one!.at).toBeCloseTo(4.2, 6);
    expect(one!.semitone).toBeCloseTo(30.2, 6);
    expect(one!.onset).toBeCloseTo(1, 6);
  });

  it('are no likelier than one, and as sure to sound as the four frames after them', () => {
    expect(
      found([
        [4, 30, 0.9],
        [5, 30, 0.9],
      ])[0]!.onset,
    ).toBe(1);
    expect(found([[4, 30, 0.9]], 0.4)[0]!.body).toBeCloseTo(0.4, 6);
  });

  it('stand out over three frames on either side, each of which sums up its neighbours', () => {
    const beside = (frame: number) =>
      found([
        [4, 30, 0.6],
        [frame, 30, 0.9],
      ]).some(({ pitch }) => pitch === 30);
    expect([beside(9), beside(8), beside(6), beside(2)]).toEqual([true, false, false, false]);
  });

  it('may be at either end of the compass', () => {
    expect(found([[4, 0, 0.9]])[0]).toMatchObject({ pitch: 0, semitone: 0 });
    expect(found([[4, PITCHES - 1, 0.9]])[0]).toMatchObject({ semitone: PITCHES - 1 });
    expect(found([[1, 30, 0.9]], 1, 1)[0]).toMatchObject({ frame: 1, at: 1 });
  });
});
