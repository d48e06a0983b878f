/** The bars of a chart in the order they sound: repeats gone round, endings chosen, jumps followed. */
import { MOST_BARS } from '../base/limits.ts';
import type { Chart, ChartBar, Jump } from './chart.ts';

export interface PlayedBar {
  readonly bar: ChartBar;
  /** Where it is written, from 0, the pickup aside. */
  readonly written: number;
  /** Index of its section in the chart. */
  readonly section: number;
}

/**
 * One chorus as played. A chorus longer than {@link MOST_BARS} is cut behind the bar after it.
 *
 * Jumps as notation handbooks have them (*common practice*, from memory): D.C. and D.S. are followed once, where the
 * bar's repeats are done; from there on repeats are not taken and of several endings the last is; "al Fine" ends at the
 * Fine, "al Coda" goes from the To Coda to the coda, where repeats count again. A jump that says neither ends at a Fine
 * where there is one, else takes a To Coda where there is one, else plays on to the end.
 */
export function playedBars(chart: Pick<Chart, 'sections'>): readonly PlayedBar[] {
  const bars: PlayedBar[] = [];
  chart.sections.forEach((section, index) => {
    for (const bar of section.bars) bars.push({ bar, written: bars.length, section: index });
  });
  // Looked for once: a chart may have a jump in each of thousands of bars.
  const firstWith = (sign: 'segno' | 'coda' | 'fine') =>
    bars.findIndex(({ bar }) => bar.signs?.[sign] === true);
  const places = { segno: firstWith('segno'), coda: firstWith('coda'), fine: firstWith('fine') };
  const followed = new Set<number>();
  const played: PlayedBar[] = [];
  let jump: Jump | null = null;
  let from: number | null = 0;
  while (from !== null) {
    const walked: Generator<PassedBar, void> = straightOn(bars, from, jump === null);
    from = null;
    for (const { at, lastTime } of walked) {
      if (played.length > MOST_BARS) return played;
      const passed = bars[at]!;
      played.push(passed);
      const { signs } = passed.bar;
      if (!signs) continue;
      const until = jump && (jump.until ?? (places.fine >= 0 ? 'fine' : 'coda'));
      if (until === 'fine' && signs.fine) return played;
      if (until === 'coda' && signs.toCoda && places.coda >= 0) {
        jump = null;
        from = places.coda;
        break;
      }
      if (signs.jump && lastTime && !followed.has(at)) {
        followed.add(at);
        jump = signs.jump;
        from = jump.to === 'start' ? 0 : Math.max(0, places.segno);
        break;
      }
    }
  }
  return played;
}

interface PassedBar {
  readonly at: number;
  /** It does not sound again, except after a jump. */
  readonly lastTime: boolean;
}

/** The bars from one on to the end, repeats gone round or not. */
function* straightOn(bars: readonly PlayedBar[], from: number, repeats: boolean): Generator<PassedBar, void> {
  function* stretch(first: number, behind: number, lastTime: boolean): Generator<PassedBar, void> {
    for (let at = first; at < behind; at++) yield { at, lastTime };
  }
  let at = from;
  while (at < bars.length) {
    const close = bars.findIndex(({ bar }, index) => index >= at && bar.repeatTimes > 0);
    if (close < 0) return yield* stretch(at, bars.length, true);
    const open = bars.findLastIndex(({ bar }, index) => index >= at && index <= close && bar.repeatStart);
    const start = open < 0 ? at : open;
    yield* stretch(at, start, true);
    const endings = endingsOf(bars, start, close);
    const bodyEnd = endings[0]?.from ?? close + 1;
    const times = Math.max(bars[close]?.bar.repeatTimes ?? 0, ...endings.flatMap((ending) => ending.passes));
    for (let pass = repeats ? 1 : times; pass <= times; pass++) {
      yield* stretch(start, bodyEnd, pass === times);
      const ending = endings.find((choice) => choice.passes.includes(pass));
      if (ending) yield* stretch(ending.from, ending.to, pass === times);
    }
    at = endings.at(-1)?.to ?? close + 1;
  }
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

/** A bar in a chart whose repeats are written out: without repeat signs and jumps. */
export function playedOut({ chords }: ChartBar): ChartBar {
  return { chords, repeatStart: false, repeatTimes: 0, endings: [] };
}
