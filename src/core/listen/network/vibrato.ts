import type { HeardNote } from '../../take/note.ts';
import * as D from './decoding.ts';
import { HOP, INNER_RATE } from './settings.ts';

/** Vibrato of a pitch path, a value in semitones a frame: swings about its middle that are wide and regular enough; else null. */
export function vibratoOf(path: readonly number[]): HeardNote['vibrato'] {
  if (path.length < 16) return null;
  const sorted = [...path].sort((a, b) => a - b);
  const low = sorted[Math.trunc(0.1 * sorted.length)]!;
  const high = sorted[Math.trunc(0.9 * (sorted.length - 1))]!;
  const depthCents = 50 * (high - low);
  if (depthCents < D.VIBRATO_CENTS || depthCents > D.VIBRATO_WIDEST_CENTS) return null;
  const middle = (low + high) / 2;
  const edge = (high - low) / 6;
  let side = 0;
  let swings = 0;
  let first = 0;
  let last = 0;
  path.forEach((value, i) => {
    const now = value > middle + edge ? 1 : value < middle - edge ? -1 : side;
    if (now !== side && side !== 0) {
      if (swings === 0) first = i;
      swings++;
      last = i;
    }
    side = now;
  });
  if (swings < 4) return null;
  const rateHz = ((swings - 1) / 2 / (last - first)) * (INNER_RATE / HOP);
  return rateHz >= D.VIBRATO_SLOWEST_HZ && rateHz <= D.VIBRATO_FASTEST_HZ ? { rateHz, depthCents } : null;
}
