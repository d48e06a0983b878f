/** A chart made into another one to practise on; since it is a chart, band and grading follow it as any other. */
import { chance } from '../base/random.ts';
import type { Key } from '../music/chord.ts';
import { keyOn, writeKey } from '../music/keys.ts';
import type { Chart, ChartBar, ChartSection } from './chart.ts';
import { sectionKeys } from './keys-through.ts';
import { playedBars, playedOut as barPlayedOut } from './play-order.ts';
import { transposeChart } from './transpose-chart.ts';

/** How the keys follow one another: each chorus a fourth up, a half step up, or all twelve in a drawn order. */
export type KeyCycle = 'fourths' | 'half steps' | 'random';

export interface Practice {
  /** Bars of the chorus as played, from 1, both included; null: the whole chorus. */
  readonly loop: { readonly fromBar: number; readonly toBar: number } | null;
  /** null stays in the chart's key. */
  readonly keys: KeyCycle | null;
  /** How many keys there are before the first comes again; twelve where it is left out. */
  readonly keyCount?: number;
  /** Decides the order of random keys. */
  readonly seed: number;
}

const SEMITONES = 12;
const steps: Readonly<Record<Exclude<KeyCycle, 'random'>, number>> = { fourths: 5, 'half steps': 1 };

/**
 * The chart with the practice applied: first the loop, then the keys one after the other, the chart's own first.
 * Repeats are played out. A loop outside the chorus is brought into it.
 */
export function practiceChart(chart: Chart, { loop, keys, seed, keyCount }: Practice): Chart {
  const looped = loop === null ? chart : loopBars(chart, loop.fromBar, loop.toBar);
  return keys === null ? looped : cycleKeys(looped, semitonesThrough(keys, seed, keyCount));
}

function loopBars(chart: Chart, fromBar: number, toBar: number): Chart {
  const sections = playedOut(chart);
  const count = sections.reduce((sum, { bars }) => sum + bars.length, 0);
  const first = Math.min(count, Math.max(1, Math.round(fromBar)));
  const last = Math.min(count, Math.max(first, Math.round(toBar)));
  let at = 0;
  const kept = sections.flatMap((section) => {
    const bars = section.bars.filter((_, i) => at + i + 1 >= first && at + i + 1 <= last);
    at += section.bars.length;
    return bars.length === 0 ? [] : [{ ...section, bars }];
  });
  return { ...chart, keyWritten: true, pickup: null, sections: kept };
}

function cycleKeys(chart: Chart, steps: readonly number[]): Chart {
  const played: Chart = { ...chart, keyWritten: true, pickup: null, sections: playedOut(chart) };
  const sections = steps.flatMap((semitones) => {
    // The first round keeps the key as the chart spells it: F# is not turned into Gb.
    const key =
      semitones === 0
        ? chart.key
        : keyOn((chart.key.tonicPitchClass + semitones) % SEMITONES, chart.key.mode);
    const [head, ...rest] = (semitones === 0 ? played : transposeChart(played, key)).sections;
    if (!head) return [];
    const named = head.name === null ? `in ${writeKey(key)}` : `${head.name} in ${writeKey(key)}`;
    return [{ ...head, name: named.replaceAll('#', '♯'), ...(semitones !== 0 && { key }) }, ...rest];
  });
  return { ...played, sections };
}

/** Semitones above the chart's key, chorus by chorus; its own key first. @param count of keys, 1 to 12 */
export function semitonesThrough(cycle: KeyCycle, seed: number, count = SEMITONES): readonly number[] {
  const around = Array.from({ length: SEMITONES }, (_, i) => i);
  if (cycle !== 'random') return around.slice(0, count).map((i) => (i * steps[cycle]) % SEMITONES);
  const luck = chance(seed);
  const left = around.slice(1);
  const drawn = [0];
  while (left.length > 0) {
    const next = luck.pick(left);
    left.splice(left.indexOf(next), 1);
    drawn.push(next);
  }
  return drawn.slice(0, count);
}

/** The sections in the order in which they sound: repeats are written out, and a section that sounds twice stands twice. */
function playedOut(chart: Chart): readonly ChartSection[] {
  const sections: { name: string | null; feel: string | null; key?: Key; bars: ChartBar[] }[] = [];
  const keys = sectionKeys(chart);
  let before = -1;
  for (const { bar, section } of playedBars(chart)) {
    const own = chart.sections[section];
    const key = keys[section] ?? chart.key;
    const moves = key !== (keys[before] ?? chart.key);
    if (section !== before)
      sections.push({ name: own?.name ?? null, feel: own?.feel ?? null, ...(moves && { key }), bars: [] });
    sections.at(-1)?.bars.push(barPlayedOut(bar));
    before = section;
  }
  return sections;
}
