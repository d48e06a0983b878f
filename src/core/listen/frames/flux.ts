import { Fft, magnitude } from '../../base/fft.ts';
import * as S from '../tuning/frames.ts';

/**
 * Spectral flux with a maximum filter over neighbouring bins of the earlier spectrum, so that vibrato and bends
 * are not attacks (Böck & Widmer, DAFx 2013). Two ticks share one transform.
 */
export class Flux {
  readonly size = S.FLUX_SIZE;
  readonly #fft = new Fft(S.FLUX_SIZE);
  readonly #re = new Float64Array(S.FLUX_SIZE);
  readonly #im = new Float64Array(S.FLUX_SIZE);
  readonly #window = new Float64Array(S.FLUX_SIZE);
  readonly #past: Float64Array[] = [];
  readonly #first = new Float64Array(S.FLUX_BINS + 1);
  readonly #second = new Float64Array(S.FLUX_BINS + 1);
  #loudest = 0;
  #tick = 0;

  constructor() {
    for (let i = 0; i < S.FLUX_SIZE; i++)
      this.#window[i] = 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / S.FLUX_SIZE);
    for (let i = 0; i < S.FLUX_BACK; i++) this.#past.push(new Float64Array(S.FLUX_BINS + 2).fill(1));
  }

  /** Flux of the windows that start at `first` and `second` of `samples`, into `out[at]` and `out[at + 1]`. */
  pair(samples: Float32Array, first: number, second: number, out: Float32Array, at: number): void {
    const re = this.#re;
    const im = this.#im;
    this.#fft.transformPair(samples, first, second, this.#window, re, im);
    for (let k = 1; k <= S.FLUX_BINS; k++) {
      const kr = re[k]!;
      const ki = im[k]!;
      const nr = re[S.FLUX_SIZE - k]!;
      const ni = im[S.FLUX_SIZE - k]!;
      this.#first[k] = 0.5 * magnitude(kr + nr, ki - ni);
      this.#second[k] = 0.5 * magnitude(ki + ni, nr - kr);
    }
    out[at] = this.#rise(this.#first);
    out[at + 1] = this.#rise(this.#second);
  }

  /** Mean rise of the compressed magnitudes, in nepers a bin. */
  #rise(magnitudes: Float64Array): number {
    let loudest = this.#loudest * S.FLUX_FORGET;
    for (let k = S.FLUX_FIRST_BIN; k <= S.FLUX_BINS; k++) {
      const here = magnitudes[k]!;
      if (here > loudest) loudest = here;
    }
    this.#loudest = loudest;
    const gain = 1 / Math.max(loudest * S.FLUX_FLOOR_SHARE, S.FLUX_LEAST_FLOOR);
    const past = this.#past[this.#tick % S.FLUX_BACK]!;
    // Σ log(now / highest) is one log of a quotient of products; 111 factors of at most 301 stay under 10^276.
    let risen = 1;
    let stood = 1;
    // The row of S.FLUX_BACK ticks ago is read a step ahead of being written over.
    let before = past[S.FLUX_FIRST_BIN - 1]!;
    let here = past[S.FLUX_FIRST_BIN]!;
    for (let k = S.FLUX_FIRST_BIN; k <= S.FLUX_BINS; k++) {
      const now = 1 + magnitudes[k]! * gain;
      const after = past[k + 1]!;
      // Larger of two without a branch: which it is is a coin toss here, and no processor can guess it.
      const higher = 0.5 * (before + here + Math.abs(before - here));
      const highest = 0.5 * (higher + after + Math.abs(higher - after));
      risen *= 0.5 * (now + highest + Math.abs(now - highest));
      stood *= highest;
      past[k] = now;
      before = here;
      here = after;
    }
    return this.#tick++ < S.FLUX_BACK ? 0 : Math.log(risen / stood) / (S.FLUX_BINS - S.FLUX_FIRST_BIN + 1);
  }
}
