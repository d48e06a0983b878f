import { Fft, magnitude } from '../../base/fft.ts';

/** 21 ms windows: bins of 47 Hz. */
const SIZE = 256;
const BINS = 112;
/** Bins below this carry hum and the fundamental's beating, not attacks (2 · 47 Hz). */
const FIRST_BIN = 2;
/** Flux is taken against three ticks back: the rise of the window over an attack takes that long. */
const BACK = 3;
/** Magnitudes are compressed as log(1 + m / floor), the floor this far under the loudest bin of late. */
const FLOOR_SHARE = 1 / 300;
/** The loudest bin is forgotten with a time constant of about 4 s (1000 ticks). */
const FORGET = 0.999;
/** Full-scale sine: 64 (Hann, SIZE / 4). Nothing below −90 dB of it counts. */
const LEAST_FLOOR = 64 * 3e-5;

/**
 * Spectral flux with a maximum filter over neighbouring bins of the earlier spectrum, so that vibrato and bends
 * are not attacks (Böck & Widmer, DAFx 2013). Two ticks share one transform.
 */
export class Flux {
  readonly size = SIZE;
  readonly #fft = new Fft(SIZE);
  readonly #re = new Float64Array(SIZE);
  readonly #im = new Float64Array(SIZE);
  readonly #window = new Float64Array(SIZE);
  readonly #past: Float64Array[] = [];
  readonly #first = new Float64Array(BINS + 1);
  readonly #second = new Float64Array(BINS + 1);
  #loudest = 0;
  #tick = 0;

  constructor() {
    for (let i = 0; i < SIZE; i++) this.#window[i] = 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / SIZE);
    for (let i = 0; i < BACK; i++) this.#past.push(new Float64Array(BINS + 2).fill(1));
  }

  /** Flux of the windows that start at `first` and `second` of `samples`, into `out[at]` and `out[at + 1]`. */
  pair(samples: Float32Array, first: number, second: number, out: Float32Array, at: number): void {
    const re = this.#re;
    const im = this.#im;
    this.#fft.transformPair(samples, first, second, this.#window, re, im);
    for (let k = 1; k <= BINS; k++) {
      const kr = re[k]!;
      const ki = im[k]!;
      const nr = re[SIZE - k]!;
      const ni = im[SIZE - k]!;
      this.#first[k] = 0.5 * magnitude(kr + nr, ki - ni);
      this.#second[k] = 0.5 * magnitude(ki + ni, nr - kr);
    }
    out[at] = this.#rise(this.#first);
    out[at + 1] = this.#rise(this.#second);
  }

  /** Mean rise of the compressed magnitudes, in nepers a bin. */
  #rise(magnitudes: Float64Array): number {
    let loudest = this.#loudest * FORGET;
    for (let k = FIRST_BIN; k <= BINS; k++) {
      const here = magnitudes[k]!;
      if (here > loudest) loudest = here;
    }
    this.#loudest = loudest;
    const gain = 1 / Math.max(loudest * FLOOR_SHARE, LEAST_FLOOR);
    const past = this.#past[this.#tick % BACK]!;
    // Σ log(now / highest) is one log of a quotient of products; 111 factors of at most 301 stay under 10^276.
    let risen = 1;
    let stood = 1;
    // The row of BACK ticks ago is read a step ahead of being written over.
    let before = past[FIRST_BIN - 1]!;
    let here = past[FIRST_BIN]!;
    for (let k = FIRST_BIN; k <= BINS; k++) {
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
    return this.#tick++ < BACK ? 0 : Math.log(risen / stood) / (BINS - FIRST_BIN + 1);
  }
}
