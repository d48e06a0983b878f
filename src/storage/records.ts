/** The shape of what is kept on this machine. Everything read back goes through these schemas. */
import * as v from 'valibot';
import type { PlayedMessage } from '../core/midi/played-notes.ts';
import { TakeDetailsSchema, type TakeDetails } from '../core/take/details-schema.ts';

const text = v.string();
const seconds = v.pipe(v.number(), v.finite());

const taken = { hits: v.number(), of: v.number() };

/** What is counted over many days, as core/practice/take-counts.ts has it. */
const TakeCountsSchema = v.object({
  aim: v.nullable(v.object({ id: text, goal: v.number(), ...taken })),
  changes: v.pipe(
    v.array(v.object({ from: v.nullable(text), to: text, bar: v.number(), ...taken })),
    v.readonly(),
  ),
  choruses: v.pipe(v.array(v.object(taken)), v.readonly()),
});

/** The counts of a report, kept with the take so that a list need not read every report. */
export const TakeSummarySchema = v.object({
  notes: v.number(),
  chordToneShare: v.nullable(v.number()),
  thirdShare: v.nullable(v.number()),
  landings: v.object({
    count: v.number(),
    open: v.number(),
    chordTones: v.number(),
    thirds: v.number(),
  }),
  /** Left out in takes that were stored by a version without the page over days. */
  counts: v.exactOptional(TakeCountsSchema),
});
export type TakeSummary = Readonly<v.InferOutput<typeof TakeSummarySchema>>;

export const TakeRecordSchema = v.object({
  id: v.pipe(text, v.regex(/^[\w-]+$/)),
  details: TakeDetailsSchema,
  /** false while it is being played, and still if the page was closed meanwhile. */
  finished: v.boolean(),
  /** Coming in from a file, and not yet whole: removed if the page is closed meanwhile. */
  arriving: v.exactOptional(v.boolean()),
  frames: v.pipe(v.number(), v.integer(), v.minValue(0)),
  summary: v.nullable(TakeSummarySchema),
});
export type TakeRecord = v.InferOutput<typeof TakeRecordSchema>;

export const ChartRecordSchema = v.object({
  id: text,
  title: text,
  chartText: text,
  key: text,
});
export type ChartRecord = Readonly<v.InferOutput<typeof ChartRecordSchema>>;

export type TakeId = string;

/** A row of the list of takes. */
export interface TakeCard extends TakeDetails {
  readonly id: TakeId;
  readonly durationSeconds: number;
  readonly summary: TakeSummary | null;
}

/** A take whose page was closed, or whose machine stopped, while it was being played. */
export interface UnfinishedTake {
  readonly id: TakeId;
  readonly details: TakeDetails;
  readonly durationSeconds: number;
}

/** What a MIDI instrument sent, some of it; the records of one take follow one another. */
export const MessagesSchema = v.array(v.object({ seconds, bytes: v.array(v.number()) }));

/** A take as it is stored. `report` is not yet checked by its schema. */
export interface StoredTake {
  readonly id: TakeId;
  readonly details: TakeDetails;
  /** Mono, 16-bit; empty for a take played by MIDI. */
  readonly samples: Int16Array;
  /** What the band played on the same frames; null where it is not kept. */
  readonly band: Int16Array | null;
  /** What a MIDI instrument sent; null for a take that was heard. */
  readonly messages: readonly PlayedMessage[] | null;
  readonly durationSeconds: number;
  readonly report: unknown;
}
