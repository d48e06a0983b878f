import { describe, expect, it } from 'vitest';
import { PartialFinder } from '../../../../src/core/listen/frames/partials.ts';
import { INNER_RATE, LONGEST_STRETCH, SHORTEST_STRETCH } from '../../../../src/core/listen/tuning/frames.ts';

/** Sum of sinusoids given as [hz, amplitude]: the truth is the sum itself. */
const sumOf =
  (...sinusoids: readonly (readonly [number, number])[]) =>
  (i: number) =>
    sinusoids.reduce(
      (sum, [hz, amplitude], k) => sum + amplitude * Math.sin((2 * Math.PI * hz * i) / INNER_RATE + k),
      0,
    );

describe('the partials of a stretch', () => {
  it.each([LONGEST_STRETCH, 1500, SHORTEST_STRETCH])('are found within a cent, %i samples', (length) => {
    const truth = [
      [196.3, 1],
      [311.7, 0.5],
      [1234.5, 0.1],
      [3456.7, 0.3],
    ] as const;
    const { list, binHz } = new PartialFinder().find(sumOf(...truth), length);
    expect(binHz).toBeCloseTo(INNER_RATE / length, 9);
    expect(list.length).toBe(truth.length);
    list.forEach(({ hz, amplitude }, i) => {
      expect(Math.abs(1200 * Math.log2(hz / truth[i]![0]))).toBeLessThan(1);
      expect(amplitude / list[0]!.amplitude).toBeCloseTo(truth[i]![1], 1);
    });
  });

  it('are two where two lie four bins apart, one where they lie one apart', () => {
    const bin = INNER_RATE / LONGEST_STRETCH;
    const count = (apart: number) =>
      new PartialFinder().find(sumOf([400, 1], [400 + apart * bin, 0.8]), LONGEST_STRETCH).list.length;
    expect(count(4)).toBe(2);
    expect(count(1)).toBe(1);
  });

  it('are two a little further apart than two bins, where the spectrum falls to half between them', () => {
    const bin = INNER_RATE / LONGEST_STRETCH;
    const count = (apart: number) =>
      new PartialFinder().find(sumOf([400, 1], [400 + apart * bin, 0.8]), LONGEST_STRETCH).list.length;
    expect(count(2.3)).toBe(2);
    expect(count(2)).toBeLessThan(2);
  });

  it('are as strong as a hundredth of the strongest, at least', () => {
    const count = (amplitude: number) =>
      new PartialFinder().find(sumOf([400, 1], [1700, amplitude]), LONGEST_STRETCH).list.length;
    expect([count(0.012), count(0.008)]).toEqual([2, 1]);
  });

  it('are none in silence', () => {
    expect(new PartialFinder().find(() => 0, LONGEST_STRETCH).list).toEqual([]);
  });
});
