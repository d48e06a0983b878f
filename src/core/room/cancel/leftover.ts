/**
 * Whether the band is still in what is left. The two are correlated with whitening (the generalized correlation with phase
 * transform, Knapp & Carter 1976): the player's notes have no common lag with the band, however loud they are.
 */
import { RealFft } from '../../base/real-fft.ts';

/** Samples that are correlated at once: 0.68 s at 12 kHz. */
const WINDOW = 8192;
/** Samples between two comparisons. */
const HOP = 4096;
/**
 * From this median height of the peak over the last comparisons on, in standard deviations, the band is taken to be there.
 * Single peaks reach 26 where player and band strike the same notes. Medians of three tuning lines: without the band 6 to
 * 7; with the band 20 dB below the player 9 to 16, 12 dB below 17 to 24, 6 dB below 26 to 29, equally loud 32.
 */
const PRESENT = 24;
/**
 * Comparisons of the median, four seconds: a turned knob is followed within two, so that it does not reach the median.
 */
const COMPARISONS = 13;
/** After each report the path has this many comparisons (5 s) to be learned before the next report. */
const REST = 15;

export class Leftover {
  readonly #reach: number;
  readonly #fft = new RealFft(2 * WINDOW);
  readonly #left = new Float32Array(WINDOW);
  readonly #band: Float32Array;
  readonly #signal = new Float64Array(2 * WINDOW);
  readonly #a = this.#fft.spectrum();
  readonly #b = this.#fft.spectrum();
  #fresh = 0;
  #heights: number[] = [];
  #rest = 0;

  /** @param reach longest lag of the band that is searched for, samples, at most WINDOW */
  constructor(reach: number) {
    this.#reach = Math.min(WINDOW, reach);
    this.#band = new Float32Array(2 * WINDOW);
  }

  /** Power of what is left as a ratio to the band's power, over the last window. */
  get ratio(): number {
    return energy(this.#left, 0) / (energy(this.#band, WINDOW) + 1e-9);
  }

  /** Takes a block; returns true once each time the band has been there for a while. */
  push(left: Float32Array, band: Float32Array): boolean {
    slide(this.#left, left);
    slide(this.#band, band);
    this.#fresh += left.length;
    if (this.#fresh < HOP) return false;
    this.#fresh -= HOP;
    this.#heights = [...this.#heights.slice(1 - COMPARISONS), this.#compare()];
    if (this.#rest > 0) this.#rest--;
    if (this.#rest > 0 || this.#heights.length < COMPARISONS) return false;
    const middle = this.#heights.toSorted((a, b) => a - b)[COMPARISONS >> 1]!;
    if (middle < PRESENT) return false;
    this.#rest = REST;
    return true;
  }

  #compare(): number {
    const signal = this.#signal;
    const a = this.#a;
    const b = this.#b;
    signal.set(this.#band);
    this.#fft.forward(signal, b);
    signal.fill(0, 0, WINDOW);
    signal.set(this.#left, WINDOW);
    this.#fft.forward(signal, a);
    for (let i = 0; i < a.length; i += 2) {
      const re = a[i]! * b[i]! + a[i + 1]! * b[i + 1]!;
      const im = a[i + 1]! * b[i]! - a[i]! * b[i + 1]!;
      const size = Math.hypot(re, im) + 1e-12;
      a[i] = re / size;
      a[i + 1] = im / size;
    }
    this.#fft.inverse(a, signal);
    let most = 0;
    let squares = 1e-20;
    for (let lag = 0; lag < this.#reach; lag++) {
      const height = Math.abs(signal[lag]!);
      squares += height * height;
      if (height > most) most = height;
    }
    return most / Math.sqrt(squares / this.#reach);
  }
}

function slide(buffer: Float32Array, block: Float32Array): void {
  buffer.copyWithin(0, block.length);
  buffer.set(block, buffer.length - block.length);
}

function energy(samples: Float32Array, from: number): number {
  let sum = 0;
  for (let i = from; i < samples.length; i++) sum += samples[i]! * samples[i]!;
  return sum;
}
