import { describe, expect, test } from 'vitest';
import { Fft } from '../../../src/core/base/fft.ts';
import { Resampler } from '../../../src/core/base/resample.ts';

const OUT = 12_000;

function run(input: Float32Array, rate: number, piece = Infinity): Float32Array {
  const resampler = new Resampler(rate, OUT, 4000, 8000);
  const out = new Float32Array(OUT);
  const most = Math.min(piece, resampler.largestInput);
  let written = 0;
  for (let from = 0; from < input.length; from += most)
    written += resampler.process(input, from, Math.min(input.length, from + most), out, written);
  return out.subarray(0, written);
}

const tone = (hz: number, rate: number, seconds = 0.5): Float32Array =>
  Float32Array.from({ length: rate * seconds }, (_, i) => Math.cos((2 * Math.PI * hz * i) / rate + 0.3));

/** The strongest sinusoid under 4 kHz, in decibels of full scale. */
function strongestUnder4k(samples: Float32Array): number {
  const size = 1024;
  const re = Float64Array.from({ length: size }, (_, i) => {
    const window = 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / size);
    return (samples[500 + i]! * window * 4) / size;
  });
  const im = new Float64Array(size);
  new Fft(size).transform(re, im);
  let most = 0;
  for (let k = 1; k < (4000 * size) / OUT - 2; k++) most = Math.max(most, Math.hypot(re[k]!, im[k]!));
  return 20 * Math.log10(most + 1e-9);
}

describe('any rate to 12 kHz', () => {
  const rates = [8000, 11_025, 16_000, 22_050, 24_000, 32_000, 44_100, 48_000, 88_200, 96_000, 192_000];

  // The truth is the tone itself, sampled at the other rate.
  test.each(rates)('%i Hz: tones keep their place and height', (rate) => {
    for (const hz of [41.2, 440, 1500, 3000]) {
      const out = run(tone(hz, rate), rate);
      let most = 0;
      for (let n = 200; n < out.length - 200; n++)
        most = Math.max(most, Math.abs(out[n]! - Math.cos((2 * Math.PI * hz * n) / OUT + 0.3)));
      expect(most).toBeLessThan(0.006);
    }
  });

  test.each(rates.filter((rate) => rate > 16_000))('%i Hz: nothing folds back under 4 kHz', (rate) => {
    for (let hz = 8100; hz < rate / 2; hz += rate / 70)
      expect(strongestUnder4k(run(tone(hz, rate), rate))).toBeLessThan(-50);
  });

  test.each([44_100, 48_000, 96_000])('%i Hz: pieces of any length give the same', (rate) => {
    const input = tone(523, rate);
    const whole = run(input, rate);
    for (const piece of [1, 97, 128]) expect(run(input, rate, piece)).toEqual(whole);
  });

  test('what is no number becomes silence', () => {
    const input = tone(440, 48_000);
    input.fill(NaN, 3000, 3005);
    input[9000] = Infinity;
    expect(run(input, 48_000).every(Number.isFinite)).toBe(true);
  });

  test('an output sample needs at most delaySamples further input samples', () => {
    for (const rate of rates) {
      const { delaySamples } = new Resampler(rate, OUT, 4000, 8000);
      const fed = Math.ceil((100 * rate) / OUT + delaySamples) + 1;
      expect(run(new Float32Array(fed), rate).length).toBeGreaterThan(100);
      expect(delaySamples / rate).toBeLessThan(0.0021);
    }
  });
});
