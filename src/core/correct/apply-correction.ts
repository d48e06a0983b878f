/** One correction, checked against the notes as they stand, and applied. */
import type { HeardNote } from '../take/note.ts';
import { LEAST_NOTE_SECONDS, type Correction, type NotePlace } from '../take/correction.ts';
import { findNote } from './find-note.ts';

/** A note on its way through the corrections: what was said of it, and the heard notes that it comes from. */
export interface WorkingNote extends HeardNote {
  readonly said: boolean | null;
  readonly was: readonly HeardNote[];
}

/**
 * Why a correction does not fit: the note that it names is not there, or has none after it to be joined with; the note
 * would be shorter than the least, or would sound together with another; or there are too many corrections.
 */
export type Misfit = 'no note' | 'no next note' | 'too short' | 'together' | 'too many';

type Applied =
  | { readonly fits: true; readonly notes: readonly WorkingNote[] }
  | { readonly fits: false; readonly why: Misfit };

/** Sums of seconds are as exact as this. */
const ROUNDING_SECONDS = 1e-6;

/** @param notes in order of onset; what comes back is, too */
export function applyCorrection(notes: readonly WorkingNote[], correction: Correction): Applied {
  if (correction.kind === 'add') return put(notes, [], [addedNote(correction)]);
  const index = findNote(notes, correction.of);
  const note = notes[index];
  if (note === undefined) return misfit('no note');
  switch (correction.kind) {
    case 'delete':
      return put(notes, [note], []);
    case 'move': {
      const { onsetSeconds, offsetSeconds } = correction;
      return put(notes, [note], [{ ...note, onsetSeconds, offsetSeconds }]);
    }
    case 'split': {
      const at = correction.atSeconds;
      const second: WorkingNote = { ...note, onsetSeconds: at, attack: 'struck', bendSemitones: 0 };
      return put(notes, [note], [{ ...note, offsetSeconds: at }, second]);
    }
    case 'join': {
      const next = notes[index + 1];
      return next === undefined ? misfit('no next note') : put(notes, [note, next], [joined(note, next)]);
    }
    case 'pitch':
      return put(notes, [note], [{ ...note, midi: correction.midi }]);
    case 'count':
      return put(notes, [note], [{ ...note, said: correction.counts }]);
  }
}

const misfit = (why: Misfit): Applied => ({ fits: false, why });

/** A note that the player has put there is sure. */
const addedNote = ({ onsetSeconds, offsetSeconds, midi }: Extract<Correction, { kind: 'add' }>) => ({
  onsetSeconds,
  offsetSeconds,
  midi,
  confidence: 1,
  levelDb: null,
  attack: 'struck' as const,
  bendSemitones: 0,
  vibrato: null,
  second: null,
  said: null,
  was: [],
});

const joined = (note: WorkingNote, next: WorkingNote): WorkingNote => ({
  ...note,
  offsetSeconds: Math.max(note.offsetSeconds, next.offsetSeconds),
  said: note.said ?? next.said,
  was: [...new Set([...note.was, ...next.was])],
});

/** Puts notes in the place of others, unless one would be too short or sound longer together with another than before. */
function put(
  notes: readonly WorkingNote[],
  taken: readonly WorkingNote[],
  given: readonly WorkingNote[],
): Applied {
  const least = Math.min(LEAST_NOTE_SECONDS, ...(given.length === 1 ? taken : []).map(lengthOf));
  if (given.some((note) => lengthOf(note) < least - ROUNDING_SECONDS)) return misfit('too short');
  const others = notes.filter((note) => !taken.includes(note));
  for (const note of given)
    for (const other of others) {
      const before = taken.reduce((sum, old) => sum + togetherSeconds(old, other), 0);
      if (togetherSeconds(note, other) > before + ROUNDING_SECONDS) return misfit('together');
    }
  return { fits: true, notes: given.reduce(inserted, others) };
}

/** Before the first note that begins later, so that the others keep their order. */
function inserted(notes: readonly WorkingNote[], note: WorkingNote): readonly WorkingNote[] {
  const later = (other: NotePlace) =>
    other.onsetSeconds > note.onsetSeconds ||
    (other.onsetSeconds === note.onsetSeconds && other.midi > note.midi);
  const at = notes.findIndex(later);
  return at < 0 ? [...notes, note] : notes.toSpliced(at, 0, note);
}

type Stretch = Pick<HeardNote, 'onsetSeconds' | 'offsetSeconds'>;

const lengthOf = ({ onsetSeconds, offsetSeconds }: Stretch): number => offsetSeconds - onsetSeconds;

const togetherSeconds = (a: Stretch, b: Stretch): number =>
  Math.max(0, Math.min(a.offsetSeconds, b.offsetSeconds) - Math.max(a.onsetSeconds, b.onsetSeconds));
