import { Fft, magnitude } from './fft.ts';

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
  readonly #past: Float32Array[] = [];
  readonly #magnitudes = new Float32Array(BINS + 1);
  #loudest = 0;
  #tick = 0;

  constructor() {
    for (let i = 0; i < SIZE; i++) this.#window[i] = 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / SIZE);
    for (let i = 0; i < BACK; i++) this.#past.push(new Float32Array(BINS + 1));
  }

  /** Flux of the windows that start at `first` and `second` of `samples`, into `out[at]` and `out[at + 1]`. */
  pair(samples: Float32Array, first: number, second: number, out: Float32Array, at: number): void {
    const re = this.#re;
    const im = this.#im;
    const window = this.#window;
    for (let i = 0; i < SIZE; i++) {
      re[i] = samples[first + i]! * window[i]!;
      im[i] = samples[second + i]! * window[i]!;
    }
    this.#fft.transform(re, im);
    const magnitudes = this.#magnitudes;
    for (let k = 1; k <= BINS; k++) {
      const n = SIZE - k;
      magnitudes[k] = magnitude((re[k]! + re[n]!) / 2, (im[k]! - im[n]!) / 2);
    }
    out[at] = this.#rise();
    for (let k = 1; k <= BINS; k++) {
      const n = SIZE - k;
      magnitudes[k] = magnitude((im[k]! + im[n]!) / 2, (re[n]! - re[k]!) / 2);
    }
    out[at + 1] = this.#rise();
  }

  /** Takes #magnitudes in; mean rise of the compressed magnitudes, in nepers a bin. */
  #rise(): number {
    const magnitudes = this.#magnitudes;
    let loudest = this.#loudest * FORGET;
    for (let k = FIRST_BIN; k <= BINS; k++) if (magnitudes[k]! > loudest) loudest = magnitudes[k]!;
    this.#loudest = loudest;
    const gain = 1 / Math.max(loudest * FLOOR_SHARE, LEAST_FLOOR);
    const past = this.#past[this.#tick % BACK]!;
    let sum = 0;
    // The row of BACK ticks ago is read a step ahead of being written over.
    let before = past[FIRST_BIN - 1]!;
    for (let k = FIRST_BIN; k <= BINS; k++) {
      const now = Math.log(1 + magnitudes[k]! * gain);
      const here = past[k]!;
      const after = k < BINS ? past[k + 1]! : 0;
      const highest = Math.max(before, here, after);
      if (this.#tick >= BACK && now > highest) sum += now - highest;
      before = here;
      past[k] = now;
    }
    this.#tick++;
    return sum / (BINS - FIRST_BIN + 1);
  }
}
