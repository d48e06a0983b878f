/**
 * How much louder and how much later than foretold the band comes back: a volume knob that was turned, two clocks that
 * drift apart. Two numbers and a rate for the whole path, so that they are known within a fraction of a second, long
 * before each bin of the path could be learned anew.
 *
 * What is left is fitted, block by block, against what was foretold and against its derivative in time, weighted by
 * how quiet the player is. A Kalman filter (R. E. Kalman 1960) joins the blocks: it knows how sure it is, so it is
 * bold at the start and calm later, and a player who covers the band teaches it nothing.
 */

/** Notes of player and band keep step for some blocks: so many count as one witness. */
const CORRELATED_BLOCKS = 10;
/** The path's own error does not average out: what is left is taken to hold at least so much of the foretold, −30 dB. */
const PATH_ERROR = 1e-3;
/** Loudness: how unsure at the start, and how it wanders in a block: 1.4 % in a second. */
const GAIN_START = 0.1 ** 2;
const GAIN_WANDERS = 2e-6;
/** Delay in samples, the same. The path was measured a moment ago. */
const DELAY_DOUBT = 0.1;
const DELAY_WANDERS = 1e-7;
/** Clocks of two devices differ by so many parts per million at most. */
const CLOCK_PPM = 200;
/**
 * Share of that by which the rate wanders in a block, 5 ppm in a second: a rate that were held for certain too early
 * would leave its rest to the path.
 */
const RATE_WANDERS = 0.0027;
/** Share of a lateness learned by the path that is taken for a clock's rate. */
const GIVEN_SHARE = 0.5;
/**
 * An error of loudness that so many deviations explain no more is a turned knob: where the band is loud it shows over
 * 10 blocks, a tenth of a second, where the player covers it over half a second or two.
 */
const KNOB_SMOOTHINGS = [0.9, 0.98, 0.995] as const;
const KNOB_DEVIATIONS = 3;
/** Beyond this error of loudness nothing is learned of delay. */
const STRANGE_GAIN = 0.25;
/** Less than this is not worth mending yet. */
const LEAST_GAIN = 0.002;
const LEAST_DELAY = 0.004;
const TINY = 1e-12;

export interface Correction {
  /** Relative error of loudness: +1 where the band comes back twice as loud; 0 where nothing is due. */
  readonly gain: number;
  /** How many samples later than foretold it comes back. */
  readonly delaySamples: number;
  /** How fast it falls behind, samples a sample; the caller is taken to go by it. */
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
  /** Products over each stretch of KNOB_SMOOTHINGS. */
  readonly #knob = KNOB_SMOOTHINGS.map(() => 0);
  readonly #knobPower = KNOB_SMOOTHINGS.map(() => TINY);

  /**
   * @param blockSize half the size of the transforms @param clockPpm by how much the clocks may differ
   * @param delayDoubt by how many samples the delay may be off at the start: taken for a clock's, they would not come back
   */
  constructor(blockSize: number, clockPpm = CLOCK_PPM, delayDoubt = DELAY_DOUBT) {
    this.#delayVariance = delayDoubt ** 2;
    this.#blockSize = blockSize;
    this.#rateVariance = (clockPpm / 1e6) ** 2;
    this.#rateWanders = RATE_WANDERS ** 2 * this.#rateVariance;
  }

  /** What is to be mended. The caller says when it has: `scaled`, `delayed`. */
  get due(): Correction {
    return {
      gain: Math.abs(this.#gain) < LEAST_GAIN ? 0 : this.#gain,
      delaySamples: Math.abs(this.#delay) < LEAST_DELAY ? 0 : this.#delay,
      rate: this.#rate,
    };
  }

  /** How unsure loudness is, as a square of its relative error. */
  get gainVariance(): number {
    return this.#gainVariance;
  }

  /** How unsure the delay is, samples squared. */
  get delayVariance(): number {
    return this.#delayVariance;
  }

  /** Spectra of a block, interleaved; in each bin the player's power, and what the path's own doubt accounts for. */
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
      // What was heard before the knob was turned says nothing any more.
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

  /** What is foretold is `factor` times as loud from now on: what was compared so far is judged in that light. */
  scaled(factor: number): void {
    this.#gain = (1 + this.#gain) / factor - 1;
    this.#gainVariance /= factor * factor;
    for (let i = 0; i < this.#knob.length; i++) {
      this.#knob[i] = factor * (this.#knob[i]! - (factor - 1) * this.#knobPower[i]!);
      this.#knobPower[i]! *= factor * factor;
    }
  }

  /** The band is handed over so many samples later from now on. */
  delayed(samples: number): void {
    this.#delay -= samples;
  }

  /** The path had learned so many samples of delay in so many blocks, and has forgotten them. */
  given(samples: number, blocks: number): void {
    this.#delay += samples;
    const rate = (GIVEN_SHARE * samples) / (blocks * this.#blockSize);
    this.#rate += rate;
    this.#rateVariance += rate * rate;
  }

  /** Another path: of loudness and delay nothing is known; the clocks are the same. */
  forget(): void {
    this.#gain = this.#delay = this.#delayWithRate = 0;
    this.#knob.fill(0);
    this.#gainVariance = GAIN_START;
    this.#delayVariance = DELAY_DOUBT ** 2;
    this.#knobPower.fill(TINY);
  }
}
