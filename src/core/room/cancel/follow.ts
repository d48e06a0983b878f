/**
 * The canceller with two corrections before it: one follows a volume knob, the other the drift of the two clocks. Only the
 * shape of the path is left for the canceller itself.
 */
import { Canceller } from './canceller.ts';
import type { CancellerSettings } from './canceller-settings.ts';
import { interpolated } from '../../base/interpolate.ts';
import { Leftover } from './leftover.ts';

/** Smallest gain that is followed: below it the band is inaudible, and its return could not be noticed. */
const LEAST_GAIN = 0.01;
const MOST_GAIN = 100;
/** Blocks of one second. */
const HELD_BLOCKS = 94;
/** The clocks of two consumer devices differ by less than 300 ppm. */
const MOST_RATE = 3e-4;
/** Largest shift of the band by drift, samples: five minutes at 300 ppm are 1,080 samples at 12 kHz. */
const MOST_SHIFT = 1100;
/** Samples that the interpolation needs on both sides. */
export const LEAST_HELD_BACK = 10;

/** Uncertainty of a slip, samples: the width of a correlation peak. */
const JUMP_DOUBT = 1;

export interface FollowerSettings extends CancellerSettings {
  /**
   * Samples by which the band is delayed before the path is applied: the pure delay of a measured path, or LOOK_AHEAD
   * where the caller hands the band over early by that much. The band can come earlier than predicted by this value minus
   * LEAST_HELD_BACK. The microphone is not delayed.
   */
  readonly heldBackSamples: number;
  /** Samples by which the band may jump either way, beside what drift may shift it; by default 0. */
  readonly mostJumpSamples?: number;
}

/** Takes blocks of microphone and band, gives blocks without the band. Buffers are allocated once. */
export class BandFollower {
  readonly blockSize: number;
  readonly #settings: CancellerSettings;
  #canceller: Canceller;
  readonly #heldBack: number;
  readonly #mostShift: number;
  /** For each channel of the band the samples played, and the block that is next. */
  readonly #lines: readonly Float32Array[];
  readonly #band: readonly Float32Array[];
  readonly #leftover: Leftover;
  #shift = 0;
  #gain = 1;
  #rate = 0;
  /** Blocks for which knob and clock are not corrected, because the path is being learned again. */
  #held = 0;

  /** @throws RangeError where the band is held back by less than LEAST_HELD_BACK samples */
  constructor(settings: FollowerSettings) {
    const { heldBackSamples, mostJumpSamples = 0 } = settings;
    if (!(heldBackSamples >= LEAST_HELD_BACK)) {
      throw new RangeError(`heldBackSamples is from ${LEAST_HELD_BACK} up, not ${heldBackSamples}`);
    }
    this.#heldBack = heldBackSamples;
    this.#mostShift = MOST_SHIFT + mostJumpSamples;
    this.blockSize = settings.blockSize;
    this.#settings = settings;
    this.#canceller = new Canceller(settings);
    const length = heldBackSamples + this.#mostShift + LEAST_HELD_BACK + settings.blockSize;
    this.#lines = settings.path.map(() => new Float32Array(length));
    this.#band = settings.path.map(() => new Float32Array(settings.blockSize));
    this.#leftover = new Leftover(settings.partitions * settings.blockSize);
  }

  /**
   * The browser has slipped: from now on the band comes by this many samples later. What was learned since the slip was
   * learned at a wrong delay, so that the path starts again from the one that was given.
   */
  jumped(samples: number): void {
    this.#moveBy(samples);
    this.#rate = 0;
    this.#gain = 1;
    this.#canceller = new Canceller({ ...this.#settings, delayDoubt: JUMP_DOUBT });
  }

  /** Samples by which the band now comes later than at the start. */
  get shiftSamples(): number {
    return this.#shift;
  }

  /** Difference of the two clocks, parts per million; positive where the band falls behind. */
  get driftPpm(): number {
    return this.#rate * 1e6;
  }

  /** The band's part of the last block, which was subtracted. */
  get foretold(): Float32Array {
    return this.#canceller.foretold;
  }

  /** The estimate of a channel's path. */
  path(channel = 0): Float32Array {
    return this.#canceller.path(channel);
  }

  /**
   * @param microphone a block of the microphone's samples
   * @param band for each channel what was played, earlier by the delay of the path
   * @param out receives the block without the band; may be the same array as `microphone`
   */
  process(microphone: Float32Array, band: readonly Float32Array[], out: Float32Array): void {
    for (const [channel, line] of this.#lines.entries()) {
      const due = this.#band[channel]!;
      line.copyWithin(0, this.blockSize);
      line.set(band[channel]!, line.length - this.blockSize);
      const first = line.length - this.blockSize - this.#heldBack;
      for (let i = 0; i < this.blockSize; i++) {
        due[i] = interpolated(line, first + i - this.#shift - this.#rate * i);
      }
    }
    this.#canceller.process(microphone, this.#band, out);
    if (this.#leftover.push(out, this.#band[0]!)) {
      this.#canceller.doubt(this.#leftover.ratio);
      this.#held = HELD_BLOCKS;
    }
    this.#moveBy(this.#rate * this.blockSize);
    if (this.#held > 0) this.#held--;
    else this.#mend();
  }

  #mend(): void {
    const { gain, delaySamples, rate } = this.#canceller.correction;
    if (gain !== 0) {
      const before = this.#gain;
      this.#gain = Math.max(LEAST_GAIN, Math.min(MOST_GAIN, before * (1 + gain)));
      this.#canceller.scale(this.#gain / before);
    }
    if (delaySamples !== 0) {
      this.#moveBy(delaySamples);
      this.#canceller.delay(delaySamples);
    }
    this.#rate = clamp(rate, MOST_RATE);
  }

  #moveBy(samples: number): void {
    const earliest = Math.max(-this.#mostShift, LEAST_HELD_BACK - this.#heldBack);
    this.#shift = Math.max(earliest, Math.min(this.#mostShift, this.#shift + samples));
  }
}

/** With the band delayed by this much, it can be shifted equally far in both directions. */
export const LOOK_AHEAD = MOST_SHIFT + LEAST_HELD_BACK;

const clamp = (value: number, most: number): number => Math.max(-most, Math.min(most, value));
