import type { Frame } from '../frames/frame.ts';

/** Under this level nothing is read, dBFS. */
const LEAST_DB = -66;
/** A peak lower than this is no pitch, */
const LEAST_CLARITY = 0.75;
/** and the shortest period wins whose peak is this share of the highest (McLeod & Wyvill's k). */
const SHARE = 0.88;

/** The pitch of the newest frame on its own, as a fractional MIDI number, or null. */
export function readingOf(frame: Frame): number | null {
  if (frame.levelDb < LEAST_DB) return null;
  let best = 0;
  for (let i = 0; i < frame.count; i++) best = Math.max(best, frame.clarity[i]!);
  if (best < LEAST_CLARITY) return null;
  let pitch: number | null = null;
  for (let i = 0; i < frame.count; i++) {
    if (frame.clarity[i]! >= SHARE * best && (pitch === null || frame.midi[i]! > pitch))
      pitch = frame.midi[i]!;
  }
  return pitch;
}
