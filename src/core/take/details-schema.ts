/**
 * What is known about a take besides its sound and its report: kept on this machine, and written into the file that a take
 * leaves as.
 */
import * as v from 'valibot';
import { FASTEST_BPM, SLOWEST_BPM, STRAIGHT_SWING, WIDEST_SWING } from '../chart/chart.ts';
import { feelNames } from '../chart/feel-names.ts';
import { parseKey } from '../music/keys.ts';
import { TakenBackingSchema } from './taken-backing.ts';
import { correctionsSchema } from './correction.ts';

const text = v.string();
const seconds = v.pipe(v.number(), v.finite());
const level = seconds;
/** Any tuning that anybody has played in lies far within. */
const MOST_REFERENCE_HZ = 10_000;
/** A rise of nothing is none. */
const LEAST_RISE_BPM = 0.01;
const bars = v.pipe(v.number(), v.integer(), v.minValue(1));

/** Every field but the path, whose taps are kept as typed numbers here and listed in a file. */
const fields = {
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
  bpm: v.pipe(v.number(), v.minValue(SLOWEST_BPM), v.maxValue(FASTEST_BPM)),
  feel: v.picklist(feelNames),
  /** Share of the beat that the first eighth takes. */
  swing: v.pipe(v.number(), v.minValue(STRAIGHT_SWING), v.maxValue(WIDEST_SWING)),
  /** A4 in Hz, or estimated from the playing. */
  reference: v.union([v.pipe(v.number(), v.minValue(1), v.maxValue(MOST_REFERENCE_HZ)), v.literal('auto')]),
  sampleRate: v.pipe(v.number(), v.integer(), v.minValue(1)),
  /** Where the first downbeat lies, from the first sample, round trip included; null until it is known. */
  firstBeatSeconds: v.nullable(seconds),
  /** Ids of instrument and aim; takes from before these were stored have neither. */
  instrument: v.exactOptional(text),
  capo: v.exactOptional(v.pipe(v.number(), v.finite())),
  aim: v.exactOptional(text),
  /** How the band was asked to play, as `BandSettings` has it. */
  chordsRest: v.exactOptional(v.boolean()),
  backbeatClick: v.exactOptional(v.boolean()),
  rise: v.exactOptional(
    v.object({
      byBpm: v.pipe(v.number(), v.minValue(LEAST_RISE_BPM), v.maxValue(FASTEST_BPM)),
      everyBars: bars,
    }),
  ),
  trade: v.exactOptional(v.object({ bars, aim: text })),
  drone: v.exactOptional(
    v.object({
      tones: v.picklist(['root', 'root and fifth']),
      semitones: v.pipe(v.array(v.pipe(v.number(), v.finite())), v.readonly()),
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
  /**
   * The lesson sheet that it was played for: the mark of the sheet, the student's name, which try it was, from 1, and the
   * sheet as its file has it, read by its own schema (`core/lesson/sheet.ts`).
   */
  lesson: v.exactOptional(
    v.object({
      mark: text,
      title: text,
      student: text,
      tryNumber: v.pipe(v.number(), v.integer(), v.minValue(1)),
      sheet: v.exactOptional(v.record(text, v.unknown())),
    }),
  ),
  /** What the teacher answered, as the answer's file has it, read by its own schema (`core/lesson/answer.ts`). */
  answer: v.exactOptional(v.record(text, v.unknown())),
  /** The round trip in the first downbeat, where nobody had measured it. */
  assumedRoundTripSeconds: v.exactOptional(seconds),
  /** The recording that was played to; left out where the band played. */
  backing: v.exactOptional(TakenBackingSchema),
  /** A line that was written down: it has no sound, its notes are kept with its report. */
  written: v.exactOptional(v.boolean()),
  /** The player has removed the sound to make room; the notes that were heard are kept with the report. */
  soundRemoved: v.exactOptional(v.boolean()),
  /** Where the browser lost sound, in order. */
  lost: v.exactOptional(v.array(v.object({ atSeconds: seconds, seconds }))),
  /** What the player has corrected of the notes, in order; left out where nothing was corrected. */
  corrections: v.exactOptional(correctionsSchema),
  /** What the player of an earlier take has said of single notes. It is read where there are no corrections. */
  noteChoices: v.exactOptional(
    v.pipe(
      v.array(v.object({ onsetSeconds: seconds, midi: v.pipe(v.number(), v.finite()), counts: v.boolean() })),
      v.readonly(),
    ),
  ),
};

/** How the band came back through the microphone, as a sound check had measured it. */
const pathOf = <Taps extends v.GenericSchema>(taps: Taps) =>
  v.exactOptional(v.object({ heldBackSamples: seconds, taps }));

/** Written when a take begins, so that a cut-off one can be graded. */
export const TakeDetailsSchema = v.object({ ...fields, path: pathOf(v.instance(Float32Array)) });
export type TakeDetails = Readonly<v.InferOutput<typeof TakeDetailsSchema>>;

/** Characters; "B♭ minor" has eight. */
const LONGEST_KEY = 40;

/** How long a path may be: three seconds at the rate that rooms are measured at. */
const MOST_TAPS = 100_000;

/** The same as a file has it: the taps of the path as a list, and a rate that sound is recorded at. */
export const TakeDetailsInFileSchema = v.object({
  ...fields,
  /** Read as a key when the take is shown. */
  key: v.pipe(
    text,
    v.maxLength(LONGEST_KEY),
    v.check((key) => parseKey(key) !== null, 'a key, as "A minor"'),
  ),
  sampleRate: v.pipe(v.number(), v.integer(), v.minValue(4000), v.maxValue(384_000)),
  path: pathOf(v.pipe(v.array(seconds), v.maxLength(MOST_TAPS))),
});
