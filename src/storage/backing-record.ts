/** The shape of a recording of the player's own that is played in the band's place. */
import * as v from 'valibot';

const text = v.string();
const seconds = v.pipe(v.number(), v.finite(), v.minValue(0));
const whole = v.pipe(v.number(), v.integer(), v.minValue(0));
const rising = v.pipe(
  v.array(seconds),
  v.check((beats) => beats.every((beat, i) => i === 0 || beat > beats[i - 1]!), 'rising beats'),
);
const barNumber = v.pipe(v.number(), v.integer(), v.minValue(1));

export const BackingRecordSchema = v.object({
  id: text,
  title: text,
  fileName: text,
  durationSeconds: seconds,
  /** In our own text form, its meter among the headings. */
  chartText: text,
  /** In seconds of the recording at its own pace. */
  beats: rising,
  /** Indices of beats that were set by hand. */
  pinned: v.array(whole),
  /** Index of the first beat of bar 1. */
  downbeat: whole,
  /** Share of the beat that the first eighth takes. */
  swing: v.pipe(v.number(), v.minValue(0.5), v.maxValue(0.75)),
  /** A4 of the recording as it is, in Hz. */
  referenceHz: v.pipe(v.number(), v.minValue(380), v.maxValue(480)),
  /** How it is played: 1 as recorded, 0.5 half as fast; cents above 0 higher. */
  speed: v.pipe(v.number(), v.minValue(0.5), v.maxValue(1)),
  cents: v.pipe(v.number(), v.minValue(-100), v.maxValue(100)),
  /** Bars that are gone round; null: as many whole choruses as there are. */
  bars: v.nullable(v.object({ fromBar: barNumber, toBar: barNumber })),
});
export type BackingRecord = Readonly<v.InferOutput<typeof BackingRecordSchema>>;

/** The recording that a take was played to, so that it can be graded and heard again as it was. */
export const TakenBackingSchema = v.object({
  id: text,
  title: text,
  speed: v.pipe(v.number(), v.minValue(0.5), v.maxValue(1)),
  cents: v.pipe(v.number(), v.minValue(-100), v.maxValue(100)),
  /** The part that went round, in seconds of the recording at its own pace. */
  fromSeconds: seconds,
  toSeconds: seconds,
  /** Each beat of a round as it was played, from its first downbeat; the last is where it began again. */
  beatSeconds: rising,
  /** The bars that were chosen to go round; left out by earlier takes. */
  bars: v.exactOptional(v.nullable(v.object({ fromBar: barNumber, toBar: barNumber }))),
});
export type TakenBacking = Readonly<v.InferOutput<typeof TakenBackingSchema>>;
