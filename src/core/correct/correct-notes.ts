/** The notes that are graded: those that were heard, corrected by hand. */
import type { HeardNote } from '../take/note.ts';
import { MOST_CORRECTIONS, type Correction, type NotePlace } from '../take/correction.ts';
import { applyCorrection, type Misfit, type WorkingNote } from './apply-correction.ts';

/** How a note differs from what was heard. `time`: its beginning or its end, or both. */
export type Change = 'time' | 'pitch' | 'split' | 'joined' | 'added';

/** A note with what was done to it by hand. */
export interface CorrectedNote {
  readonly note: HeardNote;
  /** What the player has said of it; null where nothing was said. */
  readonly counts: boolean | null;
  /** How it differs from what was heard; empty where it does not. */
  readonly changes: readonly Change[];
  /** The notes that were heard and are this one now; none where it was added. */
  readonly was: readonly HeardNote[];
}

export interface CorrectedNotes {
  /** In order of onset; as they came where nothing is corrected. */
  readonly notes: readonly CorrectedNote[];
  /** Notes that were heard and are gone. */
  readonly deleted: readonly HeardNote[];
  /** Corrections that did not fit the notes, and why. They were passed over. */
  readonly leftOut: readonly { readonly correction: Correction; readonly why: Misfit }[];
}

/**
 * Applies the corrections in order. The notes that were heard stay as they are.
 * @example correctNotes([e4], [{ kind: 'pitch', of: e4, midi: e4.midi + 1 }]).notes[0].note.midi // e4.midi + 1
 */
export function correctNotes(
  heard: readonly HeardNote[],
  corrections: readonly Correction[],
): CorrectedNotes {
  let working: readonly WorkingNote[] = heard.map((note) => ({ ...note, said: null, was: [note] }));
  if (corrections.length > 0) working = working.toSorted(byPlace);
  const leftOut: { correction: Correction; why: Misfit }[] = [];
  for (const [i, correction] of corrections.entries()) {
    const applied: ReturnType<typeof applyCorrection> =
      i < MOST_CORRECTIONS ? applyCorrection(working, correction) : { fits: false, why: 'too many' };
    if (applied.fits) working = applied.notes;
    else leftOut.push({ correction, why: applied.why });
  }
  const left = new Map<HeardNote, number>();
  for (const { was } of working) for (const note of was) left.set(note, (left.get(note) ?? 0) + 1);
  return {
    notes: working.map((one) => correctedNote(one, left)),
    deleted: heard.filter((note) => !left.has(note)),
    leftOut,
  };
}

const byPlace = (a: NotePlace, b: NotePlace): number => a.onsetSeconds - b.onsetSeconds || a.midi - b.midi;

function correctedNote(
  { said, was, ...note }: WorkingNote,
  left: ReadonlyMap<HeardNote, number>,
): CorrectedNote {
  const changes = changesOf(note, was, left);
  // A note that is as it was heard is the very one that was heard.
  return { note: changes.length === 0 ? was[0]! : note, counts: said, changes, was };
}

function changesOf(
  note: HeardNote,
  was: readonly HeardNote[],
  left: ReadonlyMap<HeardNote, number>,
): readonly Change[] {
  const [origin] = was;
  if (origin === undefined) return ['added'];
  const changes: Change[] = [];
  if (was.length > 1) changes.push('joined');
  else if ((left.get(origin) ?? 0) > 1) changes.push('split');
  else if (note.onsetSeconds !== origin.onsetSeconds || note.offsetSeconds !== origin.offsetSeconds)
    changes.push('time');
  if (note.midi !== origin.midi) changes.push('pitch');
  return changes;
}
