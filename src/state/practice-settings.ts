/** How the form is practised: what is looped, which keys and tempi it goes through, what the band leaves out or adds. */
import * as v from 'valibot';
import type { BandSettings, DroneTones } from '../core/band/settings.ts';
import type { Chart } from '../core/chart/chart.ts';
import { playedBars } from '../core/chart/play-order.ts';
import { practiceChart, semitonesThrough, type Practice } from '../core/chart/practice-chart.ts';

export interface PracticeSettings {
  readonly practice: Practice & {
    /** How many keys there are before the first comes again. */
    readonly keyCount: number;
    /** The chords rest in every second chorus. */
    readonly chordsRest: boolean;
    /** A click on two and four. */
    readonly backbeatClick: boolean;
    /** The tempo rises by so much after each so many choruses of the form, or of the loop; null: it stays. */
    readonly rise: { readonly byBpm: number; readonly everyChoruses: number } | null;
    /** Player and band take turns of so many bars; null: the player plays all through. */
    readonly tradeBars: number | null;
    /** What sounds in place of bass and chords; null: they do. */
    readonly drone: DroneTones | null;
  };
}

export const RISE_RANGE = { lowest: 1, highest: 40 } as const;
const MOST_CHORUSES_A_STEP = 16;
/** All keys, or as many as are learned at a time. */
export const KEY_COUNTS: readonly number[] = [3, 12];
/** Twos, fours and eights are what players trade. *Common practice.* */
export const TRADES: readonly number[] = [1, 2, 4, 8];

const barNumber = v.pipe(v.number(), v.integer(), v.minValue(1));
const rise = v.object({
  byBpm: v.pipe(v.number(), v.minValue(RISE_RANGE.lowest), v.maxValue(RISE_RANGE.highest)),
  everyChoruses: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(MOST_CHORUSES_A_STEP)),
});

export const practiceFields: {
  readonly [K in keyof PracticeSettings]: v.GenericSchema<unknown, PracticeSettings[K]>;
} = {
  practice: v.object({
    loop: v.nullable(v.object({ fromBar: barNumber, toBar: barNumber })),
    keys: v.nullable(v.picklist(['fourths', 'half steps', 'random'] as const)),
    seed: v.pipe(v.number(), v.integer()),
    // Kept before three could be asked for.
    keyCount: v.optional(v.picklist(KEY_COUNTS), 12),
    chordsRest: v.boolean(),
    backbeatClick: v.boolean(),
    // Kept before there were these.
    rise: v.optional(v.nullable(rise), null),
    tradeBars: v.optional(v.nullable(v.picklist(TRADES)), null),
    drone: v.optional(v.nullable(v.picklist(['root', 'root and fifth'] as const)), null),
  }),
};

export const usualPractice: PracticeSettings = {
  practice: {
    loop: null,
    keys: null,
    seed: 1,
    keyCount: 12,
    chordsRest: false,
    backbeatClick: false,
    rise: null,
    tradeBars: null,
    drone: null,
  },
};

/** How many times the form is gone through before it begins anew in its first key. */
export const passesOf = ({ keys, keyCount }: PracticeSettings['practice']): number =>
  keys === null ? 1 : keyCount;

export type BandPractice = Pick<BandSettings, 'chordsRest' | 'backbeatClick' | 'rise' | 'trade' | 'drone'>;

/**
 * What the practice asks of the band over a chart.
 * @param chart as it was chosen, before loop and keys
 * @param aim id of what the player tries for: the band's turns are examples of it
 */
export function bandPractice(
  practice: PracticeSettings['practice'],
  chart: Chart,
  aim: string,
): BandPractice {
  const { chordsRest, backbeatClick, rise, tradeBars, drone, keys, seed, keyCount } = practice;
  // A loop through twelve keys is one long chorus; the player counts each time through.
  const choruses = practiceChart(chart, { ...practice, keys: null });
  const everyBars = (rise?.everyChoruses ?? 1) * playedBars(choruses).length;
  return {
    chordsRest,
    backbeatClick,
    ...(rise && { rise: { byBpm: rise.byBpm, everyBars } }),
    ...(tradeBars !== null && { trade: { bars: tradeBars, aim } }),
    ...(drone !== null && {
      drone: { tones: drone, semitones: keys === null ? [0] : semitonesThrough(keys, seed, keyCount) },
    }),
  };
}
