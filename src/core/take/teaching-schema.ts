/** What a teacher would say of the take: thirds, palette, time, aims, advice. */
import * as v from 'valibot';
import { count, finite, noteIndex, portion, shareSchema, whole } from './share-schema.ts';

const seconds = v.pipe(v.number(), v.minValue(0));

export const leanSchema = v.object({
  from: noteIndex,
  to: noteIndex,
  how: v.picklist(['slid', 'hammered', 'bent', 'picked']),
  beats: finite,
});

/** Over chords with a major third. */
export const thirdsSchema = v.object({
  notes: count,
  flatThirds: count,
  thirds: count,
  /** b3 to 3 within half a beat. */
  leans: v.array(leanSchema),
  /** 3 to b3 within half a beat. */
  falls: v.array(leanSchema),
  /** b3 that went neither to the 3 nor on by step to another chord tone. */
  leftHanging: v.array(noteIndex),
  /** Where the b3s lie against equal temperament at the reference: a blue third stands sharp. */
  flatThirdCents: v.nullable(finite),
  /** b3s that lie well sharp, between the two thirds. */
  blueNotes: v.array(v.object({ note: noteIndex, cents: finite })),
});

export const mixtureSchema = v.object({
  seconds,
  minorOnly: portion,
  majorOnly: portion,
  both: portion,
  neither: portion,
});

export const paletteSchema = v.object({
  overall: mixtureSchema,
  byChord: v.array(v.object({ chord: v.string(), degree: v.string(), mixture: mixtureSchema })),
  /** The key's major third sounding over the IV, where it is not in the chord. */
  thirdOverFour: v.object({
    notes: v.array(noteIndex),
    seconds,
    /** What it is there: "7"; null where it never sounded. */
    degree: v.nullable(v.string()),
  }),
});

export const timingSchema = v.object({
  /** Notes near a beat. */
  notes: count,
  medianMs: v.nullable(finite),
  spreadMs: v.nullable(finite),
  /** Said once, when the whole take lies early or late. */
  sentence: v.nullable(v.string()),
});

export const aimResultSchema = v.object({
  id: v.string(),
  name: v.string(),
  task: v.string(),
  /** Tried for in this take, or only measured. */
  tried: v.boolean(),
  verdict: v.picklist(['reached', 'not yet', 'too short to tell', 'not in this chart']),
  shareToReach: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
  leastEvents: count,
  result: shareSchema,
  evidence: v.string(),
});

export const nextAimSchema = v.object({
  id: v.string(),
  name: v.string(),
  task: v.string(),
  because: v.string(),
});

export const adviceSchema = v.object({
  /** Bars of the form, from 0. */
  bars: v.array(whole),
  /** The notes it speaks of. */
  notes: v.array(noteIndex),
  chord: v.string(),
  /** What was played there. */
  played: v.object({ name: v.string(), degree: v.string() }),
  /** The nearest tone that would have resolved; semitones up are positive. */
  resolve: v.object({ name: v.string(), degree: v.string(), semitones: whole, midi: whole }),
  /** Where that lies on the instrument, nearest the hand; null where the instrument has no such places. */
  where: v.nullable(v.string()),
  sentence: v.string(),
});
