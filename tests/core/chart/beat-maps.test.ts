import { describe, expect, it } from 'vitest';
import {
  isRound,
  lastAtOrBefore,
  listedBeatMap,
  roundBeatMap,
  steadyBeatMap,
} from '../../../src/core/chart/beat-maps.ts';

describe('a steady tempo', () => {
  it('has a beat each 60 / bpm seconds from the first downbeat on', () => {
    const map = steadyBeatMap(120, 3);
    expect(map.bpm).toBe(120);
    expect([map.secondsAt(-2), map.secondsAt(0), map.secondsAt(5)]).toEqual([2, 3, 5.5]);
    expect([map.beatAt(2), map.beatAt(3), map.beatAt(5.5)]).toEqual([-2, 0, 5]);
  });
});

describe('listed beats', () => {
  const map = listedBeatMap([1, 1.5, 2.5, 2.75]);

  it('are exact at each beat and interpolated between them', () => {
    expect([0, 1, 2, 3].map((beat) => map.secondsAt(beat))).toEqual([1, 1.5, 2.5, 2.75]);
    expect([1, 1.5, 2.5, 2.75].map((seconds) => map.beatAt(seconds))).toEqual([0, 1, 2, 3]);
    expect(map.secondsAt(1.5)).toBe(2);
    expect(map.beatAt(2)).toBe(1.5);
    expect(map.bpm).toBeNull();
  });

  it('go on at the tempo of the outer intervals', () => {
    expect(map.secondsAt(-1)).toBe(0.5);
    expect(map.beatAt(0.5)).toBe(-1);
    expect(map.secondsAt(5)).toBe(3.25);
    expect(map.beatAt(3.25)).toBe(5);
  });
});

describe('a round of beats', () => {
  const map = roundBeatMap([0, 0.5, 1.5], 2);

  it('comes again at its end', () => {
    expect(map.bpm).toBe(80);
    expect([0, 1, 2, 3, 4, 5].map((beat) => map.secondsAt(beat))).toEqual([2, 2.5, 3.5, 4, 5, 5.5]);
    expect([2, 2.5, 3.5, 4, 5].map((seconds) => map.beatAt(seconds))).toEqual([0, 1, 2, 3, 4]);
  });

  it('is counted in at the mean tempo of its first beats, four at the most', () => {
    expect(map.secondsAt(-2)).toBe(0.5);
    expect(map.beatAt(0.5)).toBe(-2);
    const longer = roundBeatMap([0, 1, 2, 3, 4, 4.5, 5], 0);
    expect(longer.secondsAt(-1)).toBe(-1);
  });

  it.each([[[0]], [[0.5, 1]], [[0, 1, 1]], [[0, 2, 1]], [[]]])('is none of %j', (beats) => {
    expect(isRound(beats)).toBe(false);
    expect(() => roundBeatMap(beats, 0)).toThrow('a round of beats rises from 0');
  });

  it('may have a single beat', () => {
    expect(isRound([0, 0.5])).toBe(true);
    expect(roundBeatMap([0, 0.5], 0).secondsAt(7)).toBe(3.5);
  });
});

describe('the last value that is not above another', () => {
  it.each([
    [0, -1],
    [1, 0],
    [1.9, 0],
    [2, 1],
    [5, 3],
    [9, 3],
  ])('of 1, 2, 3, 5 for %f is number %i', (value, index) => {
    expect(lastAtOrBefore([1, 2, 3, 5], value)).toBe(index);
  });

  it('of an empty list is −1, for no value', () => {
    expect(lastAtOrBefore([], 1)).toBe(-1);
  });
});
