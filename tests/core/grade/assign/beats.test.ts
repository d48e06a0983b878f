/** Strong beats and places in the beat. The groups of five and seven are common practice. */
import { describe, expect, it } from 'vitest';
import {
  isOnBeat,
  isStrongBeat,
  nearestEighth,
  onStrongBeats,
} from '../../../../src/core/grade/assign/beats.ts';

const strongOf = (beatsPerBar: number) =>
  Array.from({ length: beatsPerBar }, (_, beat) => beat).filter((beat) => isStrongBeat(beat, beatsPerBar));

describe('strong beats', () => {
  it('are the starts of the groups of each meter', () => {
    expect(strongOf(2)).toEqual([0]);
    expect(strongOf(3)).toEqual([0]);
    expect(strongOf(4)).toEqual([0, 2]);
    expect(strongOf(5)).toEqual([0, 3]);
    expect(strongOf(6)).toEqual([0, 3]);
    expect(strongOf(7)).toEqual([0, 2, 4]);
    expect(strongOf(9)).toEqual([0]);
  });

  it('come again in every bar, also before the first downbeat', () => {
    expect([4, 5, 6, 7].map((beat) => isStrongBeat(beat, 4))).toEqual([true, false, true, false]);
    expect([-4, -3, -2, -1].map((beat) => isStrongBeat(beat, 4))).toEqual([true, false, true, false]);
  });

  it('each take the nearest note, if it is nearer than a quarter of a beat', () => {
    expect(onStrongBeats([-0.1, 0.05, 1, 2.2, 2.3], 4)).toEqual([false, true, false, true, false]);
    expect(onStrongBeats([0.25, 1.75], 4)).toEqual([false, false]);
  });

  it('take the earlier of two notes that lie equally near', () => {
    expect(onStrongBeats([-0.125, 0.125], 4)).toEqual([true, false]);
  });
});

describe('a note on the beat', () => {
  it('lies nearer to it than a quarter of a beat, on either side', () => {
    expect([3, 3.2, 2.8, 3.25, 2.75, 3.5].map(isOnBeat)).toEqual([true, true, true, false, false, false]);
  });
});

describe('the nearest eighth', () => {
  it('is the beat, or the second eighth where the swing puts it', () => {
    expect(nearestEighth(4.1, 0.5, 2)).toBe(4);
    expect(nearestEighth(4.3, 0.5, 2)).toBe(4.5);
    expect(nearestEighth(4.3, 0.7, 2)).toBe(4);
    expect(nearestEighth(4.6, 0.7, 2)).toBe(4.7);
    expect(nearestEighth(4.9, 0.5, 2)).toBe(5);
    expect(nearestEighth(-0.1, 0.5, 2)).toBe(0);
  });

  it('is one of three in a dotted beat, whatever the swing', () => {
    expect(nearestEighth(4.3, 0.5, 3)).toBeCloseTo(4 + 1 / 3, 12);
    expect(nearestEighth(4.6, 0.5, 3)).toBeCloseTo(4 + 2 / 3, 12);
    expect(nearestEighth(4.9, 0.5, 3)).toBe(5);
  });

  it('is the earlier of two that lie equally near', () => {
    expect(nearestEighth(4.25, 0.5, 2)).toBe(4);
  });
});
