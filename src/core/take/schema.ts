/**
 * The report: one plain value that the command line prints, the app stores and draws, and a teacher's table reads.
 * It holds codes, numbers and names, and no sentence: core/report makes those from the catalogue of words. Its terms
 * are those of the definitions in the README. Numbers are finite; what is not known is null.
 */
import * as v from 'valibot';
import { bad, good, type Outcome } from '../base/outcome.ts';
import { unfitValue } from '../base/unfit-value.ts';
import { changesSchema, landingSchema, phraseSchema } from './landing-schema.ts';
import { lostSchema } from './lost-sound.ts';
import type { functionSchema, roleSchema } from './note-schema.ts';
import { correctionsSchema, doubtfulSchema, noteSchema } from './note-schema.ts';
import type { shareSchema, verdictSchema } from './share-schema.ts';
import { count, finite, portion, sharesSchema, whole } from './share-schema.ts';
import type { leanSchema, mixtureSchema } from './teaching-schema.ts';
import {
  accentsSchema,
  approachSchema,
  figureSchema,
  rangeSchema,
  spaceSchema,
  suspectedSchema,
  swingSchema,
  adviceSchema,
  aimResultSchema,
  nextAimSchema,
  paletteSchema,
  suspectedDelaySchema,
  thirdsSchema,
  timingSchema,
} from './teaching-schema.ts';

const sourceSchema = v.object({
  kind: v.picklist(['audio', 'notes', 'microphone']),
  durationSeconds: v.pipe(v.number(), v.finite(), v.minValue(0)),
  /** null for a list of notes. */
  sampleRate: v.nullable(finite),
  /** The backing that was taken out before listening; null where it was not heard, left out where none was given. */
  backing: v.exactOptional(
    v.nullable(v.object({ offsetSeconds: finite, driftPpm: finite, removedDb: finite })),
  ),
  /** Where the browser lost sound of a take, in order; left out where none was lost. */
  lost: v.exactOptional(v.array(lostSchema)),
});

const tuningSchema = v.object({
  referenceHz: finite,
  /** Of all notes, at the reference; null without notes. */
  medianCents: v.nullable(finite),
  /** Whether the reference was estimated from the take. */
  estimated: v.boolean(),
});

const spanSchema = v.object({
  startBeat: finite,
  endBeat: finite,
  startSeconds: finite,
  endSeconds: finite,
  chord: v.nullable(v.string()),
  bar: whole,
  chorus: whole,
});

const timelineSchema = v.object({
  bpm: v.nullable(finite),
  beatsPerBar: whole,
  bars: count,
  chart: v.string(),
  key: v.object({ tonic: v.string(), mode: v.picklist(['major', 'minor']) }),
  /** The keys that the chart went through, each from a bar on, from 0; key degrees count from them. Left out where it stayed. */
  keys: v.exactOptional(
    v.array(v.object({ fromBar: whole, tonic: v.string(), mode: v.picklist(['major', 'minor']) })),
  ),
  swing: finite,
  /** The tempo rose by so much after each so many bars; `bpm` is the first. Left out where it stayed. */
  rise: v.exactOptional(v.object({ byBpm: finite, everyBars: count })),
  /** Player and band took turns of so many bars, and only the player's are graded. Left out where nobody traded. */
  turnBars: v.exactOptional(count),
  /** Every stretch of one chord under the take, so that it can be drawn from the report alone. */
  spans: v.array(spanSchema),
});

const settingsSchema = v.object({
  anticipationBeats: finite,
  /** How inexact a note may be at a change; 0 where there is no anticipation. */
  toleranceMs: finite,
  /** How long after a change a note may still be its landing. */
  landingBeats: finite,
  /** A rest this long ends a phrase. */
  phraseGapBeats: finite,
  /** How soon a b3 must move on to count as a lean. */
  leanBeats: finite,
  palette: v.string(),
  instrument: v.nullable(v.string()),
});

const summarySchema = v.object({
  /** Notes under a chord: what the shares are shares of. */
  notes: count,
  chordToneShare: portion,
  thirdShare: portion,
  landings: v.object({ count, open: count, chordTones: count, thirds: count }),
  /** What the headline asks about landings: thirds, or guide tones where no chord of the chart has a third. */
  asked: v.picklist(['thirds', 'guideTones']),
});

export const reportSchema = v.object({
  format: v.literal('landfall-report'),
  version: v.literal(2),
  source: sourceSchema,
  tuning: tuningSchema,
  timeline: timelineSchema,
  settings: settingsSchema,
  notes: v.array(noteSchema),
  /** Notes that were heard and count in no share, in order. */
  doubtful: v.array(doubtfulSchema),
  /** What was corrected by hand; left out where all notes are as they were heard. */
  corrections: v.exactOptional(correctionsSchema),
  landings: v.array(landingSchema),
  phrases: v.array(phraseSchema),
  summary: summarySchema,
  shares: v.object({
    landings: sharesSchema,
    phraseEnds: sharesSchema,
    strongBeats: sharesSchema,
    allNotes: sharesSchema,
    byLength: sharesSchema,
  }),
  changes: changesSchema,
  thirds: thirdsSchema,
  palette: paletteSchema,
  timing: timingSchema,
  /** null where the notes lie as players' do, or keep no time by which it could be told. */
  suspectedDelay: v.nullable(suspectedDelaySchema),
  aims: v.array(aimResultSchema),
  nextAim: v.nullable(nextAimSchema),
  advice: v.array(adviceSchema),
  space: spaceSchema,
  approach: approachSchema,
  figures: v.array(figureSchema),
  range: rangeSchema,
  accents: accentsSchema,
  swingPlayed: swingSchema,
  suspected: v.nullable(suspectedSchema),
});

type Frozen<T> = T extends (infer Item)[]
  ? readonly Frozen<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: Frozen<T[Key]> }
    : T;
type Of<Schema extends v.GenericSchema> = Frozen<v.InferOutput<Schema>>;

export type Report = Of<typeof reportSchema>;
export type ReportNote = Of<typeof noteSchema>;
export type DoubtfulNote = Of<typeof doubtfulSchema>;
export type Corrections = Of<typeof correctionsSchema>;
export type Landing = Of<typeof landingSchema>;
export type Phrase = Of<typeof phraseSchema>;
export type Role = Of<typeof roleSchema>;
export type NoteFunction = Of<typeof functionSchema>;
export type Share = Of<typeof shareSchema>;
export type Shares = Of<typeof sharesSchema>;
export type Verdict = Of<typeof verdictSchema>;
export type Changes = Of<typeof changesSchema>;
export type Change = Changes['byBar'][number];
export type Lean = Of<typeof leanSchema>;
export type Thirds = Of<typeof thirdsSchema>;
export type Mixture = Of<typeof mixtureSchema>;
export type Palette = Of<typeof paletteSchema>;
export type Timing = Of<typeof timingSchema>;
export type SuspectedDelay = Of<typeof suspectedDelaySchema>;
export type AimResult = Of<typeof aimResultSchema>;
export type NextAim = Of<typeof nextAimSchema>;
export type Space = Of<typeof spaceSchema>;
export type Approach = Of<typeof approachSchema>;
export type Figure = Of<typeof figureSchema>;
export type Range = Of<typeof rangeSchema>;
export type Accents = Of<typeof accentsSchema>;
export type SwingPlayed = Of<typeof swingSchema>;
export type Suspected = Of<typeof suspectedSchema>;
export type Advice = Of<typeof adviceSchema>;

/**
 * Reads a report that comes from a file or a store.
 * Fields this version does not know are left out; a missing or wrong one is named in the problem.
 */
export function readReport(value: unknown): Outcome<Report> {
  const read = v.safeParse(reportSchema, value);
  if (read.success) return good(read.output);
  return bad('report.unreadable', unfitValue(read.issues[0]));
}
