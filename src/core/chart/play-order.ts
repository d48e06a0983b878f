/** The bars of a chart in the order they sound: repeats gone round, endings chosen. */
import type { Chart, ChartBar } from './chart.ts';

export interface PlayedBar {
  readonly bar: ChartBar;
  /** Where it is written, from 0, the pickup aside. */
  readonly written: number;
  /** Index of its section in the chart. */
  readonly section: number;
}

/** Longest chorus that is played out, in bars: longer ones are repeats written by mistake. */
export const LONGEST_CHORUS_BARS = 4000;

/** One chorus as played. A chorus longer than {@link LONGEST_CHORUS_BARS} is cut there. */
export function playedBars(chart: Pick<Chart, 'sections'>): readonly PlayedBar[] {
  const bars: PlayedBar[] = [];
  chart.sections.forEach((section, index) => {
    for (const bar of section.bars) bars.push({ bar, written: bars.length, section: index });
  });
  const played: PlayedBar[] = [];
  let at = 0;
  while (at < bars.length && played.length < LONGEST_CHORUS_BARS) {
    const close = bars.findIndex(({ bar }, index) => index >= at && bar.repeatTimes > 0);
    if (close < 0) {
      played.push(...bars.slice(at));
      break;
    }
    const open = bars.findLastIndex(({ bar }, index) => index >= at && index <= close && bar.repeatStart);
    const start = open < 0 ? at : open;
    played.push(...bars.slice(at, start));
    const endings = endingsOf(bars, start, close);
    const bodyEnd = endings[0]?.from ?? close + 1;
    const times = Math.max(bars[close]?.bar.repeatTimes ?? 0, ...endings.flatMap((ending) => ending.passes));
    for (let pass = 1; pass <= times; pass++) {
      played.push(...bars.slice(start, bodyEnd));
      const ending = endings.find((choice) => choice.passes.includes(pass));
      if (ending) played.push(...bars.slice(ending.from, ending.to));
    }
    at = endings.at(-1)?.to ?? close + 1;
  }
  return played.slice(0, LONGEST_CHORUS_BARS);
}

interface Ending {
  readonly passes: readonly number[];
  /** First bar, and the bar behind its last one. */
  readonly from: number;
  readonly to: number;
}

/** The endings of a repeat that opens at `start` and closes first at `close`; later endings follow one another. */
function endingsOf(bars: readonly PlayedBar[], start: number, close: number): readonly Ending[] {
  const endings: Ending[] = [];
  const first = bars.findIndex(({ bar }, index) => index >= start && bar.endings.length > 0);
  if (first < 0 || first > close) return endings;
  const written = bars.map(({ bar }) => bar);
  let from = first;
  for (;;) {
    const passes = bars[from]?.bar.endings ?? [];
    if (passes.length === 0 || (from > first && bars[from]?.bar.repeatStart)) return endings;
    const to = endOfEnding(written, from);
    endings.push({ passes, from, to });
    from = to;
  }
}

/**
 * The bar behind an ending that starts at bar `from`: behind its repeat sign, or where the next ending starts; a last
 * ending without a sign flows on after one bar.
 */
export function endOfEnding(bars: readonly ChartBar[], from: number): number {
  for (let at = from; at < bars.length; at++) {
    const bar = bars[at];
    if (!bar || (at > from && bar.repeatStart)) break;
    if (at > from && bar.endings.length > 0) return at;
    if (bar.repeatTimes > 0) return at + 1;
  }
  return from + 1;
}
