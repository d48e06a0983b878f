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

/** A note of the line as a listener should name it. */
export interface LineNote {
  readonly beat: number;
  readonly durationBeats: number;
  readonly midi: number;
}

/**
 * The notes of a line by the trade's own count: a bend is the pitch it arrives at; a slide, a hammer-on and a
 * pull-off end one note and begin another; a release goes back to a note that is heard again.
 */
export function lineNotes(strokes: readonly Stroke[]): readonly LineNote[] {
  return strokes.flatMap((stroke) => {
    const notes: { beat: number; midi: number }[] = [{ beat: stroke.beat, midi: stroke.midi }];
    for (const move of stroke.moves ?? []) {
      if (move.kind === 'bend') notes.at(-1)!.midi = move.midi;
      else notes.push({ beat: stroke.beat + move.afterBeats, midi: move.midi });
    }
    const end = stroke.beat + stroke.durationBeats;
    return notes.map((note, i) => ({ ...note, durationBeats: (notes[i + 1]?.beat ?? end) - note.beat }));
  });
}
