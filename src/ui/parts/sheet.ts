/** The form as bars on a one-line staff: what stands where, before anything is drawn. */
import type { Timeline } from '../../core/chart/timeline.ts';
import { bandTurns } from '../../core/chart/turns.ts';
import type { Landing } from '../../core/take/schema.ts';

/** A stretch of one chord inside one bar. */
export interface SheetCell {
  /** As written; null over N.C. */
  readonly symbol: string | null;
  /** From the bar line, in beats. */
  readonly startBeat: number;
  readonly beats: number;
  /** The chord simply goes on from the bar before: a repeat sign stands instead of its name. */
  readonly goesOn: boolean;
}

export interface SheetBar {
  readonly index: number;
  readonly beats: number;
  readonly cells: readonly SheetCell[];
}

/** One chorus of a timeline as bars. */
export function sheetBars(timeline: Timeline): readonly SheetBar[] {
  const { bars, beatsPerBar } = timeline;
  return Array.from({ length: bars }, (_, index) => {
    const from = index * beatsPerBar;
    const cells = timeline.spansBetween(from, from + beatsPerBar).map((span): SheetCell => {
      const start = Math.max(span.startBeat, from);
      return {
        symbol: span.chord?.symbol ?? null,
        startBeat: start - from,
        beats: Math.min(span.endBeat, from + beatsPerBar) - start,
        goesOn: span.startBeat < from,
      };
    });
    return { index, beats: beatsPerBar, cells };
  });
}

/** Bars of the chart, from 0, that are the band's in one chorus; a trade may fall on others in the next. */
export function tacetBars(
  { turnBars, bars }: Pick<Timeline, 'turnBars' | 'bars'>,
  chorus: number,
): ReadonlySet<number> {
  if (turnBars === undefined) return NO_BARS;
  const from = chorus * bars;
  const turns = bandTurns(turnBars, from, from + bars);
  return new Set(
    turns.flatMap(({ fromBar, toBar }) =>
      Array.from({ length: toBar - fromBar }, (_, i) => fromBar + i - from),
    ),
  );
}

const NO_BARS: ReadonlySet<number> = new Set();

/** Where an absolute beat lies in the form; beats before the first downbeat have no place. */
export interface Place {
  readonly chorus: number;
  readonly bar: number;
  /** From the bar line. */
  readonly beatInBar: number;
}

export function placeOf(beat: number, bars: number, beatsPerBar: number): Place | null {
  if (beat < 0 || bars < 1) return null;
  const bar = Math.floor(beat / beatsPerBar);
  return { chorus: Math.floor(bar / bars), bar: bar % bars, beatInBar: beat - bar * beatsPerBar };
}

/** All landings made at one place of the form, oldest chorus first. */
export interface LandingsHere {
  readonly beatInBar: number;
  readonly landings: readonly {
    readonly chorus: number;
    readonly landing: Landing;
    readonly index: number;
  }[];
}

/**
 * Landings gathered by bar of the form and by place in the bar. `index` is that in the report's list.
 * @param before what was gathered last: a bar in which nothing changed comes back as the same value, so that it is not
 *   drawn again. While playing, every note brings the whole list anew.
 */
export function landingsByBar(
  landings: readonly Landing[],
  bars: number,
  beatsPerBar: number,
  before: readonly (readonly LandingsHere[])[] = [],
): readonly (readonly LandingsHere[])[] {
  const gathered = Array.from({ length: bars }, () => new Map<number, LandingsHere['landings'][number][]>());
  for (const [index, landing] of landings.entries()) {
    const place = placeOf(landing.beat, bars, beatsPerBar);
    if (place === null) continue;
    const here = gathered[place.bar];
    const list = here?.get(place.beatInBar) ?? [];
    list.push({ chorus: place.chorus, landing, index });
    here?.set(place.beatInBar, list);
  }
  return gathered.map((map, bar) => {
    const fresh = [...map].map(([beatInBar, list]) => ({ beatInBar, landings: list }));
    const old = before[bar];
    return old !== undefined && sameBar(old, fresh) ? old : fresh;
  });
}

const sameBar = (old: readonly LandingsHere[], fresh: readonly LandingsHere[]): boolean =>
  old.length === fresh.length &&
  fresh.every(({ beatInBar, landings }, i) => {
    const then = old[i];
    return (
      then?.beatInBar === beatInBar &&
      then.landings.length === landings.length &&
      landings.every(({ index, landing }, j) => {
        const one = then.landings[j];
        return one?.index === index && sameLanding(one.landing, landing);
      })
    );
  });

/** Whether two landings look and read the same in the form. */
const sameLanding = (one: Landing, other: Landing): boolean =>
  one === other ||
  (one.chord === other.chord &&
    one.kind === other.kind &&
    one.degree === other.degree &&
    one.role === other.role &&
    one.stepSemitones === other.stepSemitones &&
    one.offsetMs === other.offsetMs);

/**
 * How many bars stand in a row: four, as lead sheets have it; eight where a long form meets a wide page, two
 * where four would be too narrow for a chord name.
 * @param most four where the form is read from afar: its rows are turned instead
 */
export function barsInRow(bars: number, widthPx: number, most: 4 | 8 = 8): number {
  if (widthPx < 300) return 2;
  return bars > 16 && widthPx >= 900 ? most : 4;
}
