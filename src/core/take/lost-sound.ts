/** Where sound was lost on its way into the take: silence in its place, and no note can be heard there. */
import * as v from 'valibot';
import { finite, whole } from './share-schema.ts';

/** A stretch that was not delivered, as the recorder counted it. */
export interface LostStretch {
  /** From the take's first sample. */
  readonly atSeconds: number;
  readonly seconds: number;
}

export const lostSchema = v.object({
  /** From the take's first sample. */
  atSeconds: finite,
  seconds: finite,
  /** From the first downbeat; negative in the count-in. */
  beat: finite,
  /** Of the chart, from 0, and how often it had gone round; null before the first downbeat. */
  bar: v.nullable(whole),
  chorus: v.nullable(whole),
});
export type LostSound = Readonly<v.InferOutput<typeof lostSchema>>;
