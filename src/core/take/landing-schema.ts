/** What became of each change of chord, and of the changes taken together. */
import * as v from 'valibot';
import { functionSchema, roleSchema } from './note-schema.ts';
import { count, finite, noteIndex, whole } from './share-schema.ts';

export const landingSchema = v.object({
  /** Of the change. */
  beat: finite,
  seconds: finite,
  bar: whole,
  chorus: whole,
  /** Beat of the bar, from 0, at which the chord arrives. */
  beatOfBar: finite,
  /** The chord before, null at the start and after N.C. */
  fromChord: v.nullable(v.string()),
  chord: v.string(),
  /** Struck for the new chord, held over into it, or a rest. */
  kind: v.picklist(['landing', 'held', 'open']),
  note: v.nullable(noteIndex),
  /** Against the new chord, also where the note was held over. */
  degree: v.nullable(v.string()),
  role: v.nullable(roleSchema),
  cents: v.nullable(finite),
  /** Early is negative; null where the note was held over, and where there is none. */
  offsetMs: v.nullable(finite),
  /** Whether it came early by about the eighth, as an anticipation: no fault in time. */
  anticipates: v.boolean(),
  /** From the note before, in semitones; null where none comes before it in the phrase. */
  stepSemitones: v.nullable(whole),
  /** A guide tone of the old chord that moved by a half or whole step into one of the new, or stayed as one. */
  guideTone: v.nullable(
    v.object({ from: v.string(), to: v.string(), semitones: whole, kind: v.picklist(['resolved', 'kept']) }),
  ),
  /** The note into which a landing on the b3 leans, when it goes on to the 3. */
  leansInto: v.nullable(noteIndex),
  /**
   * Where a landing on no chord tone is put right: the chord tone that the line reaches by step within the same chord,
   * and how many beats after the landing.
   */
  putRight: v.nullable(v.object({ note: noteIndex, beats: finite })),
  /** What a held note that does not fit the new chord does. */
  function: v.nullable(functionSchema),
});

/** One change of the form over all its choruses. */
export const changeSchema = v.object({
  /** Bar of the form, from 0; null where changes are gathered by chord alone. */
  bar: v.nullable(whole),
  beatOfBar: v.nullable(finite),
  chord: v.string(),
  /** All its arrivals, the open ones among them. */
  count,
  open: count,
  thirds: count,
  chordTones: count,
  /** Over the arrivals that were not open; "seldom" says that two are needed before a habit is named. */
  habit: v.picklist(['always the third', 'always a chord tone', 'never a chord tone', 'mixed', 'seldom']),
});

export const changesSchema = v.object({
  byBar: v.array(changeSchema),
  byChord: v.array(changeSchema),
  guideTones: v.object({ changes: count, resolved: count, kept: count }),
});

export const phraseSchema = v.object({
  firstNote: noteIndex,
  lastNote: noteIndex,
  startBeat: finite,
  endBeat: finite,
  /** Chord, degree and role of its last note. */
  chord: v.nullable(v.string()),
  degree: v.nullable(v.string()),
  role: v.nullable(roleSchema),
});
