/**
 * The whitened correlation of two recordings (PHAT; Knapp & Carter 1976): every bin has the same weight, so that a
 * repeated bass note alone makes no peak.
 */
import { powerOfTwoFrom, RealFft } from '../../base/real-fft.ts';

export interface Peak {
  /** Take position minus backing position, samples, fractional. */
  readonly lagSamples: number;
  readonly prominence: number;
}

/**
 * A bin whose amplitude is below this share of the largest is left out: above the upper limit of a recording (half of
 * 8 kHz, the low-pass of an mp3) there is only noise of the converters.
 */
const EMPTY = 1e-7;

/**
 * Adds the whitened correlation of one segment of the take with the stretch of backing that can match it.
 * sum[i] belongs to lag firstLag + i.
 */
export function addWhitened(
  sum: Float64Array,
  segment: Float32Array,
  backing: Float32Array,
  segmentStart: number,
  firstLag: number,
): void {
  const lastLag = firstLag + sum.length - 1;
  const from = segmentStart - lastLag;
  const length = segment.length + sum.length - 1;
  const fft = new RealFft(powerOfTwoFrom(length));
  const signal = new Float64Array(fft.size);
  signal.set(segment);
  const a = fft.spectrum();
  fft.forward(signal, a);
  signal.fill(0);
  for (let i = 0; i < length; i++) signal[i] = backing[from + i] ?? 0;
  const b = fft.spectrum();
  fft.forward(signal, b);
  let most = 1e-20;
  for (let k = 0; k < fft.bins; k++) {
    const re = b[2 * k]! * a[2 * k]! + b[2 * k + 1]! * a[2 * k + 1]!;
    const im = b[2 * k + 1]! * a[2 * k]! - b[2 * k]! * a[2 * k + 1]!;
    a[2 * k] = re;
    a[2 * k + 1] = im;
    most = Math.max(most, re * re + im * im);
  }
  const floor = EMPTY * Math.sqrt(most);
  for (let k = 0; k < fft.bins; k++) {
    const size = Math.hypot(a[2 * k]!, a[2 * k + 1]!) + floor;
    a[2 * k]! /= size;
    a[2 * k + 1]! /= size;
  }
  fft.inverse(a, signal);
  // signal[j]: the segment matches the backing from `from + j` on, a lag of segmentStart − from − j.
  for (let i = 0; i < sum.length; i++) sum[i] = sum[i]! + signal[sum.length - 1 - i]!;
}

/** The peak of largest absolute value, because a converter may invert the polarity. Null where all is silent. */
export function peakOf(correlation: Float64Array, firstLag: number): Peak | null {
  let best = 0;
  let squares = 0;
  for (let i = 0; i < correlation.length; i++) {
    squares += correlation[i]! ** 2;
    if (Math.abs(correlation[i]!) > Math.abs(correlation[best]!)) best = i;
  }
  const deviation = Math.sqrt(squares / correlation.length);
  if (deviation === 0) return null;
  return {
    lagSamples: firstLag + topNear(correlation, best),
    prominence: Math.abs(correlation[best]!) / deviation,
  };
}

/** The fractional position of a peak: the vertex of the parabola through its highest sample and the two beside it. */
export function topNear(correlation: Float64Array, index: number): number {
  const sign = Math.sign(correlation[index]!);
  const left = sign * (correlation[index - 1] ?? 0);
  const right = sign * (correlation[index + 1] ?? 0);
  const bend = left - 2 * sign * correlation[index]! + right;
  return index + (bend < 0 ? (0.5 * (left - right)) / bend : 0);
}
