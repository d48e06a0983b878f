/**
 * The canceller with its two slow hands: one follows a turned volume knob, the other the two clocks drifting
 * apart. What is left for the canceller itself is the shape of the path.
 */
import { Canceller } from './canceller.ts';
import type { CancellerSettings } from './canceller-settings.ts';
import { interpolated } from '../../base/interpolate.ts';
import { Leftover } from './leftover.ts';

/** A knob turned down is followed so far: under it the band is gone, and nothing would tell that it is back. */
const LEAST_GAIN = 0.01;
const MOST_GAIN = 100;
/** A second. */
const HELD_BLOCKS = 94;
/** The clocks of two consumer devices differ by less than 300 ppm. */
const MOST_RATE = 3e-4;
/** How far the band may be shifted, samples: five minutes at 300 ppm are 1,080 samples at 12 kHz. */
const MOST_SHIFT = 1100;
/** Samples that the interpolation needs to either side. */
export const LEAST_HELD_BACK = 10;

/** A jump is known to the nearest sample or two, peaks being as broad as they are. */
const JUMP_DOUBT = 1;

export interface FollowerSettings extends CancellerSettings {
  /**
   * Samples by which the band is held back before it goes into the path: the pure delay of a path that was measured, or
   * LOOK_AHEAD where the band is handed over so much early. The band can come so much earlier than foretold, less
   * LEAST_HELD_BACK. Nothing is added to the microphone's own delay.
   */
  readonly heldBackSamples: number;
}

/** Blocks of microphone and band in, blocks without the band out. Buffers are allocated once. */
export class BandFollower {
  readonly blockSize: number;
  readonly #settings: CancellerSettings;
  #canceller: Canceller;
  readonly #heldBack: number;
  /** Of each channel of the band what was played, and the block that is due. */
  readonly #lines: readonly Float32Array[];
  readonly #band: readonly Float32Array[];
  readonly #leftover: Leftover;
  #shift = 0;
  #gain = 1;
  #rate = 0;
  /** Blocks for which knob and clock are left alone: the path is being learned anew. */
  #held = 0;

  /** @throws RangeError where the band is held back by less than LEAST_HELD_BACK samples */
  constructor(settings: FollowerSettings) {
    const { heldBackSamples } = settings;
    if (!(heldBackSamples >= LEAST_HELD_BACK)) {
      throw new RangeError(`heldBackSamples is from ${LEAST_HELD_BACK} up, not ${heldBackSamples}`);
    }
    this.#heldBack = heldBackSamples;
    this.blockSize = settings.blockSize;
    this.#settings = settings;
    this.#canceller = new Canceller(settings);
    const length = heldBackSamples + MOST_SHIFT + LEAST_HELD_BACK + settings.blockSize;
    this.#lines = settings.path.map(() => new Float32Array(length));
    this.#band = settings.path.map(() => new Float32Array(settings.blockSize));
    this.#leftover = new Leftover(settings.partitions * settings.blockSize);
  }

  /**
   * The band was found to come in so many samples later from now on: the browser has slipped. What was learned since
   * then was learned of the wrong moment, so the path begins again as it was given.
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

  /** How far the two clocks differ, parts per million; positive where the band falls behind. */
  get driftPpm(): number {
    return this.#rate * 1e6;
  }

  /** The band in the last block, as it was taken off. */
  get foretold(): Float32Array {
    return this.#canceller.foretold;
  }

  /** The path of a channel as it is known now. */
  path(channel = 0): Float32Array {
    return this.#canceller.path(channel);
  }

  /**
   * @param microphone a block of what was heard
   * @param band of each channel what was played, the delay of the path before it
   * @param out the block without the band; may be `microphone`
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
    const earliest = LEAST_HELD_BACK - this.#heldBack;
    this.#shift = Math.max(Math.max(-MOST_SHIFT, earliest), Math.min(MOST_SHIFT, this.#shift + samples));
  }
}

/** Held back by so much, the band can be shifted as far to one side as to the other. */
export const LOOK_AHEAD = MOST_SHIFT + LEAST_HELD_BACK;

const clamp = (value: number, most: number): number => Math.max(-most, Math.min(most, value));
