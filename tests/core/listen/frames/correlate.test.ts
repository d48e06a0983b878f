import { describe, expect, test } from 'vitest';
import { normalise } from '../../../../src/core/listen/frames/correlate.ts';
import { seededNoise } from '../sounds.ts';

describe('the normalised square difference', () => {
  // McLeod and Wyvill 2005, equations 4 to 9: twice the autocorrelation by the sum of the squares that it meets.
  test('is what its definition gives, lag by lag', () => {
    const window = 64;
    const samples = Float32Array.from(
      { length: 100 },
      (_, i) => Math.sin(0.4 * i) + seededNoise(1, 100, 0.1)[i]!,
    );
    const lags = 30;
    const at = (i: number) => samples[10 + i]!;
    const correlation = Array.from({ length: lags + 2 }, (_, lag) => {
      let sum = 0;
      for (let i = 0; i + lag < window; i++) sum += at(i) * at(i + lag);
      return sum;
    });
    const curve = new Float32Array(lags + 2);
    normalise(samples, 10, window, correlation, 1, curve);
    for (let lag = 1; lag <= lags; lag++) {
      let squares = 0;
      for (let i = 0; i + lag < window; i++) squares += at(i) ** 2 + at(i + lag) ** 2;
      expect(curve[lag]!).toBeCloseTo((2 * correlation[lag]!) / squares, 4);
    }
  });
});
