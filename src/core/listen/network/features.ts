import * as S from './settings.ts';
import { Spectra } from './spectra.ts';

/** Samples kept before the newest frame. */
const KEEP = S.LONG;

/**
 * Decibels about the reference level, brought to −1 to 3, as `spectra.as` does with powers. Nothing lies more than 60 dB under the
 * reference: a recording that is loud and clean, or digital silence, goes far below what a microphone gives, and with a lower floor
 * the first of three clean plucks at −12 dBFS was taken for half as sure as the same three 20 dB softer, or missed.
 */
function scaled(power: number, referenceDb: number): number {
  const x = (10 * Math.log10(power + 1e-10) - referenceDb) / 20 + 2;
  return x < -1 ? -1 : x > 3 ? 3 : x;
}

/**
 * Sound at 12 kHz → what the network sees, a frame each 16 ms, streaming. `bins` holds four padded rows (power of the long
 * window, of the short one, and their autocorrelations), `globals` the energies of four blocks of 4 ms, those of their
 * first differences, and the level. Both are written over by the next frame.
 */
export class Features {
  readonly #spectra = new Spectra();
  readonly bins = this.#spectra.bins;
  readonly globals = new Float32Array(S.GLOBALS);
  /** The long window's autocorrelation by lag, for the fine pitch. */
  readonly correlation = this.#spectra.correlation;
  readonly #samples = this.#spectra.samples;
  /** Of the newest frame's blocks. */
  readonly #energies = new Float64Array(S.BLOCKS);
  readonly #brights = new Float64Array(S.BLOCKS);
  #filled = KEEP;
  #done = KEEP;
  #before = 0;
  #meanBefore = 0;
  #reference = S.FLOOR_DB;
  /** Level of the newest frame in dBFS. */
  levelDb = -90;
  /** Level of the bright part (first differences) in each block of the newest frame, in dB. */
  readonly brightDb = new Float32Array(S.BLOCKS);

  /** Takes samples in; `onFrame` is called for each frame that is complete, oldest first. */
  push(samples: Float32Array, count: number, onFrame: () => void): void {
    for (let from = 0; from < count;) {
      const piece = Math.min(count - from, this.#samples.length - this.#filled);
      this.#samples.set(samples.subarray(from, from + piece), this.#filled);
      this.#filled += piece;
      from += piece;
      while (this.#done + S.HOP <= this.#filled) {
        this.#done += S.HOP;
        this.#frame(this.#done);
        onFrame();
      }
      if (this.#filled < this.#samples.length / 2) continue;
      const drop = this.#done - KEEP;
      this.#samples.copyWithin(0, drop, this.#filled);
      this.#filled -= drop;
      this.#done -= drop;
    }
  }

  #frame(end: number): void {
    const samples = this.#samples;
    const length = S.HOP / S.BLOCKS;
    let mean = 0;
    let previous = this.#before;
    for (let b = 0; b < S.BLOCKS; b++) {
      let energy = 0;
      let bright = 0;
      for (let i = end - S.HOP + b * length, last = i + length; i < last; i++) {
        const x = samples[i]!;
        energy += x * x;
        bright += (x - previous) * (x - previous);
        previous = x;
      }
      this.#energies[b] = energy / length;
      this.#brights[b] = bright / length;
      mean += energy / S.HOP;
    }
    this.#before = previous;
    const level = 10 * Math.log10(0.5 * (mean + this.#meanBefore) + 1e-9);
    this.#meanBefore = mean;
    this.levelDb = level;
    const reference = Math.max(S.FLOOR_DB, level, this.#reference - S.FALL_DB);
    this.#reference = reference;
    for (let b = 0; b < S.BLOCKS; b++) {
      this.globals[b] = scaled(this.#energies[b]!, reference);
      this.globals[S.BLOCKS + b] = scaled(this.#brights[b]!, reference);
      this.brightDb[b] = 10 * Math.log10(this.#brights[b]! + 1e-10);
    }
    this.globals[2 * S.BLOCKS] = (level - reference) / 20 + 1;
    this.#spectra.look(end, reference);
  }
}
