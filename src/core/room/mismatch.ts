/** Smoothing, a time constant of about 30 blocks: a third of a second at 12 kHz. */
const SMOOTHING = 0.97;
/** Band against what is left, a bin: a block where the band lies more than 13 dB under the rest hardly counts. */
const HEARD = 0.05;
const TINY = 1e-12;

/** In what the band comes back otherwise than foretold; both are 0 while the path is right. */
export interface Mismatch {
  /** Relative error of loudness: +1 where it comes back twice as loud. */
  readonly gain: number;
  /** How many samples later than foretold it comes back. */
  readonly delaySamples: number;
}

/**
 * Fits what is left against what was foretold and its derivative in time, weighted by how quiet the player is: the two
 * coefficients are the error of loudness and of delay. The player is neither, and averages out.
 */
export class MismatchMeter {
  readonly #radiansPerBin: number;
  #power = TINY;
  #slope = TINY;
  #gainProduct = 0;
  #delayProduct = 0;

  /** @param blockSize half the size of the transforms */
  constructor(blockSize: number) {
    this.#radiansPerBin = Math.PI / blockSize;
  }

  get now(): Mismatch {
    return { gain: this.#gainProduct / this.#power, delaySamples: this.#delayProduct / this.#slope };
  }

  /** Spectra of a block, interleaved, and the player's power in each bin. */
  add(error: Float64Array, foretold: Float64Array, near: Float64Array): void {
    let gain = 0;
    let delay = 0;
    let power = 0;
    let slope = 0;
    for (let k = 1; k < near.length; k++) {
      const er = error[2 * k]!;
      const ei = error[2 * k + 1]!;
      const dr = foretold[2 * k]!;
      const di = foretold[2 * k + 1]!;
      const omega = this.#radiansPerBin * k;
      const size = dr * dr + di * di;
      const weight = 1 / (TINY + near[k]!);
      gain += weight * (dr * er + di * ei);
      delay += weight * omega * (di * er - dr * ei);
      power += weight * size;
      slope += weight * omega * omega * size;
    }
    // Every block counts alike once the band is heard in it: a jump must not wait until the calm before is forgotten.
    const share = 1 / (power + HEARD * near.length);
    this.#gainProduct = SMOOTHING * this.#gainProduct + share * gain;
    this.#delayProduct = SMOOTHING * this.#delayProduct + share * delay;
    this.#power = SMOOTHING * this.#power + share * power;
    this.#slope = SMOOTHING * this.#slope + share * slope;
  }

  /** What is foretold is `factor` times as loud from now on: what was compared so far is judged in that light. */
  scaled(factor: number): void {
    this.#gainProduct = factor * (this.#gainProduct - (factor - 1) * this.#power);
    this.#delayProduct *= factor * factor;
    this.#power *= factor * factor;
    this.#slope *= factor * factor;
  }

  /** The same for a band that comes in so many samples later. */
  shifted(samples: number): void {
    this.#delayProduct -= samples * this.#slope;
  }

  forget(): void {
    this.#gainProduct = this.#delayProduct = 0;
    this.#power = this.#slope = TINY;
  }
}
