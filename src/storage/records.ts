/** The shape of what is kept on this machine. Everything read back goes through these schemas. */
import * as v from 'valibot';
import { feelNames } from '../core/chart/feel-names.ts';
import type { PlayedMessage } from '../core/midi/played-notes.ts';
import { TakenBackingSchema } from './backing-record.ts';

const text = v.string();
const seconds = v.pipe(v.number(), v.finite());
const level = seconds;
const bars = v.pipe(v.number(), v.integer(), v.minValue(1));

/** What is known about a take besides its sound: written when it begins, so that a cut-off one can be graded. */
export const TakeDetailsSchema = v.object({
  /** Of what was played: of the form, the chart, or the file. */
  title: text,
  /** What the player calls the take; left out, or empty, where it has no name of its own. */
  name: v.exactOptional(text),
  starred: v.exactOptional(v.boolean()),
  /** The settings that it was played with, each read by its own schema; earlier takes have none. */
  setup: v.exactOptional(v.record(text, v.unknown())),
  /** ISO 8601. */
  startedAt: v.pipe(text, v.isoTimestamp()),
  source: v.picklist(['microphone', 'midi', 'recording', 'demo']),
  /** The chart in our own text form, already in its key. */
  chartText: text,
  /** "Bb", "A minor". */
  key: text,
  bpm: v.pipe(v.number(), v.minValue(1)),
  feel: v.picklist(feelNames),
  /** Share of the beat that the first eighth takes. */
  swing: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
  /** A4 in Hz, or estimated from the playing. */
  reference: v.union([v.pipe(v.number(), v.minValue(1)), v.literal('auto')]),
  sampleRate: v.pipe(v.number(), v.integer(), v.minValue(1)),
  /** Where the first downbeat lies, from the first sample, round trip included; null until it is known. */
  firstBeatSeconds: v.nullable(seconds),
  /** Ids of instrument and aim; takes from before these were stored have neither. */
  instrument: v.exactOptional(text),
  capo: v.exactOptional(v.number()),
  aim: v.exactOptional(text),
  /** How the band was asked to play, as `BandSettings` has it. */
  chordsRest: v.exactOptional(v.boolean()),
  backbeatClick: v.exactOptional(v.boolean()),
  rise: v.exactOptional(v.object({ byBpm: seconds, everyBars: bars })),
  trade: v.exactOptional(v.object({ bars, aim: text })),
  drone: v.exactOptional(
    v.object({
      tones: v.picklist(['root', 'root and fifth']),
      semitones: v.pipe(v.array(v.number()), v.readonly()),
    }),
  ),
  /** The band's levels as they stood at the end, in dB. */
  levels: v.exactOptional(
    v.object({
      all: level,
      drums: level,
      bass: level,
      chords: level,
      line: v.optional(level, 0),
      click: level,
    }),
  ),
  /** Whether what the band played is kept beside the sound; left out where it did not come back, or nobody kept it. */
  bandKept: v.exactOptional(v.boolean()),
  /** The round trip in the first downbeat, where nobody had measured it. */
  assumedRoundTripSeconds: v.exactOptional(seconds),
  /** How the band came back through the microphone, as a sound check had measured it. */
  path: v.exactOptional(v.object({ heldBackSamples: seconds, taps: v.instance(Float32Array) })),
  /** The recording that was played to; left out where the band played. */
  backing: v.exactOptional(TakenBackingSchema),
  /** A line that was written down: it has no sound, its notes are kept with its report. */
  written: v.exactOptional(v.boolean()),
  /** Where the browser lost sound, in order. */
  lost: v.exactOptional(v.array(v.object({ atSeconds: seconds, seconds }))),
  /** What the player has said of single notes, by their onset and sounding pitch; left out where nothing was said. */
  noteChoices: v.exactOptional(
    v.pipe(
      v.array(v.object({ onsetSeconds: seconds, midi: v.pipe(v.number(), v.finite()), counts: v.boolean() })),
      v.readonly(),
    ),
  ),
});
export type TakeDetails = Readonly<v.InferOutput<typeof TakeDetailsSchema>>;

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
  /** Takes from before there was a page over days have none. */
  counts: v.exactOptional(TakeCountsSchema),
});
export type TakeSummary = Readonly<v.InferOutput<typeof TakeSummarySchema>>;

export const TakeRecordSchema = v.object({
  id: v.pipe(text, v.regex(/^[\w-]+$/)),
  details: TakeDetailsSchema,
  /** false while it is being played, and still if the page was closed meanwhile. */
  finished: v.boolean(),
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
