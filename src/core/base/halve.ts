import { kaiser, kaiserBeta, kaiserTaps } from './kaiser.ts';

/**
 * Attenuation of what folds back, dB: less than the polyphase filter's 60, so that both in a row have no longer delay.
 */
const CLOSED_DB = 50;
/** The first three pairs of taps are written out below; for shorter filters Kaiser's formula does not hold. */
const LEAST_PAIRS = 3;

/**
 * A stream at half its rate through a half-band filter: every second tap is 0 and the others mirror each other, which
 * leaves one multiplication for four taps (Crochiere & Rabiner, Multirate Digital Signal Processing, 1983, 4.3.3).
 */
export class Halver {
  /** The input: the caller writes samples here from index `filled` on, and then raises `filled`. */
  readonly samples: Float32Array;
  filled: number;
  /** Input samples after the moment of an output sample that are needed to compute it. */
  readonly reach: number;
  /** Taps 1, 3, 5 … samples from the middle one, which is ½. */
  readonly #taps: Float64Array;

  /** Flat up to `edge` (a share of the rate below ¼) and closed from ½ − edge; takes `most` samples at a time. */
  constructor(edge: number, most: number) {
    const pairs = Math.max(LEAST_PAIRS, Math.ceil((kaiserTaps(CLOSED_DB, 0.5 - 2 * edge) + 1) / 4));
    this.reach = 2 * pairs - 1;
    this.#taps = Float64Array.from({ length: pairs }, (_, i) => {
      const x = 2 * i + 1;
      return (Math.sin((Math.PI * x) / 2) / (Math.PI * x)) * kaiser(kaiserBeta(CLOSED_DB), x / (2 * pairs));
    });
    const sum = this.#taps.reduce((a, b) => a + b);
    for (let i = 0; i < pairs; i++) this.#taps[i]! /= 4 * sum;
    this.samples = new Float32Array(most + 2 * this.reach + 2);
    // Silence before the first sample, so that output sample n lies at input sample 2n exactly.
    this.filled = this.reach;
  }

  /** Writes the output samples that can be computed to `out`, from index `at` on, and returns their number. */
  halve(out: Float32Array | Float64Array, at: number): number {
    const { samples, filled, reach } = this;
    const taps = this.#taps;
    const [a, b, c] = taps as unknown as readonly [number, number, number];
    let written = at;
    let middle = reach;
    // Five neighbouring samples stay in registers and move by one place, so that each sample is read once.
    let p = samples[middle - 5]!;
    let q = samples[middle - 3]!;
    let r = samples[middle - 1]!;
    let s = samples[middle + 1]!;
    let t = samples[middle + 3]!;
    for (; middle + reach < filled; middle = (middle + 2) | 0) {
      const u = samples[middle + 5]!;
      let sum = 0.5 * samples[middle]! + a * (r + s) + (b * (q + t) + c * (p + u));
      for (let i = LEAST_PAIRS, x = 7; x <= reach; i++, x += 2)
        sum += taps[i]! * (samples[middle - x]! + samples[middle + x]!);
      out[written++] = sum;
      p = q;
      q = r;
      r = s;
      s = t;
      t = u;
    }
    samples.copyWithin(0, middle - reach, filled);
    this.filled = filled - (middle - reach);
    return written - at;
  }
}
