/**
 * Which notes count. A note that the listener is not sure of stays in the report and counts in no share, unless the player
 * has said that it was played, or has corrected it; a note that the player has taken out counts no more, however sure it
 * was.
 */
import type { CorrectedNote } from '../../correct/correct-notes.ts';
import type { HeardNote } from '../../take/note.ts';

/** From this confidence on a note is more likely right than wrong. */
const LEAST_CONFIDENCE = 0.5;

/** Whether the listener is sure enough of a note for it to count where the player has said nothing of it. */
export const isSure = (note: HeardNote): boolean => note.confidence >= LEAST_CONFIDENCE;

export interface CountedNotes {
  readonly counted: readonly HeardNote[];
  /** Those that count in no share, in order. */
  readonly doubtful: readonly HeardNote[];
}

/**
 * A note that was corrected by hand was played, or it would have been deleted.
 * @example countedNotes(correctNotes([{ …note, confidence: 0.3 }], []).notes) // { counted: [], doubtful: [note] }
 */
export function countedNotes(notes: readonly CorrectedNote[]): CountedNotes {
  const counted: HeardNote[] = [];
  const doubtful: HeardNote[] = [];
  for (const { note, counts, changes } of notes)
    ((counts ?? (changes.length > 0 || isSure(note))) ? counted : doubtful).push(note);
  return { counted, doubtful };
}
