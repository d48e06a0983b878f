import { Fft, magnitude } from './fft.ts';
import { emptyPeaks, findPeaks, refineLag } from './peaks.ts';
import { INNER_RATE } from './settings.ts';

/** 37 ms before and after the attack, each 4 ms clear of it. */
const WINDOW = 448;
const CLEAR = 48;
const SIZE = 1024;
const SHORTEST_LAG = 6;
const LONGEST_LAG = 200;
/**
 * The shortest period whose peak is this share of the highest (McLeod & Wyvill's k). On 2,560 attacks over ringing strings
 * 0.86 finds 85 % right, 0.78 88 %, and no more are among the peaks than 91 %.
 */
const SHARE = 0.78;

/** What an attack added to the sound. */
export interface Added {
  /** Pitch as a fractional MIDI number. */
  readonly midi: number;
  /** Height of its peak, 0 to 1. */
  readonly clarity: number;
  /** Its part of the power that sounds after the attack, 0 to 1. */
  readonly share: number;
}

/**
 * The pitch of what an attack adds to strings that ring on: the spectrum after it less the spectrum before it, as a
 * power spectrum, has the autocorrelation of the new note alone (Wiener–Khinchin). Both windows share one transform.
 */
export class Increase {
  readonly #fft = new Fft(SIZE);
  readonly #re = new Float64Array(SIZE);
  readonly #im = new Float64Array(SIZE);
  readonly #before = new Float64Array(SIZE / 2 + 1);
  readonly #after = new Float64Array(SIZE / 2 + 1);
  readonly #window = new Float64Array(WINDOW);
  readonly #taper = new Float64Array(LONGEST_LAG + 2);
  readonly #curve = new Float32Array(LONGEST_LAG + 2);
  readonly #peaks = emptyPeaks();

  constructor() {
    for (let i = 0; i < WINDOW; i++)
      this.#window[i] = 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / WINDOW);
    for (let lag = 0; lag < this.#taper.length; lag++)
      for (let i = 0; i + lag < WINDOW; i++) this.#taper[lag]! += this.#window[i]! * this.#window[i + lag]!;
  }

  /** `attack` is an index of `samples` with SPAN on each side; null when nothing periodic was added. */
  at(samples: Float32Array, attack: number): Added | null {
    const re = this.#re;
    const im = this.#im;
    re.fill(0);
    im.fill(0);
    const early = attack - CLEAR - WINDOW;
    const late = attack + CLEAR;
    for (let i = 0; i < WINDOW; i++) {
      re[i] = samples[early + i]! * this.#window[i]!;
      im[i] = samples[late + i]! * this.#window[i]!;
    }
    this.#fft.transform(re, im);
    const half = SIZE / 2;
    for (let k = 1; k < half; k++) {
      const n = SIZE - k;
      this.#before[k] = magnitude(re[k]! + re[n]!, im[k]! - im[n]!) / 2;
      this.#after[k] = magnitude(im[k]! + im[n]!, re[n]! - re[k]!) / 2;
    }
    re.fill(0);
    im.fill(0);
    let power = 0;
    let gained = 0;
    for (let k = 2; k < half; k++) {
      const was = Math.max(this.#before[k - 1]!, this.#before[k]!, this.#before[k + 1]!);
      const added = Math.max(0, this.#after[k]! - was);
      re[k] = added * added;
      gained += re[k]!;
      power += this.#after[k]! * this.#after[k]!;
      re[SIZE - k] = re[k]!;
    }
    this.#fft.transform(re, im);
    if (re[0]! < 1e-9) return null;
    for (let lag = 0; lag < this.#curve.length; lag++)
      this.#curve[lag] = (re[lag]! / re[0]!) * (this.#taper[0]! / this.#taper[lag]!);
    return this.#best(gained / power);
  }

  #best(share: number): Added | null {
    const peaks = this.#peaks;
    findPeaks(this.#curve, SHORTEST_LAG, LONGEST_LAG, peaks);
    let highest = 0;
    for (let i = 0; i < peaks.count; i++) highest = Math.max(highest, peaks.height[i]!);
    for (let i = 0; i < peaks.count; i++) {
      if (peaks.height[i]! < SHARE * highest) continue;
      const lag = refineLag(this.#curve, peaks.lag[i]!, Math.min(LONGEST_LAG, 3.5 * peaks.lag[i]!));
      return { midi: 69 + 12 * Math.log2(INNER_RATE / lag / 440), clarity: peaks.height[i]!, share };
    }
    return null;
  }
}

/** Samples needed on each side of the attack. */
export const SPAN = CLEAR + WINDOW;
