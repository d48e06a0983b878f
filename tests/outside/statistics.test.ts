/**
 * Intervals and tails against published values, closed forms and brute force.
 */
import { describe, expect, it } from 'vitest';
import { poissonBinomial, quantile, tailFrom, wilsonInterval } from '../../src/core/base/statistics.ts';

/** Probability of `hits` successes or more among events of these chances. */
const upperTail = (chances: readonly number[], hits: number) =>
  tailFrom({ from: 0, weights: poissonBinomial(chances) }, hits);

describe('Wilson 95 % interval', () => {
  // Exact check values of the project's definition, computed by hand from Wilson's formula.
  it.each([
    [7, 12, 0.32, 0.807],
    [0, 10, 0, 0.278],
  ])('%i of %i', (hits, of, low, high) => {
    const interval = wilsonInterval(hits, of)!;
    expect(interval.low).toBeCloseTo(low, 3);
    expect(interval.high).toBeCloseTo(high, 3);
  });

  // R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, table I, method 3 (score, no continuity correction);
  // values from memory, each agreeing with the formula to the four decimals printed there.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('Newcombe: %i of %i', (hits, of, low, high) => {
    const interval = wilsonInterval(hits, of)!;
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
  });

  // Wilson's own definition: the ends are the shares p for which the hits lie exactly z standard errors off.
  it('solves |share - p| = z sqrt(p (1 - p) / n) at both ends', () => {
    for (const [hits, of] of [
      [1, 5],
      [7, 12],
      [40, 41],
      [300, 941],
    ] as const) {
      const { low, high } = wilsonInterval(hits, of)!;
      for (const p of [low, high]) {
        expect(Math.abs(hits / of - p)).toBeCloseTo(1.959964 * Math.sqrt((p * (1 - p)) / of), 6);
      }
    }
  });
});

describe('Poisson binomial', () => {
  it('three even coins: at least two heads in half of the throws', () => {
    expect(upperTail([0.5, 0.5, 0.5], 2)).toBeCloseTo(0.5, 12);
  });

  it('0.1, 0.2, 0.3 by hand', () => {
    const chances = [0.1, 0.2, 0.3];
    expect(poissonBinomial(chances)[0]).toBeCloseTo(0.504, 12);
    expect(upperTail(chances, 1)).toBeCloseTo(0.496, 12);
    expect(poissonBinomial(chances)[3]).toBeCloseTo(0.006, 12);
  });

  it('equals every outcome counted one by one', () => {
    const chances = [0.02, 0.31, 0.5, 0.77, 0.083, 0.9, 0.25, 0.6, 0.125, 0.4];
    const byHand = new Array<number>(chances.length + 1).fill(0);
    for (let outcome = 0; outcome < 1 << chances.length; outcome++) {
      let weight = 1;
      let hits = 0;
      chances.forEach((p, i) => {
        const hit = (outcome >> i) & 1;
        hits += hit;
        weight *= hit === 1 ? p : 1 - p;
      });
      byHand[hits] = byHand[hits]! + weight;
    }
    poissonBinomial(chances).forEach((weight, k) => expect(weight).toBeCloseTo(byHand[k]!, 12));
    expect(upperTail(chances, 7)).toBeCloseTo(byHand[7]! + byHand[8]! + byHand[9]! + byHand[10]!, 12);
  });

  it('is the binomial where all chances are alike', () => {
    // Upper tail of Binomial(20, 1/12) by its closed form.
    const choose = (n: number, k: number) => {
      let product = 1;
      for (let i = 1; i <= k; i++) product = (product * (n - k + i)) / i;
      return product;
    };
    let tail = 0;
    for (let k = 6; k <= 20; k++) tail += choose(20, k) * (1 / 12) ** k * (11 / 12) ** (20 - k);
    expect(upperTail(new Array<number>(20).fill(1 / 12), 6)).toBeCloseTo(tail, 14);
  });
});

describe('quantile', () => {
  // numpy.quantile([3, 1, 2, 10, 7], …) of NumPy 2.4, whose default is type 7 of Hyndman and Fan.
  it.each([
    [0, 1],
    [0.1, 1.4],
    [0.25, 2],
    [0.5, 3],
    [0.75, 7],
    [0.9, 8.8],
    [1, 10],
  ])('%f is what NumPy gives', (share, value) => {
    expect(quantile([3, 1, 2, 10, 7], share)).toBeCloseTo(value, 12);
  });

  it('refuses no values and a share that is no share', () => {
    expect(() => quantile([], 0.5)).toThrow(RangeError);
    expect(() => quantile([1], 1.5)).toThrow('0 to 1');
  });
});
