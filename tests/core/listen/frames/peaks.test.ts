import { describe, expect, test } from 'vitest';
import { emptyPeaks, findPeaks } from '../../../../src/core/listen/frames/peaks.ts';

/** A correlation as cosines of a period: exact, so that a peak's height and place are known between the lags too. */
function curveOf(period: number, powers: readonly number[]): Float32Array {
  return Float32Array.from({ length: 162 }, (_, lag) =>
    powers.reduce((sum, power, h) => sum + power * Math.cos((2 * Math.PI * (h + 1) * lag) / period), 0),
  );
}

describe('peaks of a correlation', () => {
  test('a bright peak half way between two lags is as high as its double, which falls on one', () => {
    // Period 38.5 samples, most power in the eighth to twelfth harmonics, up to 3.7 kHz at 12 kHz.
    const powers = [0.1, 0.05, 0.05, 0.05, 0.05, 0.05, 0.05, 0.1, 0.1, 0.1, 0.15, 0.15];
    const curve = curveOf(38.5, powers);
    expect(Math.max(curve[38]!, curve[39]!)).toBeLessThan(0.85);
    const peaks = emptyPeaks();
    findPeaks(curve, 5, 160, peaks);
    const at = [...peaks.lag.subarray(0, peaks.count)].findIndex((lag) => Math.abs(lag - 38.5) < 0.1);
    expect(at).toBeGreaterThanOrEqual(0);
    expect(peaks.height[at]).toBeGreaterThan(0.95);
  });

  test('no peak in a curve that only falls', () => {
    const peaks = emptyPeaks();
    findPeaks(
      Float32Array.from({ length: 162 }, (_, lag) => 1 - lag / 100),
      5,
      160,
      peaks,
    );
    expect(peaks.count).toBe(0);
  });
});
