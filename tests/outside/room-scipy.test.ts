/**
 * The room's sums against SciPy (BSD): convolution, deconvolution, the logarithmic chirp, whose phase is that of
 * A. Farina's exponential sweep (108th AES Convention, 2000). On answers kept in fixtures/room, so that the check
 * runs on a machine without SciPy too. And ITU-T G.168's echo return loss enhancement by its definition.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { bandInARoom, levelDb } from '../../fixtures/room/band-in-a-room.ts';
import { convolve } from '../../fixtures/lines/room.ts';
import { BandFollower, LOOK_AHEAD } from '../../src/core/room/cancel/follow.ts';
import { powerOfTwoFrom, RealFft } from '../../src/core/base/real-fft.ts';
import { BLOCK_SIZE, PARTITIONS, ROOM_HZ } from '../../src/core/room/align/room-rate.ts';
import { deconvolve, sweep } from '../../src/core/room/path/sweep.ts';
import { cancelled } from '../core/room/cancelled.ts';

interface Expected {
  readonly played: readonly number[];
  readonly path: readonly number[];
  readonly heard: readonly number[];
  readonly solved: readonly number[];
  readonly sweep: {
    readonly sampleRate: number;
    readonly seconds: number;
    readonly lowHz: number;
    readonly highHz: number;
  };
  readonly chirp: readonly number[];
}
const file = fileURLToPath(new URL('../../fixtures/room/expected.json', import.meta.url));
const expected = JSON.parse(readFileSync(file, 'utf8')) as Expected;
const floats = (values: readonly number[]) => Float32Array.from(values);
const furthest = (a: ArrayLike<number>, b: readonly number[]): number =>
  b.reduce((most, x, i) => Math.max(most, Math.abs(x - a[i]!)), 0);

describe('against scipy.signal', () => {
  test('spectra multiplied are fftconvolve', () => {
    const fft = new RealFft(powerOfTwoFrom(expected.heard.length));
    const spectrumOf = (values: readonly number[]) => {
      const padded = new Float64Array(fft.size);
      padded.set(values);
      const out = fft.spectrum();
      fft.forward(padded, out);
      return out;
    };
    const a = spectrumOf(expected.played);
    const b = spectrumOf(expected.path);
    const product = fft.spectrum();
    for (let i = 0; i < product.length; i += 2) {
      product[i] = a[i]! * b[i]! - a[i + 1]! * b[i + 1]!;
      product[i + 1] = a[i]! * b[i + 1]! + a[i + 1]! * b[i]!;
    }
    const heard = new Float64Array(fft.size);
    fft.inverse(product, heard);
    expect(furthest(heard, expected.heard)).toBeLessThan(1e-8);
  });

  test('deconvolve finds the path that fftconvolve was given', () => {
    const taps = deconvolve(floats(expected.heard), floats(expected.played), expected.path.length);
    expect(furthest(taps, expected.path)).toBeLessThan(0.005);
    expect(furthest(floats(expected.solved), expected.path)).toBeLessThan(1e-6);
  });

  test('the sweep is the logarithmic chirp', () => {
    const ours = sweep({ ...expected.sweep, fadeSeconds: 1e-9 });
    // Farina's last sample is at the end of the sweep's time, as SciPy's is; ends are faded by one sample.
    expect(furthest(ours.subarray(1, -1), expected.chirp.slice(1, -1))).toBeLessThan(1e-4);
  });
});

test('ERLE (ITU-T G.168: level of the echo before the canceller over that behind it, far end alone)', async () => {
  const { echo, band, path } = await bandInARoom({
    instrument: 'jazz',
    sampleRate: ROOM_HZ,
    seconds: 12,
    seed: 742,
    delaySeconds: 0.06,
    bandDb: 0,
  });
  // The near end is silent: the microphone hears the band alone.
  const erle = (echoed: Float32Array): number => {
    const swept = new BandFollower({
      blockSize: BLOCK_SIZE,
      partitions: PARTITIONS,
      path: [path],
      heldBackSamples: LOOK_AHEAD,
    });
    const left = cancelled(swept, echoed, band, LOOK_AHEAD);
    return levelDb(echoed, left, ROOM_HZ, [1, 12]);
  };
  expect(erle(convolve(band, path))).toBeGreaterThan(35);
  // A speaker that bends the sound by 2 % (−34 dB) leaves what no linear path can take.
  expect(erle(echo)).toBeGreaterThan(20);
});
