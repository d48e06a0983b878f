/** Scores of bars that are rotated independently, counted by hand. */
import { describe, expect, it } from 'vitest';
import { sumOfRotations } from '../../../../src/core/grade/chance/rotated-sum.ts';

const rotations = (...rows: readonly (readonly number[])[]) => rows.map((row) => Float64Array.from(row));

describe('a sum of rotated scores', () => {
  it('has the chance of as much and of as little, over all rotations', () => {
    // Two bars, each 0 or 1 by its rotation: sums 0, 1, 1, 2.
    const two = rotations([0, 0], [1, 1]);
    expect(sumOfRotations(two, Float64Array.from([1, 1]))).toMatchObject({
      upper: 0.25,
      lower: 1,
      variance: 0.5,
    });
    expect(sumOfRotations(two, Float64Array.from([1, 0]))).toMatchObject({ upper: 0.75, lower: 0.75 });
    expect(sumOfRotations(two, Float64Array.from([0, 0]))).toMatchObject({ upper: 1, lower: 0.25 });
  });

  it('weighs scores of unlike size', () => {
    // One bar of 0, 1, 5 and one that is always 2.
    const rotated = rotations([0, 2], [1, 2], [5, 2]);
    const { upper, lower, variance } = sumOfRotations(rotated, Float64Array.from([1, 2]));
    expect(upper).toBeCloseTo(2 / 3, 12);
    expect(lower).toBeCloseTo(2 / 3, 12);
    expect(variance).toBeCloseTo(14 / 3, 12); // (4 + 1 + 9) / 3
  });

  it('counts scores under nought too', () => {
    const rotated = rotations([-1], [0], [1], [2]);
    expect(sumOfRotations(rotated, Float64Array.from([1]))).toMatchObject({ upper: 0.5, lower: 0.75 });
  });

  it('shows nothing where no rotation changes a score', () => {
    expect(sumOfRotations(rotations([2], [2]), Float64Array.from([2]))).toEqual({
      upper: 1,
      lower: 1,
      variance: 0,
    });
  });

  it('is normal for many bars', () => {
    const bars = 100;
    const even = (value: number) => new Array<number>(bars).fill(value);
    const rotated = rotations(even(0), even(1));
    // Mean 50, variance 25: ten more are two standard deviations, of which 2.275 % lie above (any normal table).
    const played = Float64Array.from(even(0).map((_, i) => (i < 60 ? 1 : 0)));
    const { upper, lower, variance } = sumOfRotations(rotated, played);
    expect(variance).toBeCloseTo(25, 12);
    expect(upper).toBeCloseTo(0.02275, 5);
    expect(lower).toBeCloseTo(0.97725, 5);
  });

  it('is exact for forty-eight bars', () => {
    const rotated = rotations(new Array<number>(48).fill(0), new Array<number>(48).fill(1));
    // All of 48 coins heads.
    const { upper } = sumOfRotations(rotated, Float64Array.from(new Array<number>(48).fill(1)));
    expect(upper / 2 ** -48).toBeCloseTo(1, 6);
  });
});
