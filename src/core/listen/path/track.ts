import type { Settled } from './path.ts';
import { TRACK_KEPT } from '../tuning/path.ts';

const KEPT = TRACK_KEPT;

/** The settled frames of late, by frame number. */
export class Track {
  readonly #midi = new Float32Array(KEPT);
  readonly #clarity = new Float32Array(KEPT);
  readonly #above = new Float32Array(KEPT);
  readonly #below = new Float32Array(KEPT);
  readonly #level = new Float32Array(KEPT);
  readonly #seconds = new Float64Array(KEPT);
  /** Frames taken so far; the newest is `count − 1`. */
  count = 0;

  add(settled: Settled): void {
    const at = this.count++ % KEPT;
    this.#midi[at] = settled.midi;
    this.#clarity[at] = settled.clarity;
    this.#above[at] = settled.above;
    this.#below[at] = settled.below;
    this.#level[at] = settled.levelDb;
    this.#seconds[at] = settled.seconds;
  }

  /** First frame still kept. */
  get first(): number {
    return Math.max(0, this.count - KEPT);
  }

  /** NaN where no pitch sounds or the frame does not exist. */
  midi(frame: number): number {
    return frame < this.first || frame >= this.count ? NaN : this.#midi[frame % KEPT]!;
  }
  clarity(frame: number): number {
    return frame < this.first || frame >= this.count ? 0 : this.#clarity[frame % KEPT]!;
  }
  /** Clarity of the octave above, as a share of the clarity of the pitch; 0 where it is no candidate. */
  above(frame: number): number {
    return frame < this.first || frame >= this.count ? 0 : this.#above[frame % KEPT]!;
  }
  /** The same of the octave below. */
  below(frame: number): number {
    return frame < this.first || frame >= this.count ? 0 : this.#below[frame % KEPT]!;
  }
  level(frame: number): number {
    return frame < this.first || frame >= this.count ? -120 : this.#level[frame % KEPT]!;
  }
  seconds(frame: number): number {
    return this.#seconds[Math.max(this.first, Math.min(this.count - 1, frame)) % KEPT]!;
  }
}
