/**
 * Takes the band out of the microphone: the band's own signal goes through an estimate of the path from
 * speaker to microphone, and is subtracted. The estimate follows the room by a Kalman filter in the frequency
 * domain, one for each bin and each partition of the path.
 *
 * Sources: G. Enzner and P. Vary, "Frequency-domain adaptive Kalman filter for acoustic echo control in
 * hands-free telephones", Signal Processing 86 (2006); F. Kuech, E. Mabande and G. Enzner, "State-space
 * architecture of the partitioned-block-based acoustic echo controller", ICASSP 2014. For each bin the
 * filter estimates the uncertainty of the path and the power of the player. Where the player is loud, it learns little, so
 * that a note of the player is never mistaken for the band; no double-talk detector is needed.
 */
import {
  BLANK_CAUTION,
  CAUTION_GROWTH,
  GIVING_BLOCKS,
  KNOWN_CAUTION,
  MOST_LATENESS,
  NEAR_SMOOTHING,
  SILENT,
  SOUNDING_SMOOTHING,
  type CancellerSettings,
} from './canceller-settings.ts';
import { KnobAndClock, type Correction } from './knob-and-clock.ts';
import { PathEstimate, turn } from './path-estimate.ts';
import { RealFft } from '../../base/real-fft.ts';

/** Keeps a division from zero. */
const TINY = 1e-12;

/** One block in, one block out; `process` allocates nothing. */
export class Canceller {
  readonly blockSize: number;
  /** The band's part of the last block, which was subtracted. */
  readonly foretold: Float32Array;
  readonly #fft: RealFft;
  readonly #partitions: number;
  readonly #channels: number;
  readonly #known: PathEstimate;
  /** Spectra of the band's last blocks, a ring for each channel; the powers of their bins; whether they sounded. */
  readonly #history: Float64Array;
  readonly #powers: Float64Array;
  readonly #sounded: Uint8Array;
  #newest = 0;
  /** Of each partition that is not silent: where its first bin lies in the weights, and its block's in the history. */
  readonly #weightOffsets: Int32Array;
  readonly #historyOffsets: Int32Array;
  #soundingParts = 0;
  readonly #near: Float64Array;
  /** Power of the error that is explained by the uncertainty of the path. */
  readonly #doubt: Float64Array;
  readonly #signal: Float64Array;
  /** The last two blocks of each channel. */
  readonly #played: readonly Float64Array[];
  readonly #spectrum: Float64Array;
  readonly #error: Float64Array;
  readonly #foretold: Float64Array;
  readonly #knobAndClock: KnobAndClock;
  #caution: number;
  readonly #mostCaution: number;
  /** Power of the band in each bin, smoothed over the last blocks. */
  readonly #sounding: Float64Array;
  #sinceGiven = 0;

  constructor({ blockSize, partitions, path, caution, beyond, clockPpm, delayDoubt }: CancellerSettings) {
    const fft = (this.#fft = new RealFft(2 * blockSize));
    const { bins } = fft;
    const all = partitions * path.length;
    this.blockSize = blockSize;
    this.foretold = new Float32Array(blockSize);
    this.#partitions = partitions;
    this.#channels = path.length;
    this.#known = new PathEstimate(fft, partitions, path, beyond);
    this.#history = new Float64Array(2 * bins * all);
    this.#powers = new Float64Array(bins * all);
    this.#sounded = new Uint8Array(all);
    this.#weightOffsets = new Int32Array(all);
    this.#historyOffsets = new Int32Array(all);
    this.#near = new Float64Array(bins);
    this.#doubt = new Float64Array(bins);
    this.#signal = new Float64Array(fft.size);
    this.#played = path.map(() => new Float64Array(fft.size));
    this.#spectrum = fft.spectrum();
    this.#error = fft.spectrum();
    this.#sounding = new Float64Array(bins);
    this.#foretold = fft.spectrum();
    this.#knobAndClock = new KnobAndClock(blockSize, clockPpm, delayDoubt);
    this.#caution = caution ?? (path[0] ? KNOWN_CAUTION : BLANK_CAUTION);
    this.#mostCaution = caution ?? KNOWN_CAUTION;
  }

  /**
   * @param microphone a block of the microphone's samples
   * @param band for each channel the samples that the band played on the same block
   * @param out receives the block without the band; may be the same array as `microphone`
   */
  process(microphone: Float32Array, band: readonly Float32Array[], out: Float32Array): void {
    const { blockSize } = this;
    const signal = this.#signal;
    this.#takeIn(band);
    this.#listSoundingParts();
    this.#predict();
    const { foretold } = this;
    for (let i = 0; i < blockSize; i++) {
      foretold[i] = signal[blockSize + i]!;
      out[i] = microphone[i]! - signal[blockSize + i]!;
    }
    signal.fill(0, 0, blockSize);
    this.#fft.forward(signal, this.#foretold);
    for (let i = 0; i < blockSize; i++) signal[blockSize + i] = out[i]!;
    this.#fft.forward(signal, this.#error);
    const near = this.#near;
    for (let k = 0; k < near.length; k++) {
      const power = this.#error[2 * k]! ** 2 + this.#error[2 * k + 1]! ** 2;
      near[k] = NEAR_SMOOTHING * near[k]! + (1 - NEAR_SMOOTHING) * power;
    }
    this.#knobAndClock.observe(this.#error, this.#foretold, near, this.#doubt);
    this.#learn();
    this.#known.tidyOne();
    this.#giveBack();
  }

  /** Where clocks drift, the path learns a part of the drift: that part is moved back to the estimate of the clock. */
  #giveBack(): void {
    const sounding = this.#sounding;
    const newest = this.#newest * sounding.length;
    for (let k = 0; k < sounding.length; k++) {
      sounding[k] = SOUNDING_SMOOTHING * sounding[k]! + this.#powers[newest + k]!;
    }
    if (++this.#sinceGiven < GIVING_BLOCKS) return;
    this.#sinceGiven = 0;
    if (this.#caution < this.#mostCaution) {
      this.#known.anchor();
      return;
    }
    const late = this.#known.takeLateness(sounding, MOST_LATENESS);
    if (Math.abs(late) > MOST_LATENESS) {
      this.#known.anchor();
      return;
    }
    this.#knobAndClock.given(late, GIVING_BLOCKS);
  }

  /** The correction of loudness and delay that is due, as far as it is large enough to matter. */
  get correction(): Correction {
    return this.#knobAndClock.due;
  }

  /** The band comes back `factor` times as loud as the path predicts: a volume knob was turned. */
  scale(factor: number): void {
    this.#known.scale(factor);
    this.#knobAndClock.scaled(factor);
  }

  /**
   * From now on the band's samples are handed over `samples` later than before: less than one, because a clock drifts.
   */
  delay(samples: number): void {
    const { bins } = this.#fft;
    for (let k = 0; k < bins; k++) turn(this.#history, bins, k, -samples);
    this.#knobAndClock.delayed(samples);
  }

  /** The path has changed; `gain` is the power of what is left as a ratio to the band's power. */
  doubt(gain: number): void {
    this.#known.doubt(gain);
    this.#knobAndClock.forget();
    this.#caution = Math.min(this.#caution, BLANK_CAUTION);
  }

  /** The estimate of a channel's path, partitions × blockSize taps. */
  path(channel = 0): Float32Array {
    return this.#known.taps(channel);
  }

  #takeIn(band: readonly Float32Array[]): void {
    const { blockSize } = this;
    const { bins } = this.#fft;
    const x = this.#spectrum;
    this.#newest = (this.#newest + this.#partitions - 1) % this.#partitions;
    let heard = 0;
    for (let channel = 0; channel < this.#channels; channel++) {
      const played = this.#played[channel]!;
      const block = band[channel]!;
      played.copyWithin(0, blockSize);
      for (let i = 0; i < blockSize; i++) played[blockSize + i] = block[i]!;
      const slot = channel * this.#partitions + this.#newest;
      this.#fft.forward(played, x);
      this.#history.set(x, 2 * slot * bins);
      let sum = 0;
      for (let k = 0, i = slot * bins; k < bins; k++, i++) {
        const power = x[2 * k]! * x[2 * k]! + x[2 * k + 1]! * x[2 * k + 1]!;
        this.#powers[i] = power;
        sum += power;
      }
      this.#sounded[slot] = sum > SILENT ? 1 : 0;
      heard += sum;
    }
    if (heard > SILENT) this.#caution = Math.min(this.#mostCaution, this.#caution * CAUTION_GROWTH);
  }

  /** The place in the history of the block that partition p is applied to. */
  #slotOf(p: number): number {
    const within = p % this.#partitions;
    return p - within + ((this.#newest + within) % this.#partitions);
  }

  /** Lists the partitions whose block of the band is not silent: the others add nothing and learn nothing. */
  #listSoundingParts(): void {
    const { bins } = this.#fft;
    this.#soundingParts = 0;
    for (let p = 0; p < this.#sounded.length; p++) {
      const slot = this.#slotOf(p);
      if (this.#sounded[slot] === 0) continue;
      this.#weightOffsets[this.#soundingParts] = p * bins;
      this.#historyOffsets[this.#soundingParts] = slot * bins;
      this.#soundingParts++;
    }
  }

  /**
   * Predicts the band in the microphone, in the second half of `#signal` (overlap-save), and the uncertainty of that.
   */
  #predict(): void {
    const { bins } = this.#fft;
    const history = this.#history;
    const { weights, variance } = this.#known;
    const powers = this.#powers;
    const sum = this.#spectrum.fill(0);
    const doubt = this.#doubt.fill(0);
    for (let part = 0; part < this.#soundingParts; part++) {
      const w0 = this.#weightOffsets[part]!;
      const x0 = this.#historyOffsets[part]!;
      for (let k = 0; k < bins; k++) {
        const w = 2 * (w0 + k);
        const x = 2 * (x0 + k);
        const xr = history[x]!;
        const xi = history[x + 1]!;
        const wr = weights[w]!;
        const wi = weights[w + 1]!;
        sum[2 * k] = sum[2 * k]! + xr * wr - xi * wi;
        sum[2 * k + 1] = sum[2 * k + 1]! + xr * wi + xi * wr;
        doubt[k] = doubt[k]! + powers[x0 + k]! * variance[w0 + k]!;
      }
    }
    this.#fft.inverse(sum, this.#signal);
  }

  #learn(): void {
    const { bins } = this.#fft;
    const history = this.#history;
    const { weights, variance } = this.#known;
    const powers = this.#powers;
    const error = this.#error;
    const scale = this.#doubt;
    const caution = this.#caution;
    const { gainVariance, delayVariance } = this.#knobAndClock;
    const foretold = this.#foretold;
    for (let k = 0; k < bins; k++) {
      // What a turned knob or a drifting clock may explain is not learned as a change of the path.
      const size = foretold[2 * k]! * foretold[2 * k]! + foretold[2 * k + 1]! * foretold[2 * k + 1]!;
      const omega = (Math.PI / this.blockSize) * k;
      const theirs = size * (gainVariance + omega * omega * delayVariance);
      scale[k] = 1 / (TINY + caution * this.#near[k]! + theirs + 0.5 * scale[k]!);
    }
    for (let part = 0; part < this.#soundingParts; part++) {
      const w0 = this.#weightOffsets[part]!;
      const x0 = this.#historyOffsets[part]!;
      for (let k = 0; k < bins; k++) {
        const w = 2 * (w0 + k);
        const x = 2 * (x0 + k);
        const xr = history[x]!;
        const xi = history[x + 1]!;
        const er = error[2 * k]!;
        const ei = error[2 * k + 1]!;
        const unsure = variance[w0 + k]!;
        const gain = unsure * scale[k]!;
        weights[w] = weights[w]! + gain * (xr * er + xi * ei);
        weights[w + 1] = weights[w + 1]! + gain * (xr * ei - xi * er);
        variance[w0 + k] = unsure * (1 - 0.5 * gain * powers[x0 + k]!);
      }
    }
  }
}
