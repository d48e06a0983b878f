import { Autocorrelator } from 'pitchy';
import { describe, expect, test } from 'vitest';
import { LongCorrelator, normalise, PairCorrelator } from '../../../../src/core/listen/frames/correlate.ts';

const samples = Float32Array.from(
  { length: 600 },
  (_, i) => Math.sin(i * 0.13) + 0.4 * Math.sin(i * 0.291 + 1) + 0.1 * Math.sin(i * i),
);

/** McLeod & Wyvill (2005), equations 2, 6 and 9, term by term. */
function plainCurve(start: number, length: number, lags: number): number[] {
  return Array.from({ length: lags }, (_, lag) => {
    let product = 0;
    let power = 0;
    for (let i = start; i < start + length - lag; i++) {
      product += samples[i]! * samples[i + lag]!;
      power += samples[i]! ** 2 + samples[i + lag]! ** 2;
    }
    return (2 * product) / power;
  });
}

describe('correlations by transform', () => {
  test.each([162, 161, 2])('two at once are what the equation says, %i lags', (lags) => {
    const a = new Float32Array(lags);
    const b = new Float32Array(lags);
    new PairCorrelator(512, 350).correlate(samples, 7, a, 240, b);
    const [plainA, plainB] = [plainCurve(7, 350, lags), plainCurve(240, 350, lags)];
    for (let lag = 0; lag < lags; lag++) {
      expect(a[lag]).toBeCloseTo(plainA[lag]!, 5);
      expect(b[lag]).toBeCloseTo(plainB[lag]!, 5);
    }
  });

  test("two at once are pitchy's, normalised", () => {
    const a = new Float32Array(129);
    const b = new Float32Array(129);
    new PairCorrelator(512, 256).correlate(samples, 0, a, 300, b);
    const window = Array.from(samples.subarray(300, 556));
    const reference = new Float32Array(129);
    normalise(samples, 300, 256, Autocorrelator.forNumberArray(256).autocorrelate(window), 1, reference);
    for (let lag = 0; lag < 129; lag++) expect(b[lag]).toBeCloseTo(reference[lag]!, 5);
  });

  test.each([1, 162, 163])('and so is that of one long window, %i lags', (lags) => {
    const curve = new Float32Array(lags);
    new LongCorrelator(1024, 512).correlate(samples, 60, curve);
    const plain = plainCurve(60, 512, lags);
    for (let lag = 0; lag < lags; lag++) expect(curve[lag]).toBeCloseTo(plain[lag]!, 5);
  });

  test('silence beside sound stays silence', () => {
    const half = Float32Array.from(samples, (x, i) => (i < 300 ? 0 : x));
    const a = new Float32Array(100);
    const b = new Float32Array(100);
    new PairCorrelator(512, 256).correlate(half, 0, a, 300, b);
    expect(Math.max(...a.map(Math.abs))).toBe(0);
    expect(b[0]).toBeCloseTo(1, 6);
  });
});
