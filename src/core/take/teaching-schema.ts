/** What a teacher would say of the take, as codes and numbers: thirds, palette, time, aims, advice. */
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
  /** b3s that are clearly sharp, between the two thirds. */
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
  /** Whether the whole take lies early or late. */
  verdict: v.picklist(['ahead', 'behind', 'on the beat', 'too short to tell']),
});

/** All of the take lies so early or late that its delay must be wrong. */
export const suspectedDelaySchema = v.object({
  /** Median of the notes on the beats against them; late is positive. */
  ms: finite,
  /** Standard deviation. */
  spreadMs: finite,
  /** How many notes lie on the beats when all are moved by `ms`. */
  notes: count,
  /** Whether no other shift fits as well; where one does, a new measurement decides. */
  isOnlyOne: v.boolean(),
});

/** The events that an aim may count. */
export const aimEventsSchema = v.picklist([
  'landings',
  'phrase ends',
  'strong beats',
  'notes',
  'flat thirds',
  'changes',
  'bars',
  'choruses',
]);

export const aimResultSchema = v.object({
  /** Of the house's ladder, whose words the catalogue has, or of a teacher's file. */
  id: v.string(),
  /** The words of a teacher's file; null for an aim of the house. */
  own: v.nullable(v.object({ name: v.string(), task: v.string() })),
  /** Tried for in this take, or only measured. */
  tried: v.boolean(),
  verdict: v.picklist(['reached', 'not yet', 'too short to tell', 'not in this chart']),
  /** What was counted. */
  events: aimEventsSchema,
  /** Degrees of the key whose chords counted; null where every chord did. */
  over: v.nullable(v.array(v.string())),
  shareToReach: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
  leastEvents: count,
  /** Whether the share also had to be more than luck. */
  againstLuck: v.boolean(),
  result: shareSchema,
  /** The harder aim that was reached and shows this one by itself; null where none does. */
  coveredBy: v.nullable(v.string()),
  /**
   * Why it is not reached: too few events, the share, luck that may give as much, or a tone to keep off that the take
   * does not use elsewhere. null where it is reached or not in this chart.
   */
  missing: v.nullable(v.picklist(['events', 'share', 'luck', 'use elsewhere'])),
});

/** The aim to take next: the id of one of `aims`. */
export const nextAimSchema = v.object({ id: v.string() });

/** Where a tone lies on the instrument: a string and a fret of the neck, or the name that is written for it. */
export const whereSchema = v.variant('kind', [
  /** Strings count from the highest; the fret is the capo's where the string is open. */
  v.object({ kind: v.literal('neck'), string: count, fret: count, open: v.boolean() }),
  v.object({ kind: v.literal('written'), name: v.string() }),
]);

export const adviceSchema = v.object({
  /** What could be better: a landing on no chord tone, the key's third over the IV, and so on. */
  fault: v.picklist(['landing', 'third over four', 'phrase end', 'hanging b3', 'third near']),
  /** Whether the note was held over the change rather than struck for it. */
  held: v.boolean(),
  /** Bars of the form, from 0. */
  bars: v.array(whole),
  /** The notes it is about. */
  notes: v.array(noteIndex),
  chord: v.string(),
  /** What was played there. */
  played: v.object({ name: v.string(), degree: v.string() }),
  /** The note that the step to the resolution starts from: the one played, or the one before it. */
  from: v.object({ name: v.string(), degree: v.string() }),
  /** The nearest tone that would have resolved; semitones up are positive. */
  resolve: v.object({ name: v.string(), degree: v.string(), semitones: whole, midi: whole }),
  /** Where that lies on the instrument, nearest the hand; null where the instrument has no such places. */
  where: v.nullable(whereSchema),
});

/** Rests and phrases. */
export const spaceSchema = v.object({
  /** Of the take from the first downbeat to the last note; a silence of half a beat is a rest. */
  restShare: portion,
  phrases: count,
  medianPhraseBars: v.nullable(finite),
  /** The longest stretch with no rest in it. */
  longestRunBars: v.nullable(finite),
  /** Where in the bar most phrases start, from 0, to halves of a beat. */
  starts: v.nullable(v.object({ beatOfBar: finite, count })),
});

/** From where the landings on chord tones were reached. */
export const approachSchema = v.object({
  landings: count,
  halfBelow: count,
  halfAbove: count,
  wholeStep: count,
  enclosure: count,
  leap: count,
  sameNote: count,
});

/** A run of notes that came back. */
export const figureSchema = v.object({
  /** In notes. */
  length: count,
  /** The index of its first note, once for each time that it is played. */
  starts: v.array(noteIndex),
  /** Of the times after the first: at another place of the bar, in another octave, ending over another chord. */
  movedInBar: count,
  otherOctave: count,
  otherChord: count,
  /** All but the last note came, and another last note. */
  otherEnd: count,
});

/** Low and high, and the shapes of phrases of four notes or more. */
export const rangeSchema = v.object({
  lowestNote: v.nullable(noteIndex),
  highestNote: v.nullable(noteIndex),
  semitones: v.nullable(whole),
  rising: count,
  falling: count,
  arched: count,
  level: count,
});

/** Loud notes on the strong beats or off them; no notes where the input has no levels. */
export const accentsSchema = v.object({
  strongNotes: count,
  otherNotes: count,
  /** Median level on the strong beats above that of the others. */
  differenceDb: v.nullable(finite),
});

/** Where the second eighth of a beat fell. */
export const swingSchema = v.object({
  pairs: count,
  /** Of the beat: 0.5 straight, 0.667 triplet; null where too few pairs were played. */
  share: v.nullable(finite),
});

/** The chart fits far better somewhere else: another key, or begun some beats earlier or later. */
export const suspectedSchema = v.object({
  what: v.picklist(['key', 'place']),
  /** How far up the chart would move; 0 for another place. */
  semitones: whole,
  /** How many beats later the chart would begin; 0 for another key. */
  beats: finite,
  /** The key's tonic there. */
  tonic: v.string(),
  /** Notes on chord tones as it is, and there. */
  shareHere: v.number(),
  shareThere: v.number(),
});
