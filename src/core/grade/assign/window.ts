/** Notes near a place in time: a take of two hours has too many to ask them all at every change. */
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';
import type { GradedNote } from './graded-note.ts';

/** Place of the first note that starts at or after a beat; the length of the list when none does. */
export function firstFrom(notes: readonly GradedNote[], beat: number): number {
  let low = 0;
  let high = notes.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (notes[middle]!.onsetBeat < beat - BEAT_TOLERANCE) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The notes that start from one beat to another, both included. */
export const notesBetween = (notes: readonly GradedNote[], from: number, to: number): readonly GradedNote[] =>
  notes.slice(firstFrom(notes, from), firstFrom(notes, to + 3 * BEAT_TOLERANCE));

/** For every note how far any note up to it sounds on, in beats: says at once whether something is held. */
export function soundingUntil(notes: readonly GradedNote[]): Float64Array {
  const until = new Float64Array(notes.length);
  let latest = -Infinity;
  notes.forEach((note, i) => {
    latest = Math.max(latest, note.offsetBeat);
    until[i] = latest;
  });
  return until;
}
