/** The estimate of the path from loudspeaker to microphone, and its uncertainty. */
import type { RealFft } from '../../base/real-fft.ts';

/** Relative power of the error of a measured path: 20 dB below the path. */
const SWEPT_UNCERTAINTY = 0.01;
/** Expected power of an unknown path: a gain of 1 in all. */
const BLANK_UNCERTAINTY = 1;
/**
 * Expected power of a partition as a share of the one before: a decay of 60 dB in 0.9 s at 12 kHz, a reverberant living
 * room. With 1 instead, 1.5 dB more of the band was left in the same eight lines; 0.75 and 0.85 give the same.
 */
const BLANK_DECAY = 0.85;
/**
 * Share of the path that is unchanged after a block. The path of a room in which nothing moves stays the same for minutes;
 * what the filter would learn as a change is mostly the player. Level of the band that is left after 8 s, relative to the
 * player, eight tuning lines, after a sweep: 0.99999 −34.8 dB, 0.999997 −37.1 dB, 0.999999 −38.0 dB; with a path that is
 * wrong by 20 dB: −32.2, −32.3 and −31.7 dB.
 */
const AT_REST = 0.999997;
const TINY = 1e-12;

/**
 * Spectra of the path's partitions, and for each bin the variance of its error. A band of several channels has a path
 * for each: the partitions of the second follow those of the first.
 */
export class PathEstimate {
  /** Partition after partition, real and imaginary parts interleaved. */
  readonly weights: Float64Array;
  readonly variance: Float64Array;
  readonly #fft: RealFft;
  readonly #blockSize: number;
  readonly #signal: Float64Array;
  readonly #spectrum: Float64Array;
  readonly #partitions: number;
  #tidied = 0;
  /** The path when it was last taken to be known: its delay is measured relative to this. */
  readonly #anchor: Float64Array;
  readonly #lateness: Float64Array;

  /**
   * @param fft of two blocks @param partitions of each channel
   * @param path for each channel what is known, partitions × block taps; null where nothing is known
   * @param beyond power that the path may have beyond what is known, with the decay of a room, relative to the known power
   */
  constructor(fft: RealFft, partitions: number, path: readonly (Float32Array | null)[], beyond = 0) {
    this.#fft = fft;
    this.#blockSize = fft.size / 2;
    this.#partitions = partitions;
    this.weights = new Float64Array(2 * fft.bins * partitions * path.length);
    this.variance = new Float64Array(fft.bins * partitions * path.length);
    this.#signal = new Float64Array(fft.size);
    this.#spectrum = fft.spectrum();
    for (const [channel, taps] of path.entries()) {
      if (!taps) this.#expect(BLANK_UNCERTAINTY, channel);
      else {
        this.#trust(taps, channel);
        this.#expect(beyond * powerOf(path), channel);
      }
    }
    this.#anchor = this.weights.slice();
    this.#lateness = new Float64Array(fft.bins);
  }

  /** From now on the delay is measured relative to the present path. */
  anchor(): void {
    this.#anchor.set(this.weights);
  }

  /**
   * Returns by how many samples the path has become later since it was anchored, each bin weighted by the band's power: a
   * part of the drift of a clock is learned as a change of the path. Makes the path earlier by that much in the bins that
   * have learned it, so that the drift can be corrected for all bins alike.
   */
  takeLateness(sounding: Float64Array, most: number): number {
    const { bins } = this.#fft;
    const { weights } = this;
    const anchor = this.#anchor;
    const each = this.#lateness;
    let turned = 0;
    let all = TINY;
    for (let k = 1; k < bins; k++) {
      const omega = (Math.PI / this.#blockSize) * k;
      let [sine, size] = [0, TINY];
      for (let i = 2 * k; i < weights.length; i += 2 * bins) {
        const ar = anchor[i]!;
        const ai = anchor[i + 1]!;
        sine += weights[i]! * ai - weights[i + 1]! * ar;
        size += ar * ar + ai * ai;
      }
      each[k] = sine / (omega * size);
      turned += sounding[k]! * omega * sine;
      all += sounding[k]! * omega * omega * size;
    }
    const late = turned / all;
    if (Math.abs(late) > most) return late;
    for (let k = 1; k < bins; k++) {
      const learned = Math.max(0, Math.min(1, each[k]! / (late || 1)));
      turn(weights, bins, k, late * learned);
    }
    return late;
  }

  #trust(path: Float32Array, channel: number): void {
    const { bins } = this.#fft;
    const size = this.#blockSize;
    for (let p = 0; p < this.#partitions; p++) {
      const at = channel * this.#partitions + p;
      const w = this.#partition(at);
      this.#signal.fill(0);
      this.#signal.set(path.subarray(p * size, (p + 1) * size));
      this.#fft.forward(this.#signal, w);
      for (let k = 0; k < bins; k++) {
        this.variance[at * bins + k] = SWEPT_UNCERTAINTY * (w[2 * k]! ** 2 + w[2 * k + 1]! ** 2);
      }
    }
  }

  /** Adds uncertainty of this power to the partitions, with the decay of a room. */
  #expect(power: number, channel: number): void {
    const { bins } = this.#fft;
    const shares = Float64Array.from({ length: this.#partitions }, (_, p) => BLANK_DECAY ** p);
    const all = shares.reduce((sum, share) => sum + share, 0);
    for (const [p, share] of shares.entries()) {
      const at = channel * this.#partitions + p;
      for (let i = at * bins; i < (at + 1) * bins; i++) this.variance[i]! += (power * share) / all;
    }
  }

  /** The spectrum of one partition; makes a view, so that it must not be called for every block. */
  #partition(p: number): Float64Array {
    return this.weights.subarray(2 * p * this.#fft.bins, 2 * (p + 1) * this.#fft.bins);
  }

  /** The band comes back `factor` times as loud as before. */
  scale(factor: number): void {
    const square = factor * factor;
    for (let i = 0; i < this.weights.length; i++) this.weights[i]! *= factor;
    for (let i = 0; i < this.#anchor.length; i++) this.#anchor[i]! *= factor;
    for (let i = 0; i < this.variance.length; i++) this.variance[i]! *= square;
  }

  /**
   * The path has changed: its uncertainty is raised to explain a band of `gain` (power of what is left as a ratio to the
   * band's), distributed over time like the old path, which has the decay of the room.
   */
  doubt(gain: number): void {
    const { bins } = this.#fft;
    for (const [p, share] of this.#profile().entries()) {
      for (let i = p * bins; i < (p + 1) * bins; i++) {
        this.variance[i] = Math.max(this.variance[i]!, gain * share);
      }
    }
  }

  /** The share of the path's energy in each partition, smoothed over neighbouring partitions; the sum is 1. */
  #profile(): Float64Array {
    const energy = Float64Array.from({ length: this.variance.length / this.#fft.bins }, (_, p) =>
      this.#partition(p).reduce((sum, x) => sum + x * x, TINY),
    );
    const near = [-2, -1, 0, 1, 2];
    const smeared = energy.map((_, p) => near.reduce((sum, step) => sum + (energy[p + step] ?? 0), 0));
    const all = smeared.reduce((sum, x) => sum + x);
    return smeared.map((x) => x / all);
  }

  /** The estimate of a channel's path, partitions × blockSize taps. */
  taps(channel = 0): Float32Array {
    const size = this.#blockSize;
    const taps = new Float32Array(this.#partitions * size);
    for (let p = 0; p < this.#partitions; p++) {
      this.#fft.inverse(this.#partition(channel * this.#partitions + p), this.#signal);
      for (let i = 0; i < size; i++) taps[p * size + i] = this.#signal[i]!;
    }
    return taps;
  }

  /**
   * In each block one partition is made causal again (circular convolution would smear the path), and its uncertainty grows
   * by the number of blocks since the last time.
   */
  tidyOne(): void {
    const { bins } = this.#fft;
    const w = this.#spectrum;
    const weights = this.weights;
    const all = this.variance.length / bins;
    const at = this.#tidied * bins;
    for (let i = 0; i < w.length; i++) w[i] = weights[2 * at + i]!;
    this.#fft.inverse(w, this.#signal);
    this.#signal.fill(0, this.#blockSize);
    this.#fft.forward(this.#signal, w);
    const keep = AT_REST ** (2 * all);
    for (let k = 0; k < bins; k++) {
      const re = w[2 * k]!;
      const im = w[2 * k + 1]!;
      weights[2 * (at + k)] = re;
      weights[2 * (at + k) + 1] = im;
      this.variance[at + k] = keep * this.variance[at + k]! + (1 - keep) * (re * re + im * im);
    }
    this.#tidied = (this.#tidied + 1) % all;
  }
}

/** Power that comes back when all channels play white noise. */
const powerOf = (path: readonly (Float32Array | null)[]): number =>
  path.reduce((sum, taps) => sum + (taps?.reduce((all, x) => all + x * x, 0) ?? 0), 0);

/** Makes signals earlier by `samples` (later where negative) in one bin of each of the consecutive spectra. */
export function turn(spectra: Float64Array, bins: number, bin: number, samples: number): void {
  const angle = (Math.PI / (bins - 1)) * bin * samples;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  for (let i = 2 * bin; i < spectra.length; i += 2 * bins) {
    const re = spectra[i]!;
    const im = spectra[i + 1]!;
    spectra[i] = c * re - s * im;
    spectra[i + 1] = c * im + s * re;
  }
}
