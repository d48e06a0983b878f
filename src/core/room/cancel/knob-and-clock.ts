/**
 * How much louder and how much later than predicted the band comes back: a volume knob was turned, or two clocks drift
 * apart. These are two numbers and a rate for the whole path, so that they are known within a fraction of a second, long
 * before each bin of the path could be learned again.
 *
 * Block by block the error is fitted to the prediction and to its derivative in time, with a larger weight where the player
 * is quieter. A Kalman filter (R. E. Kalman 1960) combines the blocks: it estimates its own uncertainty, so that it changes
 * quickly at the start and slowly later, and not at all where the player is louder than the band.
 */

/** Notes of player and band keep their phase for some blocks: this many blocks count as one measurement. */
const CORRELATED_BLOCKS = 10;
/**
 * The error of the path does not average out: at least this share of the prediction's power (−30 dB) is taken for
 * error.
 */
const PATH_ERROR = 1e-3;
/** Loudness: the variance at the start, and its growth a block (a random walk of 1.4 % in a second). */
const GAIN_START = 0.1 ** 2;
const GAIN_WANDERS = 2e-6;
/** The same for the delay in samples; small, because the path was measured a moment before. */
const DELAY_DOUBT = 0.1;
const DELAY_WANDERS = 1e-7;
/** Largest difference of two devices' clocks, parts per million. */
const CLOCK_PPM = 200;
/**
 * Growth of the rate's variance a block, as a share of the above (5 ppm in a second): if the rate were taken for certain
 * too early, the path would learn what is left of it.
 */
const RATE_WANDERS = 0.0027;
/** Share of a delay learned by the path that is attributed to the rate of the clock. */
const GIVEN_SHARE = 0.5;
/**
 * An error of loudness of more standard deviations than this means that a knob was turned. It is measured over 10 blocks (a
 * tenth of a second) where the band is loud, and over half a second to two seconds where the player is louder.
 */
const KNOB_SMOOTHINGS = [0.9, 0.98, 0.995] as const;
const KNOB_DEVIATIONS = 3;
/** While the error of loudness is larger than this, the delay is not learned. */
const STRANGE_GAIN = 0.25;
/** Smaller errors are not corrected yet. */
const LEAST_GAIN = 0.002;
const LEAST_DELAY = 0.004;
const TINY = 1e-12;

export interface Correction {
  /** Relative error of loudness: +1 where the band comes back twice as loud; 0 where nothing is due. */
  readonly gain: number;
  /** By how many samples it comes back later than predicted. */
  readonly delaySamples: number;
  /** How fast it falls behind, samples a sample; the caller is expected to apply it. */
  readonly rate: number;
}

export class KnobAndClock {
  readonly #blockSize: number;
  #gain = 0;
  #gainVariance = GAIN_START;
  #delay = 0;
  #rate = 0;
  #delayVariance: number;
  #delayWithRate = 0;
  #rateVariance: number;
  readonly #rateWanders: number;
  /** Products averaged over each of the KNOB_SMOOTHINGS. */
  readonly #knob = KNOB_SMOOTHINGS.map(() => 0);
  readonly #knobPower = KNOB_SMOOTHINGS.map(() => TINY);

  /**
   * @param blockSize half the size of the transforms @param clockPpm by how much the clocks may differ
   * @param delayDoubt by how many samples the delay may be wrong at the start; attributed to the clock, they would be kept
   */
  constructor(blockSize: number, clockPpm = CLOCK_PPM, delayDoubt = DELAY_DOUBT) {
    this.#delayVariance = delayDoubt ** 2;
    this.#blockSize = blockSize;
    this.#rateVariance = (clockPpm / 1e6) ** 2;
    this.#rateWanders = RATE_WANDERS ** 2 * this.#rateVariance;
  }

  /** The correction that is due. The caller reports that it was made by `scaled` and `delayed`. */
  get due(): Correction {
    return {
      gain: Math.abs(this.#gain) < LEAST_GAIN ? 0 : this.#gain,
      delaySamples: Math.abs(this.#delay) < LEAST_DELAY ? 0 : this.#delay,
      rate: this.#rate,
    };
  }

  /** Variance of the relative error of loudness. */
  get gainVariance(): number {
    return this.#gainVariance;
  }

  /** Variance of the delay, samples squared. */
  get delayVariance(): number {
    return this.#delayVariance;
  }

  /**
   * Takes spectra of a block, interleaved; for each bin the player's power, and the power that the path's uncertainty
   * explains.
   */
  observe(error: Float64Array, foretold: Float64Array, near: Float64Array, doubt: Float64Array): void {
    let gain = 0;
    let delay = 0;
    let power = TINY;
    let slope = TINY;
    const radiansPerBin = Math.PI / this.#blockSize;
    for (let k = 1; k < near.length; k++) {
      const er = error[2 * k]!;
      const ei = error[2 * k + 1]!;
      const dr = foretold[2 * k]!;
      const di = foretold[2 * k + 1]!;
      const omega = radiansPerBin * k;
      const size = dr * dr + di * di;
      const loudest = Math.max(near[k]!, er * er + ei * ei);
      const bend = omega * omega * this.#delayVariance;
      const weight =
        1 / (TINY + CORRELATED_BLOCKS * (loudest + doubt[k]! + (PATH_ERROR + 0.25 * bend * bend) * size));
      gain += weight * (dr * er + di * ei);
      delay += weight * omega * (di * er - dr * ei);
      power += weight * size;
      slope += weight * omega * omega * size;
    }
    this.#hearKnob(gain, power);
    if (Math.abs(this.#knob[0]! / this.#knobPower[0]!) < STRANGE_GAIN)
      this.#hearClock(delay / slope, 1 / slope);
    else this.#hearClock(0, Infinity);
  }

  #hearKnob(product: number, power: number): void {
    this.#gainVariance += GAIN_WANDERS;
    for (const [i, smoothing] of KNOB_SMOOTHINGS.entries()) {
      const all = (this.#knobPower[i] = smoothing * this.#knobPower[i]! + power);
      this.#knob[i] = smoothing * this.#knob[i]! + product;
      const off = this.#knob[i]! / all - this.#gain;
      if (off * off <= KNOB_DEVIATIONS ** 2 * (this.#gainVariance + 1 / all)) continue;
      this.#gainVariance = off * off;
      // What was measured before the knob was turned no longer holds.
      this.#knob.fill(0);
      this.#knobPower.fill(TINY);
      break;
    }
    const share = this.#gainVariance / (this.#gainVariance + 1 / power);
    this.#gain += share * (product / power - this.#gain);
    this.#gainVariance *= 1 - share;
  }

  #hearClock(measured: number, variance: number): void {
    const block = this.#blockSize;
    this.#delayVariance += block * (2 * this.#delayWithRate + block * this.#rateVariance) + DELAY_WANDERS;
    this.#delayWithRate += block * this.#rateVariance;
    this.#rateVariance += this.#rateWanders;
    if (variance === Infinity) return;
    const all = this.#delayVariance + variance;
    const off = Math.max(-1, Math.min(1, measured)) - this.#delay;
    const [share, rateShare] = [this.#delayVariance / all, this.#delayWithRate / all];
    this.#delay += share * off;
    this.#rate += rateShare * off;
    this.#rateVariance -= rateShare * this.#delayWithRate;
    this.#delayWithRate *= 1 - share;
    this.#delayVariance *= 1 - share;
  }

  /** From now on the prediction is `factor` times as loud; the sums so far are converted accordingly. */
  scaled(factor: number): void {
    this.#gain = (1 + this.#gain) / factor - 1;
    this.#gainVariance /= factor * factor;
    for (let i = 0; i < this.#knob.length; i++) {
      this.#knob[i] = factor * (this.#knob[i]! - (factor - 1) * this.#knobPower[i]!);
      this.#knobPower[i]! *= factor * factor;
    }
  }

  /** From now on the band is handed over by this many samples later. */
  delayed(samples: number): void {
    this.#delay -= samples;
  }

  /** Takes over a delay, in samples, that the path had learned by mistake within so many blocks; the path no longer has it. */
  given(samples: number, blocks: number): void {
    this.#delay += samples;
    const rate = (GIVEN_SHARE * samples) / (blocks * this.#blockSize);
    this.#rate += rate;
    this.#rateVariance += rate * rate;
  }

  /** The path has changed: loudness and delay are unknown; the clocks are the same. */
  forget(): void {
    this.#gain = this.#delay = this.#delayWithRate = 0;
    this.#knob.fill(0);
    this.#gainVariance = GAIN_START;
    this.#delayVariance = DELAY_DOUBT ** 2;
    this.#knobPower.fill(TINY);
  }
}
