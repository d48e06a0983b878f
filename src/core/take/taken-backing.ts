/** The recording that a take was played to, in the band's place, as it is kept with the take. */
import * as v from 'valibot';

const text = v.string();
const seconds = v.pipe(v.number(), v.finite(), v.minValue(0));
const barNumber = v.pipe(v.number(), v.integer(), v.minValue(1));

/** Seconds of beats, each behind the one before. */
export const risingBeats = v.pipe(
  v.array(seconds),
  v.check((beats) => beats.every((beat, i) => i === 0 || beat > beats[i - 1]!), 'rising beats'),
);

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
  beatSeconds: risingBeats,
  /** The bars that were chosen to go round; left out by earlier takes. */
  bars: v.exactOptional(v.nullable(v.object({ fromBar: barNumber, toBar: barNumber }))),
});
export type TakenBacking = Readonly<v.InferOutput<typeof TakenBackingSchema>>;
