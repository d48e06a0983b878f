/** One note of the report, named, graded and explained; and what was corrected by hand. */
import * as v from 'valibot';
import { count, finite, noteIndex, portion, whole } from './share-schema.ts';

const portionOfOne = v.pipe(v.number(), v.minValue(0), v.maxValue(1));

export const roleSchema = v.picklist([
  'root',
  'third',
  'fifth',
  'seventh',
  'extension',
  'colour',
  'blue',
  'outside',
]);

export const functionSchema = v.picklist([
  'passing',
  'neighbour',
  'approach',
  'enclosure',
  'appoggiatura',
  'escape',
  'suspension',
  'anticipation',
  'free',
]);

/** A note as it was heard, before it was corrected by hand. */
const heardPlaceSchema = v.object({ onsetSeconds: finite, offsetSeconds: finite, midi: finite });

const correctedSchema = v.object({
  /** How it differs from what was heard. `time`: its beginning or its end, or both. */
  changes: v.array(v.picklist(['time', 'pitch', 'split', 'joined', 'added'])),
  /** The notes that were heard and are this one now; none where it was added. */
  was: v.array(heardPlaceSchema),
});

/** What was corrected by hand in the take. */
export const correctionsSchema = v.object({
  /** Notes that are not as they were heard, those that were added or deleted among them. */
  notes: count,
  added: count,
  deleted: v.array(heardPlaceSchema),
  /** Corrections that no longer fit the notes, by the name of their note. */
  leftOut: v.array(
    v.object({
      kind: v.picklist(['delete', 'move', 'split', 'join', 'add', 'pitch', 'count']),
      why: v.picklist(['no note', 'no next note', 'too short', 'together', 'too many']),
      onsetSeconds: finite,
      midi: finite,
    }),
  ),
});

/** Where a note stands, and what it is called: of those that count and of those that don't. */
const namedNote = {
  onsetSeconds: finite,
  offsetSeconds: finite,
  /** Sounding pitch, fractional, against A4 = 440 Hz whatever the reference. */
  midi: finite,
  /** Nearest note at the reference: "F#4". */
  name: v.string(),
  /** From that note, at the reference. */
  cents: finite,
  /** The same note spelled by its chord or its key: "Gb4". */
  spelling: v.string(),
  /** From the chart's first downbeat. */
  beat: finite,
  endBeat: finite,
};

export const noteSchema = v.object({
  ...namedNote,
  /** Bar of the form, from 0, and how often the chart has gone round; null before the first downbeat. */
  bar: v.nullable(whole),
  chorus: v.nullable(whole),
  chord: v.nullable(v.string()),
  degree: v.nullable(v.string()),
  role: v.nullable(roleSchema),
  keyDegree: v.string(),
  /**
   * Which rule gave the note its chord: it stands where the note starts, or the note runs ahead to it, or it is so little
   * early that it is played on the change.
   */
  rule: v.picklist(['onset', 'anticipation', 'at change']),
  /** How far the note runs ahead of its chord, in beats; null where it does not. */
  aheadBeats: v.nullable(finite),
  /** What a tone outside the chord does; null for chord tones and where there is no chord. */
  function: v.nullable(functionSchema),
  /** The notes that make it so, in order. */
  functionNotes: v.array(noteIndex),
  /** Early (negative) or late against the nearest eighth of the feel. */
  offGridMs: v.nullable(finite),
  /** Parncutt's durational accent, 0 to 1. */
  weight: portion,
  strongBeat: v.boolean(),
  /** Its phrase, and whether it ends it. */
  phrase: whole,
  phraseEnd: v.boolean(),
  attack: v.picklist(['struck', 'legato']),
  bendSemitones: finite,
  vibrato: v.nullable(v.object({ rateHz: finite, depthCents: finite })),
  /** A second note that surely sounds with it: "E4"; null where none does. */
  second: v.nullable(v.string()),
  /** How sure the listener is that this note was played so: of notes at 0.8 eight in ten are right. 1 for notes that came as a list. */
  confidence: portionOfOne,
  /** The player has said that it counts. */
  chosen: v.boolean(),
  /** Left out where the note is as it was heard. */
  corrected: v.exactOptional(correctedSchema),
});

/** A note that counts in no share: the listener is not sure of it, or the player has taken it out. */
export const doubtfulSchema = v.object({
  ...namedNote,
  chord: v.nullable(v.string()),
  degree: v.nullable(v.string()),
  role: v.nullable(roleSchema),
  confidence: portionOfOne,
  /** Whether the player has taken it out; the others are doubtful by themselves. */
  takenOut: v.boolean(),
  corrected: v.exactOptional(correctedSchema),
});
