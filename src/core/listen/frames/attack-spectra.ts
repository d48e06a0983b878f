import { hzToMidi, midiToHz } from '../../music/temperament.ts';
import { normalise } from './correlate.ts';
import { Fft, magnitude } from '../../base/fft.ts';
import { emptyPeaks, findPeaks, refineLag } from './peaks.ts';
import * as S from '../tuning/frames.ts';

const SIZE = S.ATTACK_SIZE;
const HALF = SIZE / 2;
const BIN_HZ = S.INNER_RATE / SIZE;

/** Inner samples on each side of an attack. */
export type AttackWindow = typeof S.LONG_ATTACK_WINDOW | typeof S.SHORT_ATTACK_WINDOW;

/** What speaks for a pitch as that of a stroke. */
export interface PitchEvidence {
  /** Normalised square difference at its period after the attack, 0 to 1. */
  readonly after: number;
  /** Autocorrelation of what was added at its period, 0 to 1. */
  readonly added: number;
  /** Part of the power added that lies on its harmonics, 0 to 1. */
  readonly gained: number;
  /** Its fundamental against its strongest harmonic, in decades of amplitude: 0 at most, −3 where it is missing. */
  readonly fundamental: number;
}

/**
 * The sound before an attack and after it, side by side. The spectrum after less the spectrum before, as a power spectrum,
 * has the autocorrelation of what was struck alone (Wiener–Khinchin), whatever rings on beside it.
 */
export class AttackSpectra {
  /** Part of the power after the attack that it brought, 0 to 1. */
  share = 0;
  readonly #fft = new Fft(SIZE);
  readonly #re = new Float64Array(SIZE);
  readonly #im = new Float64Array(SIZE);
  readonly #was = new Float64Array(HALF + S.BLUR_BINS + 1);
  readonly #is = new Float64Array(HALF + 1);
  readonly #power = new Float64Array(HALF + 1);
  readonly #gain = new Float64Array(HALF + 1);
  readonly #after = new Float32Array(S.LONGEST_LAG + 4);
  readonly #added = new Float32Array(S.LONGEST_LAG + 4);
  readonly #peaks = emptyPeaks();
  readonly #windows = [new Window(S.LONG_ATTACK_WINDOW), new Window(S.SHORT_ATTACK_WINDOW)] as const;
  #window: Window = this.#windows[0];
  #gained = 0;
  /** Power of the strongest bin before the attack. */
  #sounded = 0;

  /** Looks at `samples`, which hold `length` samples, twice S.ATTACK_GAP, and `length` samples; the attack is in their middle. */
  look(samples: Float32Array, length: AttackWindow): void {
    this.#window = this.#windows[length === S.LONG_ATTACK_WINDOW ? 0 : 1];
    const start = length + 2 * S.ATTACK_GAP;
    this.#fft.transformPair(samples, 0, start, this.#window.flat, this.#re, this.#im);
    this.#spectra(SIZE / length);
    this.#gain.fill(0);
    let power = 0;
    let gained = 0;
    this.#sounded = 0;
    for (let k = S.ATTACK_FIRST_BIN; k < HALF; k++) {
      this.#sounded = Math.max(this.#sounded, this.#was[k]! ** 2);
      let was = 0;
      for (let j = k - S.BLUR_BINS; j <= k + S.BLUR_BINS; j++) was = Math.max(was, this.#was[j]!);
      const gain = Math.max(0, this.#is[k]! - was) ** 2;
      this.#gain[k] = gain;
      gained += gain;
      power += this.#is[k]! ** 2;
    }
    this.#gained = gained;
    this.share = power > 0 ? gained / power : 0;
    this.#correlate(samples, start);
  }

  /** Each pitch that may have been struck, as a fractional MIDI number: the periods of all that sounds, and of what was added. */
  pitches(each: (midi: number) => void): void {
    const longest = Math.min(S.LONGEST_LAG, this.#window.length / 2);
    for (const curve of [this.#after, this.#added]) {
      findPeaks(curve, S.SHORTEST_LAG, longest, this.#peaks, S.ATTACK_CANDIDATE_SHARE);
      for (let i = 0; i < this.#peaks.count; i++) {
        const lag = this.#peaks.lag[i]!;
        const within = curve === this.#added ? Math.min(longest, S.ADDED_PERIODS * lag) : longest;
        each(hzToMidi(S.INNER_RATE / refineLag(curve, lag, within)));
      }
    }
  }

  /** What speaks for a fractional MIDI number as the pitch that was struck. */
  evidence(midi: number): PitchEvidence {
    const hz = midiToHz(midi);
    const reach = Math.min((S.HARMONIC_BINS * S.INNER_RATE) / this.#window.length, S.HARMONIC_SHARE * hz);
    let gained = 0;
    let strongest = 1e-12;
    let first = 0;
    for (let n = 1; n * hz - reach < HALF * BIN_HZ; n++) {
      const last = Math.min(HALF - 1, Math.floor((n * hz + reach) / BIN_HZ));
      for (let k = Math.max(S.ATTACK_FIRST_BIN, Math.ceil((n * hz - reach) / BIN_HZ)); k <= last; k++)
        gained += this.#gain[k]!;
      if (n > S.FUNDAMENTAL_HARMONICS || (n > 1 && n * hz > S.PASS_HZ)) continue;
      const here = this.#strength((n * hz) / BIN_HZ);
      if (n === 1) first = here;
      strongest = Math.max(strongest, here);
    }
    return {
      after: peakNear(this.#after, S.INNER_RATE / hz),
      added: peakNear(this.#added, S.INNER_RATE / hz),
      gained: this.#gained > 0 ? gained / this.#gained : 0,
      fundamental: Math.log10(first / strongest + S.MISSING_FUNDAMENTAL),
    };
  }

  /**
   * How much of a note that sounded before sounds on: the power after the attack over that before, of those of its harmonics
   * which the struck pitch does not hide. 0 where it hardly sounded.
   */
  keeps(midi: number, struckMidi: number): number {
    const [hz, struckHz] = [midiToHz(midi), midiToHz(struckMidi)];
    const hidden = (S.HIDDEN_BINS * S.INNER_RATE) / this.#window.length;
    let was = 0;
    let is = 0;
    for (let n = 1; n <= S.FUNDAMENTAL_HARMONICS && n * hz < S.PASS_HZ; n++) {
      const nearest = Math.max(1, Math.round((n * hz) / struckHz)) * struckHz;
      if (Math.abs(n * hz - nearest) < hidden) continue;
      const bin = Math.round((n * hz) / BIN_HZ);
      was += this.#was[bin]! ** 2;
      is += this.#is[bin]! ** 2;
    }
    return was > S.LEAST_KEPT * this.#sounded ? is / was : 0;
  }

  /** Hann-windowed magnitudes of both windows, and the plain power after: the window is a sum over three bins `step` apart. */
  #spectra(step: number): void {
    const [re, im] = [this.#re, this.#im];
    for (let k = 0; k <= HALF; k++) {
      const low = (k - step) & (SIZE - 1);
      const high = (k + step) & (SIZE - 1);
      const n = (SIZE - k) & (SIZE - 1);
      const lowN = (SIZE - low) & (SIZE - 1);
      const highN = (SIZE - high) & (SIZE - 1);
      // X = B + iA with both Hermitian: each from a bin and its mirror.
      const ar = im[k]! + im[n]!;
      const ai = re[n]! - re[k]!;
      this.#power[k] = (ar * ar + ai * ai) / 4;
      this.#is[k] = magnitude(
        ar / 4 - (im[low]! + im[lowN]! + im[high]! + im[highN]!) / 8,
        ai / 4 - (re[lowN]! - re[low]! + re[highN]! - re[high]!) / 8,
      );
      this.#was[k] = magnitude(
        (re[k]! + re[n]!) / 4 - (re[low]! + re[lowN]! + re[high]! + re[highN]!) / 8,
        (im[k]! - im[n]!) / 4 - (im[low]! - im[lowN]! + im[high]! - im[highN]!) / 8,
      );
    }
  }

  /** Both curves by one transform: the power after the attack and the power gained are real and even. */
  #correlate(samples: Float32Array, start: number): void {
    const [re, im] = [this.#re, this.#im];
    const { length, taper } = this.#window;
    for (let k = 0; k <= HALF; k++) {
      const n = (SIZE - k) & (SIZE - 1);
      re[k] = re[n] = this.#power[k]!;
      im[k] = im[n] = this.#gain[k]!;
    }
    this.#fft.transform(re, im);
    normalise(samples, start, length, re, SIZE, this.#after);
    const whole = im[0]! > 1e-9 ? im[0]! : Infinity;
    for (let lag = 0; lag < this.#added.length; lag++) this.#added[lag] = im[lag]! / whole / taper[lag]!;
  }

  /** Strongest of the bins about a fractional one. */
  #strength(bin: number): number {
    let most = 0;
    for (let k = Math.floor(bin - 1); k <= Math.ceil(bin + 1); k++) most = Math.max(most, this.#is[k] ?? 0);
    return most;
  }
}

class Window {
  readonly length: number;
  readonly flat: Float64Array;
  /** Autocorrelation of the Hann window, 1 at lag 0. */
  readonly taper = new Float64Array(S.LONGEST_LAG + 4);

  constructor(length: number) {
    this.length = length;
    this.flat = new Float64Array(length).fill(1);
    const hann = Float64Array.from({ length }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / length));
    for (let lag = 0; lag < this.taper.length; lag++)
      for (let i = 0; i + lag < length; i++) this.taper[lag]! += hann[i]! * hann[i + lag]!;
    const whole = this.taper[0]!;
    for (let lag = 0; lag < this.taper.length; lag++) this.taper[lag]! /= whole;
  }
}

/** Highest point of a curve near a fractional lag, 0 beyond its end. */
function peakNear(curve: Float32Array, lag: number): number {
  if (lag >= curve.length - 2) return 0;
  const reach = Math.max(1, Math.round(S.ATTACK_LAG_REACH * lag));
  const last = Math.min(curve.length - 1, Math.round(lag) + reach);
  let most = 0;
  for (let l = Math.max(1, Math.round(lag) - reach); l <= last; l++) most = Math.max(most, curve[l]!);
  return most;
}
