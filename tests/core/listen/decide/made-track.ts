/** Settled frames made by hand for the tests of the rules. */
import { Track } from '../../../../src/core/listen/path/track.ts';

/** A frame every 8 ms. */
export const FRAME_SECONDS = 0.008;

export interface MadeFrame {
  /** Fractional MIDI number, NaN for no pitch. */
  readonly midi?: number;
  readonly clarity?: number;
  readonly levelDb?: number;
}

/** Frames as they are given, the first at 0 s. What is left out is MIDI 60, clarity 0.98 and −20 dBFS. */
export function trackOf(frames: readonly MadeFrame[]): Track {
  const track = new Track();
  frames.forEach(({ midi = 60, clarity = 0.98, levelDb = -20 }, index) => {
    track.add({ index, seconds: index * FRAME_SECONDS, midi, clarity, above: 0, below: 0, levelDb });
  });
  return track;
}

/** So many equal frames. */
export const times = (count: number, frame: MadeFrame): MadeFrame[] =>
  new Array<MadeFrame>(count).fill(frame);

/** Frames of these pitches (fractional MIDI numbers). */
export const pitches = (...midis: readonly number[]): MadeFrame[] => midis.map((midi) => ({ midi }));
