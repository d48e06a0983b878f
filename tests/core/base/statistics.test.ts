import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  effectiveCount,
  median,
  poissonBinomial,
  standardDeviation,
  tailFrom,
  upperMedian,
  wilsonInterval,
} from '../../../src/core/base/statistics.ts';

const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 11 });

/** Probability of `hits` successes or more among events of these chances. */
const upperTail = (chances: readonly number[], hits: number) =>
  tailFrom({ from: 0, weights: poissonBinomial(chances) }, hits);

describe('wilsonInterval', () => {
  it('holds the share and stays inside 0 to 1', () => {
    fc.assert(
      fc.property(fc.nat(400), fc.nat(400), (hits, misses) => {
        const of = hits + misses;
        const interval = wilsonInterval(hits, of);
        if (of === 0) return interval === null;
        const { low, high } = interval!;
        return low >= 0 && high <= 1 && low <= hits / of && hits / of <= high;
      }),
    );
  });

  it('is the mirror image when hits and misses change places', () => {
    const interval = wilsonInterval(3, 20)!;
    const mirror = wilsonInterval(17, 20)!;
    expect(mirror.low).toBeCloseTo(1 - interval.high, 12);
    expect(mirror.high).toBeCloseTo(1 - interval.low, 12);
  });

  it('refuses more hits than events', () => {
    expect(() => wilsonInterval(3, 2)).toThrow(RangeError);
    expect(() => wilsonInterval(-1, 2)).toThrow(RangeError);
  });
});

describe('poissonBinomial', () => {
  it('sums to one and has the mean of its chances', () => {
    fc.assert(
      fc.property(chances, (ps) => {
        const distribution = poissonBinomial(ps);
        const mean = distribution.reduce((sum, weight, k) => sum + k * weight, 0);
        expect(distribution.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
        expect(mean).toBeCloseTo(
          ps.reduce((a, b) => a + b, 0),
          10,
        );
      }),
    );
  });

  it('has a tail that never rises with the hits', () => {
    fc.assert(
      fc.property(chances, (ps) => {
        for (let k = 0; k <= ps.length; k++)
          expect(upperTail(ps, k + 1)).toBeLessThanOrEqual(upperTail(ps, k));
        expect(upperTail(ps, ps.length + 1)).toBe(0);
      }),
    );
  });

  it('refuses a chance that is not between 0 and 1', () => {
    expect(() => poissonBinomial([1.1])).toThrow(RangeError);
    expect(() => poissonBinomial([Number.NaN])).toThrow(RangeError);
  });
});

describe('small measures', () => {
  it('finds the middle', () => {
    expect(median([])).toBeNull();
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 2, 3])).toBe(2.5);
  });

  it('or the larger of the two in the middle', () => {
    expect(upperMedian([])).toBeNull();
    expect(upperMedian([3, 1, 2])).toBe(2);
    expect(upperMedian([4, 1, 2, 3])).toBe(3);
  });

  it('spreads as a sample does', () => {
    expect(standardDeviation([1])).toBeNull();
    expect(standardDeviation([2, 4, 4, 4, 5, 5, 7, 9])).toBeCloseTo(Math.sqrt(32 / 7), 12);
  });

  it('counts equal weights as they are and unequal ones as fewer', () => {
    expect(effectiveCount([2, 2, 2])).toBeCloseTo(3, 12);
    expect(effectiveCount([1, 0, 0])).toBe(1);
    expect(effectiveCount([])).toBe(0);
    expect(effectiveCount([3, 1])).toBeCloseTo(1.6, 12);
  });
});
