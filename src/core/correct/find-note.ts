/** A note is found again by its onset and its pitch. */
import type { NotePlace } from '../take/correction.ts';

/** A note heard again from the same sound may move by this much; two notes of a line lie further apart. */
const SAME_ONSET_SECONDS = 0.02;
const SAME_SEMITONES = 0.5;

/** How far a note lies from a name, 0 where it is the very note; 1 and more where it is another. */
const distance = (a: NotePlace, b: NotePlace): number =>
  Math.max(
    Math.abs(a.onsetSeconds - b.onsetSeconds) / SAME_ONSET_SECONDS,
    Math.abs(a.midi - b.midi) / SAME_SEMITONES,
  );

/** Rounding may bring a distance that is meant to be 1 a little above it. */
const ROUNDING = 1e-6;

/** Index of the note that is meant, the closest of those that may be; -1 where there is none. */
export function findNote(notes: readonly NotePlace[], of: NotePlace): number {
  let found = -1;
  let least = 1 + ROUNDING;
  for (const [i, note] of notes.entries()) {
    const apart = distance(note, of);
    if (apart >= least) continue;
    least = apart;
    found = i;
  }
  return found;
}
