/** Whether a loop from speaker to microphone stood still while a take was played: its delay second by second. */
import { powerOfTwoFrom, RealFft } from '../../src/core/base/real-fft.ts';

const LONGEST_SECONDS = 0.4;

/** Delay of microphone after band in each second where it can be told, ms: the peak of the whitened correlation. */
export function delaysMs(microphone: Float32Array, band: Float32Array, rate: number): number[] {
  const reach = Math.round(LONGEST_SECONDS * rate);
  const fft = new RealFft(powerOfTwoFrom(rate + reach));
  const [a, b, signal] = [fft.spectrum(), fft.spectrum(), new Float64Array(fft.size)];
  const found: number[] = [];
  for (let from = 0; from + rate + reach <= microphone.length; from += rate) {
    signal.fill(0).set(microphone.subarray(from, from + rate + reach));
    fft.forward(signal, a);
    signal.fill(0).set(band.subarray(from, from + rate));
    fft.forward(signal, b);
    for (let i = 0; i < a.length; i += 2) {
      const re = a[i]! * b[i]! + a[i + 1]! * b[i + 1]!;
      const im = a[i + 1]! * b[i]! - a[i]! * b[i + 1]!;
      const size = Math.hypot(re, im) + 1e-6;
      a[i] = re / size;
      a[i + 1] = im / size;
    }
    fft.inverse(a, signal);
    let best = 0;
    let squares = 0;
    for (let lag = 0; lag < reach; lag++) {
      squares += signal[lag]! ** 2;
      if (Math.abs(signal[lag]!) > Math.abs(signal[best]!)) best = lag;
    }
    // Ten standard deviations: chance alone reaches five.
    if (Math.abs(signal[best]!) > 10 * Math.sqrt(squares / reach)) found.push((1000 * best) / rate);
  }
  return found;
}
