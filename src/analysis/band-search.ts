/**
 * The search for a band that may have come back through the microphone, for a take that is sent in pieces: the worker keeps
 * them at the rate of the search alone, so that an hour's take is not copied as a whole.
 */
import type { MonoSamples } from '../core/base/pcm16.ts';
import type { TakeAndBand } from '../core/grade-samples.ts';
import { RoomRateSound } from '../core/room/align/room-rate.ts';

/** What all pieces belong to; the rate of both in Hz. */
export interface WholeSearch {
  readonly frames: number;
  readonly bandFrames: number;
  readonly sampleRate: number;
}

/** The worker's side; the page's is `grade-whole.ts`. */
export class BandSearch {
  readonly #whole: WholeSearch;
  readonly #take: RoomRateSound;
  readonly #band: RoomRateSound;

  constructor(whole: WholeSearch) {
    this.#whole = whole;
    this.#take = new RoomRateSound(whole.frames, whole.sampleRate);
    this.#band = new RoomRateSound(whole.bandFrames, whole.sampleRate);
  }

  push(take: MonoSamples, band: MonoSamples): void {
    this.#take.push(take);
    this.#band.push(band);
  }

  finish(): TakeAndBand {
    const { frames, sampleRate } = this.#whole;
    return { frames, sampleRate, take: this.#take.finish(), band: this.#band.finish() };
  }
}
