import * as D from './decoding.ts';

/** How far the lowest and the highest of `count` values from `from` on lie apart. */
function spreadOf(path: readonly number[], from: number, count: number): number {
  let low = Infinity;
  let high = -Infinity;
  for (let i = from; i < from + count; i++) {
    low = Math.min(low, path[i]!);
    high = Math.max(high, path[i]!);
  }
  return high - low;
}

/** Where a slide left its first pitch and where it arrived: places in the path. */
export interface Slide {
  readonly left: number;
  readonly arrived: number;
}

/**
 * The slide down that a pitch path (semitones by frame) has just ended with: it stood still, sank within 80 ms, and has stood
 * still there since, each for 0.1 s. Those are two notes: a fretted string bends upwards only, so what sinks under the pitch at
 * which it began is no bend. What rises may be one, and is left to restOf; so is a bend that is let down.
 */
export function slideIn(path: readonly number[]): Slide | null {
  const arrived = path.length - D.STILL_FRAMES;
  const still = 2 * D.STILL_SEMITONES;
  if (arrived <= D.STILL_FRAMES || spreadOf(path, arrived, D.STILL_FRAMES) > still) return null;
  for (let left = arrived; left >= arrived - D.SLIDE_FRAMES && left >= D.STILL_FRAMES; left--) {
    const from = left - D.STILL_FRAMES;
    if (spreadOf(path, from, D.STILL_FRAMES) > still) continue;
    const before = path[from + D.STILL_FRAMES / 2]!;
    const sinks = before - path[arrived + D.STILL_FRAMES / 2]!;
    const wasBent = before - path[1]! > D.BEND_SEMITONES;
    if (sinks >= D.SLIDE_SEMITONES && !wasBent) return { left, arrived };
  }
  return null;
}
