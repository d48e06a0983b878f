/** Which part of a recording is played round and round, and the chart that lies over it. */
import type { Chart, ChartBar, ChartSection } from '../chart/chart.ts';
import { sectionKeys } from '../chart/keys-through.ts';
import type { Key } from '../music/chord.ts';
import { playedBars, playedOut } from '../chart/play-order.ts';
import type { BeatTrack } from './track.ts';

/** Bars of the recording, from 1 at the first downbeat, both included. */
export interface BarRange {
  readonly fromBar: number;
  readonly toBar: number;
}

export interface Round {
  readonly bars: BarRange;
  /** Where it lies in the recording, at its own pace. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  /** Each beat in seconds from the round's first downbeat as it is played; the last is where it begins again. */
  readonly beatSeconds: readonly number[];
}

/** How a recording can be slowed: down to half. */
export const SLOWEST_SPEED = 0.5;

/** Whole bars from the first downbeat to the last beat. */
export const barsIn = (track: BeatTrack, beatsPerBar: number): number =>
  Math.max(0, Math.floor((track.marks.length - 1 - track.downbeat) / beatsPerBar));

/**
 * The bars that are asked for, brought into the recording. Without a wish: as many whole choruses as it holds, so that
 * an ending is left out and the form closes; all its bars where it holds not even one.
 * @returns null for a recording without a whole bar
 */
export function rangeOf(
  track: BeatTrack,
  chart: Pick<Chart, 'sections' | 'meter'>,
  wish: BarRange | null,
): BarRange | null {
  const bars = barsIn(track, chart.meter.beatsPerBar);
  if (bars < 1) return null;
  if (wish !== null) {
    const fromBar = Math.min(bars, Math.max(1, Math.round(wish.fromBar)));
    return { fromBar, toBar: Math.min(bars, Math.max(fromBar, Math.round(wish.toBar))) };
  }
  const chorus = Math.max(1, playedBars(chart).length);
  return { fromBar: 1, toBar: bars >= chorus ? bars - (bars % chorus) : bars };
}

/**
 * @param speed 1 as recorded, 0.5 half as fast
 * @throws RangeError for bars that the track does not have, or a speed outside 0.5 to 1
 * @example roundOf(track, 4, { fromBar: 5, toBar: 8 }, 0.75)
 */
export function roundOf(track: BeatTrack, beatsPerBar: number, bars: BarRange, speed: number): Round {
  if (!(speed >= SLOWEST_SPEED && speed <= 1))
    throw new RangeError(`the speed is ${SLOWEST_SPEED} to 1, not ${speed}`);
  const { fromBar, toBar } = bars;
  if (!(fromBar >= 1 && toBar >= fromBar && toBar <= barsIn(track, beatsPerBar)))
    throw new RangeError(`bars ${fromBar} to ${toBar} are not in the recording`);
  const from = track.downbeat + (fromBar - 1) * beatsPerBar;
  const to = track.downbeat + toBar * beatsPerBar;
  const all = track.marks.slice(from, to + 1).map(({ seconds }) => seconds);
  const fromSeconds = all[0]!;
  return {
    bars,
    fromSeconds,
    toSeconds: all.at(-1)!,
    beatSeconds: all.map((seconds) => (seconds - fromSeconds) / speed),
  };
}

/**
 * The chart as it lies over a round: itself where the round is whole choruses from the top, else the bars of it that
 * the round goes through. A pickup belongs to the recording's beginning alone.
 */
export function chartOver(chart: Chart, { fromBar, toBar }: BarRange): Chart {
  const played = playedBars(chart);
  const length = toBar - fromBar + 1;
  const first = (fromBar - 1) % played.length;
  if (first === 0 && length % played.length === 0) return { ...chart, pickup: null };
  const sections: { name: string | null; feel: string | null; key?: Key; bars: ChartBar[] }[] = [];
  const keys = sectionKeys(chart);
  for (let i = 0; i < length; i++) {
    const { bar, section, written } = played[(first + i) % played.length]!;
    const before = i === 0 ? null : played[(first + i - 1) % played.length]!;
    const own: ChartSection | undefined = chart.sections[section];
    if (before?.section !== section || written <= before.written)
      sections.push({
        name: own?.name ?? null,
        feel: own?.feel ?? null,
        ...(own?.key !== undefined || keys[section] !== (before ? keys[before.section] : chart.key)
          ? { key: keys[section] ?? chart.key }
          : {}),
        bars: [],
      });
    sections.at(-1)?.bars.push(playedOut(bar));
  }
  return { ...chart, keyWritten: true, pickup: null, sections };
}
