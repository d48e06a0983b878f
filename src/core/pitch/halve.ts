import { kaiser, kaiserTaps } from './kaiser.ts';

/** The first four are written out below; shorter filters would fall short of 60 dB as well. */
const LEAST_PAIRS = 4;

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
    const pairs = Math.max(LEAST_PAIRS, Math.ceil((kaiserTaps(0.5 - 2 * edge) + 1) / 4));
    this.reach = 2 * pairs - 1;
    this.#taps = Float64Array.from({ length: pairs }, (_, i) => {
      const x = 2 * i + 1;
      return (Math.sin((Math.PI * x) / 2) / (Math.PI * x)) * kaiser(x / (2 * pairs));
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
    const [a, b, c, d] = taps as unknown as readonly [number, number, number, number];
    let written = at;
    let middle = reach;
    // Seven neighbours stay in registers and move up by one place, as every second sample is read once.
    let p = samples[middle - 7]!;
    let q = samples[middle - 5]!;
    let r = samples[middle - 3]!;
    let s = samples[middle - 1]!;
    let t = samples[middle + 1]!;
    let u = samples[middle + 3]!;
    let v = samples[middle + 5]!;
    for (; middle + reach < filled; middle = (middle + 2) | 0) {
      const w = samples[middle + 7]!;
      let sum = 0.5 * samples[middle]! + a * (s + t) + b * (r + u) + (c * (q + v) + d * (p + w));
      for (let i = LEAST_PAIRS, x = 9; x <= reach; i++, x += 2)
        sum += taps[i]! * (samples[middle - x]! + samples[middle + x]!);
      out[written++] = sum;
      p = q;
      q = r;
      r = s;
      s = t;
      t = u;
      u = v;
      v = w;
    }
    samples.copyWithin(0, middle - reach, filled);
    this.filled = filled - (middle - reach);
    return written - at;
  }
}
