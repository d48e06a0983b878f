/**
 * Takes the band out of the microphone: the band's own signal goes through an estimate of the path from
 * speaker to microphone, and is subtracted. The estimate follows the room by a Kalman filter in the frequency
 * domain, one for each bin and each partition of the path.
 *
 * Sources: G. Enzner and P. Vary, "Frequency-domain adaptive Kalman filter for acoustic echo control in
 * hands-free telephones", Signal Processing 86 (2006); F. Kuech, E. Mabande and G. Enzner, "State-space
 * architecture of the partitioned-block-based acoustic echo controller", ICASSP 2014. The filter knows, bin
 * by bin, how unsure it is of the path and how loud the player is; a loud player stops it from learning in
 * the bins where he plays, so that his notes are never mistaken for the band. No double-talk detector.
 */
import { KnobAndClock, type Correction } from './knob-and-clock.ts';
import { PathEstimate, turn } from './path-estimate.ts';
import { RealFft } from '../../base/real-fft.ts';

export interface CancellerSettings {
  /** Samples a block; the delay of the output is one block. A power of two. */
  readonly blockSize: number;
  /** Blocks of path that are modelled. */
  readonly partitions: number;
  /** Of each channel of the band the path known from a sweep, index 0 at no delay, or null to start from nothing. */
  readonly path: readonly (Float32Array | null)[];
  /** How many times as loud as it seems the player is taken to be while learning; left out, it goes by what is known. */
  readonly caution?: number;
  /** Power that may be in the path beyond what is known, against the power of what is known; left out, 0. */
  readonly beyond?: number;
  /** By how many parts per million the two clocks may differ; left out, 200. */
  readonly clockPpm?: number;
  /** By how many samples the delay may be off at the start; left out, a tenth. */
  readonly delayDoubt?: number;
}

/**
 * A note of the player's and one of the band's in the same bin keep step for many blocks, which are then no independent
 * witnesses: the player is taken to be louder than he is. Band left 8 s on, against the player, eight tuning lines,
 * swept: 1 left −30.8 dB, 4 −34.8, 10 −36.8; with a path 20 dB off −30.0, −32.2, −32.0.
 */
const KNOWN_CAUTION = 4;
/**
 * While the path is unknown, most of what seems to be the player is band. The same lines, from nothing: 4 left −9.3 dB,
 * 1 −14.2, 0.3 −15.6, 0.1 −15.0.
 */
const BLANK_CAUTION = 0.3;
/** From one to the other in 12 s of band. */
const CAUTION_GROWTH = 1.0023;
/** Smoothing of the player's spectrum, a time constant of about 5 blocks: an attack must count at once. */
const NEAR_SMOOTHING = 0.8;
/** Half a second. */
const GIVING_BLOCKS = 48;
const SOUNDING_SMOOTHING = 0.995;
/** More than this, in samples, is no drift of half a second but another path. */
const MOST_LATENESS = 0.5;
/** Summed power of a block's spectrum under which the band is silent there, −100 dB of full scale: nothing to do. */
const SILENT = 1e-6;
const TINY = 1e-12;

/** One block in, one block out; `process` allocates nothing. */
export class Canceller {
  readonly blockSize: number;
  /** The band in the last block, as it was taken off. */
  readonly foretold: Float32Array;
  readonly #fft: RealFft;
  readonly #partitions: number;
  readonly #channels: number;
  readonly #known: PathEstimate;
  /** Spectra of what was played, channel after channel a ring of blocks; their powers; whether anything sounded. */
  readonly #history: Float64Array;
  readonly #powers: Float64Array;
  readonly #sounded: Uint8Array;
  #newest = 0;
  /** Of each partition that is not silent: where its first bin lies in the weights, and its block's in the history. */
  readonly #weightOffsets: Int32Array;
  readonly #historyOffsets: Int32Array;
  #soundingParts = 0;
  readonly #near: Float64Array;
  /** Power of the error that the filter's own doubt accounts for. */
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
  /** The band's power of late in each bin. */
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
   * @param microphone a block of what was heard
   * @param band of each channel the same block of what was played
   * @param out the block without the band; may be `microphone`
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

  /** What the path has learned of a drifting clock goes back to the clock. */
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

  /** What is to be mended of loudness and delay, as far as it is worth the trouble. */
  get correction(): Correction {
    return this.#knobAndClock.due;
  }

  /** The band comes back `factor` times as loud as the path says: a volume knob was turned. */
  scale(factor: number): void {
    this.#known.scale(factor);
    this.#knobAndClock.scaled(factor);
  }

  /** The band comes in `samples` later than it was handed over of late: less than one, as a clock drifts. */
  delay(samples: number): void {
    const { bins } = this.#fft;
    for (let k = 0; k < bins; k++) turn(this.#history, bins, k, -samples);
    this.#knobAndClock.delayed(samples);
  }

  /** The path is another one; `gain` is the power of what is left against the band's. */
  doubt(gain: number): void {
    this.#known.doubt(gain);
    this.#knobAndClock.forget();
    this.#caution = Math.min(this.#caution, BLANK_CAUTION);
  }

  /** The path of a channel as it is known now, partitions × blockSize taps. */
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

  /** Where the block that partition p of all is to weigh lies in the history. */
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

  /** The band as it should arrive: the second half of `#signal` (overlap-save). And how much to doubt it. */
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
      // What knob and clock may account for is not learned as another path.
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
