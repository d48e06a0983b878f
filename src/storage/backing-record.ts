/** The shape of a recording of the player's own that is played in the band's place. */
import * as v from 'valibot';
import { risingBeats } from '../core/take/taken-backing.ts';

const text = v.string();
const seconds = v.pipe(v.number(), v.finite(), v.minValue(0));
const whole = v.pipe(v.number(), v.integer(), v.minValue(0));
const barNumber = v.pipe(v.number(), v.integer(), v.minValue(1));

export const BackingRecordSchema = v.object({
  id: text,
  title: text,
  fileName: text,
  durationSeconds: seconds,
  /** In our own text form, its meter among the headings. */
  chartText: text,
  /** In seconds of the recording at its own pace. */
  beats: risingBeats,
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
