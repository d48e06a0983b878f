/**
 * A single line as a player plays it on strings: strokes, and moves of the sounding note without a new stroke.
 * Beats count from the first downbeat.
 */

/** How the finger takes a sounding note somewhere else. */
export interface Move {
  /** Beats after the stroke at which the move starts. */
  readonly afterBeats: number;
  readonly kind: 'bend' | 'release' | 'slide' | 'hammer' | 'pull';
  /** MIDI key it arrives at. */
  readonly midi: number;
}

export interface Stroke {
  readonly beat: number;
  readonly durationBeats: number;
  /** MIDI key that is struck. */
  readonly midi: number;
  /** 1 to 127. */
  readonly velocity: number;
  readonly moves?: readonly Move[];
  /** Vibrato from half a beat after the last move on. */
  readonly vibrato?: boolean;
}
