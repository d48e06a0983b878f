/**
 * What a player corrects of the notes that were heard, as plain values. They are applied in order, and each names its
 * note by onset and pitch as it stands after those before it: such a name still finds its note where the sound is heard
 * anew and other notes come or go, which a number in a list would not.
 */
import * as v from 'valibot';

/** No take is longer than a day. */
const MOST_SECONDS = 86_400;
const HIGHEST_MIDI = 127;
/** More are refused: nobody corrects so much by hand, and each is looked at whenever the take is graded. */
export const MOST_CORRECTIONS = 2000;
/** No correction makes a note shorter than this: a sixteenth at 300 bpm. A note that was heard shorter may stay so. */
export const LEAST_NOTE_SECONDS = 0.05;

const seconds = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(MOST_SECONDS));
/** Sounding, fractional, against A4 = 440 Hz. */
const midi = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(HIGHEST_MIDI));
/** The name of a note. */
const of = v.object({ onsetSeconds: seconds, midi });

export const correctionSchema = v.variant('kind', [
  /** The note was not played. */
  v.object({ kind: v.literal('delete'), of }),
  /** The note begins and ends here. */
  v.object({ kind: v.literal('move'), of, onsetSeconds: seconds, offsetSeconds: seconds }),
  /** The note is two, and the second begins here. */
  v.object({ kind: v.literal('split'), of, atSeconds: seconds }),
  /** The note and the next one are one, at the pitch of the first. */
  v.object({ kind: v.literal('join'), of }),
  /** A note that was not heard. */
  v.object({ kind: v.literal('add'), onsetSeconds: seconds, offsetSeconds: seconds, midi }),
  v.object({ kind: v.literal('pitch'), of, midi }),
  /** The note counts, or does not; null takes back what was said of it. */
  v.object({ kind: v.literal('count'), of, counts: v.nullable(v.boolean()) }),
]);

export const correctionsSchema = v.pipe(
  v.array(correctionSchema),
  v.maxLength(MOST_CORRECTIONS),
  v.readonly(),
);

type Frozen<T> = T extends object ? { readonly [Key in keyof T]: Frozen<T[Key]> } : T;
export type Correction = Frozen<v.InferOutput<typeof correctionSchema>>;

/** The name of a note: where it stands now. */
export interface NotePlace {
  readonly onsetSeconds: number;
  /** Sounding, fractional. */
  readonly midi: number;
}

/** What was said of one note before there were other corrections than this. */
interface NoteChoice extends NotePlace {
  readonly counts: boolean;
}

/** What the player has corrected of the notes of a take. Earlier takes have choices of which notes count instead. */
export const correctionsOf = ({
  corrections,
  noteChoices = [],
}: {
  readonly corrections?: readonly Correction[];
  readonly noteChoices?: readonly NoteChoice[];
}): readonly Correction[] => corrections ?? countCorrections(noteChoices);

/** The choices of an earlier take as corrections; of those about one note the last held, and does so still. */
export const countCorrections = (choices: readonly NoteChoice[]): readonly Correction[] =>
  choices.map(({ counts, onsetSeconds, midi: pitch }) => ({
    kind: 'count',
    of: { onsetSeconds, midi: pitch },
    counts,
  }));
