import FFT from 'fft.js';
import { describe, expect, test } from 'vitest';
import { Fft } from '../../../src/core/base/fft.ts';

/** Of no period and no symmetry. */
const noise = (length: number, seed: number): Float64Array =>
  Float64Array.from({ length }, (_, i) => Math.sin(seed + i * i * 0.7) + 0.3 * Math.cos(seed * i));

/** The same transform by fft.js (npm), interleaved. */
function reference(re: Float64Array, im: Float64Array): number[] {
  const fft = new FFT(re.length);
  const out = fft.createComplexArray();
  fft.transform(
    out,
    Array.from({ length: 2 * re.length }, (_, i) => (i % 2 === 0 ? re : im)[i >> 1]!),
  );
  return out;
}

function furthest(re: Float64Array, im: Float64Array, from: readonly number[]): number {
  let most = 0;
  for (let k = 0; k < re.length; k++)
    most = Math.max(most, Math.abs(re[k]! - from[2 * k]!), Math.abs(im[k]! - from[2 * k + 1]!));
  return most;
}

describe('the transform', () => {
  test.each([16, 32, 64, 128, 512, 1024, 2048, 8192])('of %i points is that of fft.js', (size) => {
    const re = noise(size, 1);
    const im = noise(size, 2);
    const expected = reference(re, im);
    new Fft(size).transform(re, im);
    expect(furthest(re, im, expected)).toBeLessThan(1e-10 * size);
  });

  test.each([
    [256, 256],
    [512, 352],
  ])('of %i points takes two windows of %i in at once', (size, length) => {
    const samples = Float32Array.from(noise(700, 3));
    const window = Float64Array.from({ length }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / length));
    const windowed = (start: number) =>
      Float64Array.from({ length: size }, (_, i) => (i < length ? samples[start + i]! * window[i]! : 0));
    const re = new Float64Array(size);
    const im = new Float64Array(size);
    // The second window ends with the samples themselves.
    new Fft(size).transformPair(samples, 5, 700 - length, window, re, im);
    expect(furthest(re, im, reference(windowed(5), windowed(700 - length)))).toBeLessThan(1e-9);
  });

  test('says which sizes it takes', () => {
    for (const size of [8, 48, 2 ** 21]) expect(() => new Fft(size)).toThrow(RangeError);
  });
});
