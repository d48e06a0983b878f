import { kaiser, kaiserBeta, kaiserTaps } from './kaiser.ts';

/** What folds back is so far down: less than the polyphase filter's 60, so that both in a row wait no longer. */
const CLOSED_DB = 50;
/** The first three are written out below; shorter filters fall short of his formula. */
const LEAST_PAIRS = 3;

/**
 * A stream at half its rate through a half-band filter: every second tap is 0 and the others mirror each other, which
 * leaves one multiplication for four taps (Crochiere & Rabiner, Multirate Digital Signal Processing, 1983, 4.3.3).
 */
export class Halver {
  /** What comes in is laid down here by whoever feeds it, from `filled` on. */
  readonly samples: Float32Array;
  filled: number;
  /** Samples after an output sample's own moment that it waits for. */
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

  /** Writes what is known by now to `out` from `at` on, and returns how many samples that is. */
  halve(out: Float32Array | Float64Array, at: number): number {
    const { samples, filled, reach } = this;
    const taps = this.#taps;
    const [a, b, c] = taps as unknown as readonly [number, number, number];
    let written = at;
    let middle = reach;
    // Five neighbours stay in registers and move up by one place, as every second sample is read once.
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
