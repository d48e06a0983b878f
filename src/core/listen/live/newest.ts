import { Autocorrelator } from 'pitchy';
import { hzToMidi } from '../../music/temperament.ts';
import { normalise } from '../frames/correlate.ts';
import { emptyFrame, type Frame } from '../frames/frame.ts';
import { levelDb } from '../frames/level.ts';
import { emptyPeaks, findPeaks, refineLag } from '../frames/peaks.ts';
import * as S from '../tuning/frames.ts';

const BUFFER = 16384;

/**
 * The newest 29 ms, for the live screen: its pitch is told 18 to 45 ms after an attack, long before the network has
 * settled the note. Each look costs 0.1 ms, and samples that nobody looks at cost a copy.
 */
export class NewestFrame {
  readonly #samples = new Float32Array(BUFFER);
  #filled = S.WINDOW;
  #dropped = -S.WINDOW;
  readonly #frame = emptyFrame();
  readonly #peaks = emptyPeaks();
  readonly #curve = new Float32Array(S.WINDOW_LONGEST_LAG + 2);
  readonly #single = Autocorrelator.forNumberArray(S.WINDOW);
  readonly #correlation: number[] = new Array<number>(S.WINDOW).fill(0);

  /** Samples at the inner rate. */
  push(samples: Float32Array): void {
    if (this.#filled + samples.length > BUFFER) {
      const drop = this.#filled - S.WINDOW;
      this.#samples.copyWithin(0, drop, this.#filled);
      this.#filled -= drop;
      this.#dropped += drop;
    }
    this.#samples.set(samples, this.#filled);
    this.#filled += samples.length;
  }

  /** The window that ends at the newest sample; written over by the next call. */
  look(): Frame {
    const { WINDOW } = S;
    const start = this.#filled - WINDOW;
    const frame = this.#frame;
    frame.seconds = (this.#dropped + this.#filled - WINDOW / 2) / S.INNER_RATE;
    frame.levelDb = levelDb(this.#samples, start + S.LEVEL_MARGIN, WINDOW - 2 * S.LEVEL_MARGIN);
    frame.count = 0;
    if (frame.levelDb <= S.EMPTY_DB) return frame;
    this.#single.autocorrelate(this.#samples.subarray(start, start + WINDOW), this.#correlation);
    normalise(this.#samples, start, WINDOW, this.#correlation, 1, this.#curve);
    findPeaks(this.#curve, S.SHORTEST_LAG, S.WINDOW_LONGEST_LAG, this.#peaks);
    const peaks = this.#peaks;
    for (let i = 0; i < peaks.count; i++) {
      frame.midi[i] = hzToMidi(S.INNER_RATE / refineLag(this.#curve, peaks.lag[i]!, S.WINDOW_LONGEST_LAG));
      frame.clarity[i] = peaks.height[i]!;
    }
    frame.count = peaks.count;
    return frame;
  }
}
