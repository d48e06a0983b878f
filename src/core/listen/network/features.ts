import * as S from './settings.ts';
import { WindowSpectra } from './spectra.ts';

/** Samples kept before the newest frame. */
const KEEP = S.LONG;
const BUFFER = 8192;

/** Decibels about the reference level, brought to about −1.5 to 3. */
function scaled(power: number, referenceDb: number): number {
  const x = (10 * Math.log10(power + 1e-10) - referenceDb) / 20 + 2;
  return x < -1.5 ? -1.5 : x > 3 ? 3 : x;
}

/**
 * Sound at 12 kHz → what the network sees, a frame each 16 ms, streaming. `bins` holds four padded rows (power of the long
 * window, of the short one, and their autocorrelations), `globals` the energies of four blocks of 4 ms, those of their
 * first differences, and the level. Both are written over by the next frame.
 */
export class Features {
  readonly bins = new Float32Array(4 * S.ROW);
  readonly globals = new Float32Array(S.GLOBALS);
  /** The long window's autocorrelation by lag, for the fine pitch. */
  readonly long = new WindowSpectra(S.LONG, S.LONG_LAGS);
  readonly #short = new WindowSpectra(S.SHORT, S.SHORT_LAGS);
  readonly #samples = new Float32Array(BUFFER);
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
      const piece = Math.min(count - from, BUFFER - this.#filled);
      this.#samples.set(samples.subarray(from, from + piece), this.#filled);
      this.#filled += piece;
      from += piece;
      while (this.#done + S.HOP <= this.#filled) {
        this.#done += S.HOP;
        this.#frame(this.#done);
        onFrame();
      }
      if (this.#filled < BUFFER / 2) continue;
      const drop = this.#done - KEEP;
      this.#samples.copyWithin(0, drop, this.#filled);
      this.#filled -= drop;
      this.#done -= drop;
    }
  }

  #frame(end: number): void {
    const samples = this.#samples;
    const length = S.HOP / S.BLOCKS;
    const energies: number[] = [];
    const brights: number[] = [];
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
      energies.push(energy / length);
      brights.push(bright / length);
      mean += energy / S.HOP;
    }
    this.#before = previous;
    const level = 10 * Math.log10(0.5 * (mean + this.#meanBefore) + 1e-9);
    this.#meanBefore = mean;
    this.levelDb = level;
    const reference = Math.max(S.FLOOR_DB, level, this.#reference - S.FALL_DB);
    this.#reference = reference;
    for (let b = 0; b < S.BLOCKS; b++) {
      this.globals[b] = scaled(energies[b]!, reference);
      this.globals[S.BLOCKS + b] = scaled(brights[b]!, reference);
      this.brightDb[b] = 10 * Math.log10(brights[b]! + 1e-10);
    }
    this.globals[2 * S.BLOCKS] = (level - reference) / 20 + 1;
    this.long.look(samples, end);
    this.#short.look(samples, end);
    this.#lay(this.long, 0, reference);
    this.#lay(this.#short, 1, reference);
  }

  #lay(spectra: WindowSpectra, row: number, reference: number): void {
    const { bins } = this;
    const at = row * S.ROW + S.PAD;
    const { power, periodicity } = spectra;
    for (let i = 0; i < S.BINS; i++) {
      bins[at + i] = scaled(power[i]!, reference);
      const c = periodicity[i]!;
      bins[at + 2 * S.ROW + i] = c < -1 ? -1 : c > 1.2 ? 1.2 : c;
    }
  }
}
