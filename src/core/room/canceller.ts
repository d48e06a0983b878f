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
import { MismatchMeter, type Mismatch } from './mismatch.ts';
import { RealFft } from './real-fft.ts';

export interface CancellerSettings {
  /** Samples a block; the delay of the output is one block. A power of two. */
  readonly blockSize: number;
  /** Blocks of path that are modelled. */
  readonly partitions: number;
  /** Path known from a sweep, index 0 at no delay, or null to start from nothing. */
  readonly path: Float32Array | null;
}

/** How sure a swept path is: its error is taken to be 20 dB below it. */
const SWEPT_UNCERTAINTY = 0.01;
/** Power of the path to be expected where nothing is known: unity gain in all. */
const BLANK_UNCERTAINTY = 1;
/**
 * What a partition is expected to hold of the power of the one before: 60 dB in 0.9 s at 12 kHz, a lively living room.
 * Without it (1) the same eight lines kept 1.5 dB more of the band; 0.75 and 0.85 do alike.
 */
const BLANK_DECAY = 0.85;
/**
 * How much of the path is the same after a block. A path of a room at rest keeps for minutes: what the filter
 * takes for change is mostly the player. Residual against the player's level, eight lines, band as loud:
 * 0.9995 left −17.0 dB, 0.9999 −22.3, 0.99999 −30.3.
 */
const AT_REST = 0.99999;
/** Smoothing of the player's spectrum, a time constant of about 2 blocks: an attack must count at once. */
const NEAR_SMOOTHING = 0.5;
/** Summed power of a block's spectrum under which the band is silent there, −100 dB of full scale: nothing to do. */
const SILENT = 1e-6;
const TINY = 1e-12;

/** One block in, one block out; `process` allocates nothing. */
export class Canceller {
  readonly blockSize: number;
  readonly #fft: RealFft;
  readonly #partitions: number;
  /** Spectra of the path, partition after partition, re and im in turn. */
  readonly #weights: Float64Array;
  /** How unsure each of them is: the variance of its error. */
  readonly #variance: Float64Array;
  /** Spectra of what was played, a ring of blocks; their powers; whether anything sounded. */
  readonly #history: Float64Array;
  readonly #powers: Float64Array;
  readonly #sounded: Uint8Array;
  #newest = 0;
  readonly #near: Float64Array;
  /** Power of the error that the filter's own doubt accounts for. */
  readonly #doubt: Float64Array;
  readonly #signal: Float64Array;
  readonly #played: Float64Array;
  readonly #spectrum: Float64Array;
  readonly #error: Float64Array;
  readonly #foretold: Float64Array;
  readonly #mismatch: MismatchMeter;
  #constrained = 0;

  constructor({ blockSize, partitions, path }: CancellerSettings) {
    const fft = (this.#fft = new RealFft(2 * blockSize));
    const { bins } = fft;
    this.blockSize = blockSize;
    this.#partitions = partitions;
    this.#weights = new Float64Array(2 * bins * partitions);
    this.#variance = new Float64Array(bins * partitions);
    this.#history = new Float64Array(2 * bins * partitions);
    this.#powers = new Float64Array(bins * partitions);
    this.#sounded = new Uint8Array(partitions);
    this.#near = new Float64Array(bins);
    this.#doubt = new Float64Array(bins);
    this.#signal = new Float64Array(fft.size);
    this.#played = new Float64Array(fft.size);
    this.#spectrum = fft.spectrum();
    this.#error = fft.spectrum();
    this.#foretold = fft.spectrum();
    this.#mismatch = new MismatchMeter(blockSize);
    if (path) this.#trust(path);
    else this.#expect(BLANK_UNCERTAINTY);
  }

  #trust(path: Float32Array): void {
    const { bins } = this.#fft;
    for (let p = 0; p < this.#partitions; p++) {
      const w = this.#partition(p);
      this.#signal.fill(0);
      this.#signal.set(path.subarray(p * this.blockSize, (p + 1) * this.blockSize));
      this.#fft.forward(this.#signal, w);
      for (let k = 0; k < bins; k++) {
        this.#variance[p * bins + k] = SWEPT_UNCERTAINTY * (w[2 * k]! ** 2 + w[2 * k + 1]! ** 2);
      }
    }
  }

  /** Nothing is known but that rooms decay. */
  #expect(power: number): void {
    const { bins } = this.#fft;
    const shares = Float64Array.from({ length: this.#partitions }, (_, p) => BLANK_DECAY ** p);
    const all = shares.reduce((sum, share) => sum + share, 0);
    for (const [p, share] of shares.entries()) {
      this.#variance.fill((power * share) / all, p * bins, (p + 1) * bins);
    }
  }

  /** One partition's spectrum; a view, so not for `process`. */
  #partition(p: number): Float64Array {
    return this.#weights.subarray(2 * p * this.#fft.bins, 2 * (p + 1) * this.#fft.bins);
  }

  /**
   * @param microphone a block of what was heard
   * @param band the same block of what was played
   * @param out the block without the band; may be `microphone`
   */
  process(microphone: Float32Array, band: Float32Array, out: Float32Array): void {
    const { blockSize } = this;
    const signal = this.#signal;
    this.#takeIn(band);
    this.#predict();
    for (let i = 0; i < blockSize; i++) out[i] = microphone[i]! - signal[blockSize + i]!;
    signal.fill(0, 0, blockSize);
    this.#fft.forward(signal, this.#foretold);
    for (let i = 0; i < blockSize; i++) signal[blockSize + i] = out[i]!;
    this.#fft.forward(signal, this.#error);
    const near = this.#near;
    for (let k = 0; k < near.length; k++) {
      const power = this.#error[2 * k]! ** 2 + this.#error[2 * k + 1]! ** 2;
      near[k] = NEAR_SMOOTHING * near[k]! + (1 - NEAR_SMOOTHING) * power;
    }
    this.#mismatch.add(this.#error, this.#foretold, near);
    this.#learn();
    this.#tidyOne();
  }

  get mismatch(): Mismatch {
    return this.#mismatch.now;
  }

  /** The band comes back `factor` times as loud as the path says: a volume knob was turned. */
  scale(factor: number): void {
    const square = factor * factor;
    for (let i = 0; i < this.#weights.length; i++) this.#weights[i]! *= factor;
    for (let i = 0; i < this.#variance.length; i++) this.#variance[i]! *= square;
    this.#mismatch.scaled(factor);
  }

  /** The band now comes in `samples` later than before: what was compared so far is judged in that light. */
  shifted(samples: number): void {
    this.#mismatch.shifted(samples);
  }

  /**
   * The path is no longer what it was: it is doubted as much as would explain a band of `gain` (power of what is
   * left against the band's), spread over time as the old path was, which has the room's decay.
   */
  doubt(gain: number): void {
    const { bins } = this.#fft;
    const profile = this.#profile();
    for (let p = 0; p < this.#partitions; p++) {
      for (let i = p * bins; i < (p + 1) * bins; i++) {
        this.#variance[i] = Math.max(this.#variance[i]!, gain * profile[p]!);
      }
    }
    this.#mismatch.forget();
  }

  /** The path's share of energy in each partition, each smeared over its neighbours; adds up to 1. */
  #profile(): Float64Array {
    const energy = Float64Array.from({ length: this.#partitions }, (_, p) =>
      this.#partition(p).reduce((sum, x) => sum + x * x, TINY),
    );
    const near = [-2, -1, 0, 1, 2];
    const smeared = energy.map((_, p) => near.reduce((sum, step) => sum + (energy[p + step] ?? 0), 0));
    const all = smeared.reduce((sum, x) => sum + x);
    return smeared.map((x) => x / all);
  }

  /** The path as it is known now, partitions × blockSize taps. */
  path(): Float32Array {
    const taps = new Float32Array(this.#partitions * this.blockSize);
    for (let p = 0; p < this.#partitions; p++) {
      this.#fft.inverse(this.#partition(p), this.#signal);
      for (let i = 0; i < this.blockSize; i++) taps[p * this.blockSize + i] = this.#signal[i]!;
    }
    return taps;
  }

  #takeIn(band: Float32Array): void {
    const { blockSize } = this;
    const { bins } = this.#fft;
    const played = this.#played;
    played.copyWithin(0, blockSize);
    for (let i = 0; i < blockSize; i++) played[blockSize + i] = band[i]!;
    this.#newest = (this.#newest + this.#partitions - 1) % this.#partitions;
    const x = this.#spectrum;
    this.#fft.forward(played, x);
    this.#history.set(x, 2 * this.#newest * bins);
    let sum = 0;
    for (let k = 0, i = this.#newest * bins; k < bins; k++, i++) {
      const power = x[2 * k]! * x[2 * k]! + x[2 * k + 1]! * x[2 * k + 1]!;
      this.#powers[i] = power;
      sum += power;
    }
    this.#sounded[this.#newest] = sum > SILENT ? 1 : 0;
  }

  /** The band as it should arrive: the second half of `#signal` (overlap-save). And how much to doubt it. */
  #predict(): void {
    const { bins } = this.#fft;
    const history = this.#history;
    const weights = this.#weights;
    const powers = this.#powers;
    const variance = this.#variance;
    const sum = this.#spectrum.fill(0);
    const doubt = this.#doubt.fill(0);
    for (let p = 0; p < this.#partitions; p++) {
      const slot = (this.#newest + p) % this.#partitions;
      if (this.#sounded[slot] === 0) continue;
      const w0 = p * bins;
      const x0 = slot * bins;
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
    const weights = this.#weights;
    const powers = this.#powers;
    const variance = this.#variance;
    const error = this.#error;
    const scale = this.#doubt;
    for (let k = 0; k < bins; k++) scale[k] = 1 / (TINY + this.#near[k]! + 0.5 * scale[k]!);
    for (let p = 0; p < this.#partitions; p++) {
      const slot = (this.#newest + p) % this.#partitions;
      if (this.#sounded[slot] === 0) continue;
      const w0 = p * bins;
      const x0 = slot * bins;
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

  /**
   * Each block, one partition in turn is made causal again (circular wrap would smear the path) and ages by as many
   * blocks as have gone by since its last turn.
   */
  #tidyOne(): void {
    const { bins } = this.#fft;
    const w = this.#spectrum;
    const at = this.#constrained * bins;
    const weights = this.#weights;
    for (let i = 0; i < w.length; i++) w[i] = weights[2 * at + i]!;
    this.#fft.inverse(w, this.#signal);
    this.#signal.fill(0, this.blockSize);
    this.#fft.forward(this.#signal, w);
    const keep = AT_REST ** (2 * this.#partitions);
    for (let k = 0; k < bins; k++) {
      const re = w[2 * k]!;
      const im = w[2 * k + 1]!;
      weights[2 * (at + k)] = re;
      weights[2 * (at + k) + 1] = im;
      this.#variance[at + k] = keep * this.#variance[at + k]! + (1 - keep) * (re * re + im * im);
    }
    this.#constrained = (this.#constrained + 1) % this.#partitions;
  }
}
