import { CANDIDATES } from '../tuning/frames.ts';

/**
 * What 8 ms of sound may be: several pitches with their correlation, never one answer. The buffers belong to the
 * analyser and are written over at the next frame.
 */
export interface Frame {
  /** Frame number; its centre is at `seconds`. */
  index: number;
  seconds: number;
  /** How many of the candidates below are filled, best first is not promised. */
  count: number;
  /** Pitch of each candidate as a fractional MIDI number (A4 = 440). */
  readonly midi: Float32Array;
  /** Height of its peak in the normalised square difference, 0 to 1. */
  readonly clarity: Float32Array;
  /** Level of the 21 ms about the centre, dBFS (RMS), and never under −120. */
  levelDb: number;
}

export function emptyFrame(): Frame {
  return {
    index: 0,
    seconds: 0,
    count: 0,
    midi: new Float32Array(CANDIDATES),
    clarity: new Float32Array(CANDIDATES),
    levelDb: -120,
  };
}
