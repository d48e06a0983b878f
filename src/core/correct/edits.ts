/** The corrections behind the verbs of an editor: how far each goes, and which note is looked at afterwards. */
import { largest, smallest } from '../base/extremes.ts';
import { nameNote } from '../music/name-note.ts';
import { centsAboveStandard } from '../music/temperament.ts';
import { LEAST_NOTE_SECONDS, type Correction, type NotePlace } from '../take/correction.ts';
import type { HeardNote } from '../take/note.ts';
import type { CorrectedNote } from './correct-notes.ts';

export const EDIT_VERBS = [
  'up',
  'down',
  'earlier',
  'later',
  'shorter',
  'longer',
  'split',
  'join',
  'add',
  'delete',
] as const;
export type EditVerb = (typeof EDIT_VERBS)[number];

/** One press moves a note, or its end, by this much: what an ear just notices in a line. */
export const STEP_SECONDS = 0.02;

export interface EditPlace {
  /** Where the playback stands: a note is split and added here. */
  readonly atSeconds: number;
  readonly beatSeconds: number;
  readonly durationSeconds: number;
  readonly referenceHz: number;
}

export interface Edit {
  readonly correction: Correction;
  /** Where the note is found that is looked at now; null where none is left. */
  readonly follow: NotePlace | null;
}

type Stretch = Pick<HeardNote, 'onsetSeconds' | 'offsetSeconds'>;

/** How far a note may reach before it meets another, or the end of the take. */
export function roomOf(
  notes: readonly CorrectedNote[],
  index: number,
  durationSeconds: number,
): { readonly fromSeconds: number; readonly toSeconds: number } {
  const { note } = notes[index]!;
  const before = notes.slice(0, index).map((one) => Math.min(one.note.offsetSeconds, note.onsetSeconds));
  const after = notes.slice(index + 1).map((one) => Math.max(one.note.onsetSeconds, note.offsetSeconds));
  return {
    fromSeconds: largest(before, 0),
    toSeconds: smallest(after, Math.max(durationSeconds, note.offsetSeconds)),
  };
}

/** A note moved and stretched by hand, as far as there is room; vertically by whole half steps. */
export function draggedNote(
  notes: readonly CorrectedNote[],
  index: number,
  by: { readonly onsetSeconds: number; readonly offsetSeconds: number; readonly semitones: number },
  durationSeconds: number,
): Stretch & { readonly midi: number } {
  const { note } = notes[index]!;
  const { fromSeconds, toSeconds } = roomOf(notes, index, durationSeconds);
  const length = note.offsetSeconds - note.onsetSeconds;
  const midi = note.midi + by.semitones;
  if (by.onsetSeconds === 0) {
    const least = Math.min(length, LEAST_NOTE_SECONDS);
    const offset = Math.max(note.onsetSeconds + least, note.offsetSeconds + by.offsetSeconds);
    return { onsetSeconds: note.onsetSeconds, offsetSeconds: Math.min(toSeconds, offset), midi };
  }
  const wanted = Math.max(fromSeconds, note.onsetSeconds + by.onsetSeconds);
  const onsetSeconds = Math.max(fromSeconds, Math.min(wanted, toSeconds - length));
  return { onsetSeconds, offsetSeconds: Math.min(toSeconds, onsetSeconds + length), midi };
}

/** @returns null where the verb needs a note and none is chosen; whether it fits is found when it is applied */
export function editOf(
  verb: EditVerb,
  notes: readonly CorrectedNote[],
  index: number,
  place: EditPlace,
): Edit | null {
  if (verb === 'add') return addedAfter(notes, index, place);
  const one = notes[index];
  if (one === undefined) return null;
  const { note } = one;
  const of = { onsetSeconds: note.onsetSeconds, midi: note.midi };
  const moved = (by: { onsetSeconds: number; offsetSeconds: number }): Edit => {
    const { midi, ...stretch } = draggedNote(notes, index, { ...by, semitones: 0 }, place.durationSeconds);
    return {
      correction: { kind: 'move', of, ...stretch },
      follow: { onsetSeconds: stretch.onsetSeconds, midi },
    };
  };
  const pitched = (midi: number): Edit => ({
    correction: { kind: 'pitch', of, midi },
    follow: { ...of, midi },
  });
  switch (verb) {
    case 'up':
      return pitched(Math.min(127, note.midi + 1));
    case 'down':
      return pitched(Math.max(0, note.midi - 1));
    case 'earlier':
      return moved({ onsetSeconds: -STEP_SECONDS, offsetSeconds: -STEP_SECONDS });
    case 'later':
      return moved({ onsetSeconds: STEP_SECONDS, offsetSeconds: STEP_SECONDS });
    case 'shorter':
      return moved({ onsetSeconds: 0, offsetSeconds: -STEP_SECONDS });
    case 'longer':
      return moved({ onsetSeconds: 0, offsetSeconds: STEP_SECONDS });
    case 'split':
      return { correction: { kind: 'split', of, atSeconds: splitPlace(note, place.atSeconds) }, follow: of };
    case 'join':
      return { correction: { kind: 'join', of }, follow: of };
    case 'delete': {
      const next = (notes[index + 1] ?? notes[index - 1])?.note;
      const follow = next === undefined ? null : { onsetSeconds: next.onsetSeconds, midi: next.midi };
      return { correction: { kind: 'delete', of }, follow };
    }
  }
}

/** Where the playback stands, if that is well inside the note; else its middle. */
function splitPlace({ onsetSeconds, offsetSeconds }: Stretch, atSeconds: number): number {
  const inside =
    atSeconds >= onsetSeconds + LEAST_NOTE_SECONDS && atSeconds <= offsetSeconds - LEAST_NOTE_SECONDS;
  return inside ? atSeconds : (onsetSeconds + offsetSeconds) / 2;
}

const FIRST_PITCH = 60;

/** In the rest where the playback stands, or else in the one after the chosen note, half a beat long or as long as the rest. */
function addedAfter(
  notes: readonly CorrectedNote[],
  index: number,
  { atSeconds, beatSeconds, durationSeconds, referenceHz }: EditPlace,
): Edit {
  const lengthAt = (seconds: number) => {
    const next = Math.min(
      durationSeconds,
      ...notes.filter(({ note }) => note.offsetSeconds > seconds + 1e-6).map(({ note }) => note.onsetSeconds),
    );
    return Math.min(next - seconds, beatSeconds / 2);
  };
  const chosen = notes[index]?.note;
  const after = chosen?.offsetSeconds ?? 0;
  const here = atSeconds > 0 && lengthAt(atSeconds) >= LEAST_NOTE_SECONDS;
  const onsetSeconds = here || chosen === undefined ? atSeconds : after;
  // The added note is in tune at the reference of the take.
  const nearest = nameNote(chosen?.midi ?? FIRST_PITCH, referenceHz).nearestMidi;
  const midi = nearest + centsAboveStandard(referenceHz) / 100;
  const offsetSeconds = onsetSeconds + Math.max(0, lengthAt(onsetSeconds));
  return {
    correction: { kind: 'add', onsetSeconds, offsetSeconds, midi },
    follow: { onsetSeconds, midi },
  };
}
