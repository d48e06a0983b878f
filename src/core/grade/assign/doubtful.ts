/**
 * Which notes count. A note that the listener is not sure of stays in the report and counts in no share, unless the player
 * has said that it was played; a note that the player has taken out counts no more, however sure it was.
 */
import type { HeardNote } from '../../take/note.ts';

/** From this confidence on a note is more likely right than wrong. */
const LEAST_CONFIDENCE = 0.5;

/** Whether the listener is sure enough of a note for it to count where the player has said nothing of it. */
export const isSure = (note: HeardNote): boolean => note.confidence >= LEAST_CONFIDENCE;

/** What the player has said of one note. It is found again by its onset and pitch, since grading has no other names for notes. */
export interface NoteChoice {
  readonly onsetSeconds: number;
  /** Sounding, fractional, as it was heard. */
  readonly midi: number;
  readonly counts: boolean;
}

/** A note heard again from the same sound may move by this much; two notes of a line lie further apart. */
const SAME_ONSET_SECONDS = 0.02;
const SAME_SEMITONES = 0.5;

export interface CountedNotes {
  readonly counted: readonly HeardNote[];
  /** Those that count in no share, in order, each with what the player has said of it; null where nothing was said. */
  readonly doubtful: readonly { readonly heard: HeardNote; readonly chosen: boolean | null }[];
}

/**
 * @example countedNotes([{ …note, confidence: 0.3 }], []) // { counted: [], doubtful: [{ heard, chosen: null }] }
 */
export function countedNotes(heard: readonly HeardNote[], choices: readonly NoteChoice[]): CountedNotes {
  const counted: HeardNote[] = [];
  const doubtful: { heard: HeardNote; chosen: boolean | null }[] = [];
  for (const note of heard) {
    const chosen = choiceOf(note, choices);
    if (chosen ?? isSure(note)) counted.push(note);
    else doubtful.push({ heard: note, chosen });
  }
  return { counted, doubtful };
}

type NotePlace = Pick<HeardNote, 'onsetSeconds' | 'midi'>;

const isSameNote = (a: NotePlace, b: NotePlace): boolean =>
  Math.abs(a.onsetSeconds - b.onsetSeconds) <= SAME_ONSET_SECONDS &&
  Math.abs(a.midi - b.midi) <= SAME_SEMITONES;

/** The last that was said of a note, or null. */
export const choiceOf = (note: NotePlace, choices: readonly NoteChoice[]): boolean | null =>
  choices.findLast((choice) => isSameNote(choice, note))?.counts ?? null;

/**
 * The choices after one more.
 * @param note sounding, as it was heard
 * @param counts null takes back what was said of the note: it counts as it was heard
 */
export const withChoice = (
  choices: readonly NoteChoice[],
  { onsetSeconds, midi }: NotePlace,
  counts: boolean | null,
): readonly NoteChoice[] => [
  ...choices.filter((choice) => !isSameNote(choice, { onsetSeconds, midi })),
  ...(counts === null ? [] : [{ onsetSeconds, midi, counts }]),
];
