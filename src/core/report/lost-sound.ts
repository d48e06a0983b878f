/** Where sound was lost on its way into the take: silence in its place, and no note can be heard there. */
import * as v from 'valibot';
import type { Timeline } from '../chart/timeline.ts';
import { finite, whole } from './share-schema.ts';

/** A stretch that was not delivered, as the recorder knows it. */
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

/** The stretches with their places in the form. */
export function placeLost(lost: readonly LostStretch[], timeline: Timeline): LostSound[] {
  return lost.map(({ atSeconds, seconds }) => {
    const beat = timeline.beatMap.beatAt(atSeconds);
    if (beat < 0) return { atSeconds, seconds, beat, bar: null, chorus: null };
    const chorus = Math.floor(beat / timeline.roundBeats);
    const bar = Math.floor((beat - chorus * timeline.roundBeats) / timeline.beatsPerBar);
    return { atSeconds, seconds, beat, bar, chorus };
  });
}

/** At most so many bars are named. */
const MOST_BARS = 5;

/** "The browser lost 46 ms of sound, in bar 3 and bar 7 of chorus 2; …", or null where nothing was lost. */
export function lostSentence(lost: readonly LostSound[] | undefined): string | null {
  if (lost === undefined || lost.length === 0) return null;
  const ms = Math.max(1, Math.round(1000 * lost.reduce((sum, { seconds }) => sum + seconds, 0)));
  const places = [...new Set(lost.map(placeWords))];
  const named = places.slice(0, MOST_BARS);
  const more = places.length - named.length;
  if (more > 0) named.push(`${more} more ${more === 1 ? 'bar' : 'bars'}`);
  const where = named.length === 1 ? named[0]! : `${named.slice(0, -1).join(', ')} and ${named.at(-1)}`;
  return `The browser lost ${ms} ms of sound, in ${where}; what was played there is not in the report.`;
}

function placeWords({ bar, chorus }: LostSound): string {
  if (bar === null) return 'the count-in';
  return chorus === null || chorus === 0 ? `bar ${bar + 1}` : `bar ${bar + 1} of chorus ${chorus + 1}`;
}
