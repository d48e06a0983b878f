import { STRUCK_DB } from './decoding.ts';
import { BLOCKS, DELAY_FRAMES } from './settings.ts';

/** Frames remembered; a power of two. */
const KEPT = 64;

/** How loud the last second was, by the network's frames: for a note's level, and to tell strokes from slurs. */
export class Levels {
  readonly #level = new Float32Array(KEPT);
  readonly #bright = new Float32Array(KEPT * BLOCKS);
  #count = 0;

  push(levelDb: number, brightDb: Float32Array): void {
    const at = this.#count++ & (KEPT - 1);
    this.#level[at] = levelDb;
    this.#bright.set(brightDb, at * BLOCKS);
  }

  /** The loudest of the 80 ms after network frame `frame`, in dBFS. */
  peakDb(frame: number): number {
    let peak = -90;
    for (let f = frame - DELAY_FRAMES; f <= frame - DELAY_FRAMES + 5; f++)
      if (f >= 0 && f < this.#count) peak = Math.max(peak, this.#level[f & (KEPT - 1)]!);
    return peak;
  }

  /** Whether network frame `frame` is among the loud ones of the second before it: within `rangeDb` of the loudest. */
  isLoud(frame: number, rangeDb: number): boolean {
    let loudest = -90;
    for (let f = Math.max(0, this.#count - KEPT); f < this.#count; f++)
      loudest = Math.max(loudest, this.#level[f & (KEPT - 1)]!);
    return this.peakDb(frame) >= loudest - rangeDb;
  }

  /** Whether the bright part leaps up about network frame `frame`, as it does where a string is struck or a reed tongued. */
  isStruck(frame: number): boolean {
    const first = (frame - DELAY_FRAMES) * BLOCKS;
    if (first < 4 * BLOCKS) return true;
    let before = 0;
    for (let b = first - 14; b < first - 6; b++) before += this.#brightAt(b) / 8;
    let after = -100;
    for (let b = first - 6; b <= first + 6; b++) after = Math.max(after, this.#brightAt(b));
    return after - before >= STRUCK_DB;
  }

  #brightAt(block: number): number {
    return this.#bright[block & (KEPT * BLOCKS - 1)]!;
  }
}
