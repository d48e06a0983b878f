/** Patterns that are written in steps → places on the grid of beats. */
import type { BandForm } from './form.ts';
import type { ChordSpan } from '../chart/timeline.ts';
import type { Chance } from '../base/random.ts';
import type { StepsPerBeat } from './feels/feel.ts';
import { swungBeat } from '../chart/swing.ts';

const patternBeats = 4;

/** A step that is no rest: its place, and its character. */
export interface Step {
  /** From the chorus's first downbeat, as played (swung). */
  readonly beat: number;
  /** Beats until the next step that is no hold, as played. */
  readonly durationBeats: number;
  readonly sign: string;
}

/**
 * Which beats of a four-beat pattern a bar of another length takes: three is one, two and the back beat of four;
 * five is three and two; six two threes; seven four and three.
 */
export function beatOrder(beatsPerBar: number): readonly number[] {
  const three = [0, 1, 3];
  const groups: Readonly<Record<number, readonly number[]>> = {
    1: [0],
    2: [0, 1],
    3: three,
    4: [0, 1, 2, 3],
    5: [...three, 0, 1],
    6: [...three, ...three],
    7: [0, 1, 2, 3, ...three],
  };
  return groups[beatsPerBar] ?? Array.from({ length: beatsPerBar }, (_, i) => i % patternBeats);
}

/** The characters of one bar, in the order they are played. A line of two bars gives its half to each. */
export function barSigns(line: string, steps: StepsPerBeat, bar: number, beatsPerBar: number): string {
  const barLength = steps * patternBeats;
  const halves = Math.max(1, Math.floor(line.length / barLength));
  const ofBar = line.slice((bar % halves) * barLength, (bar % halves) * barLength + barLength);
  return beatOrder(beatsPerBar)
    .map((beat) => ofBar.slice(beat * steps, (beat + 1) * steps).padEnd(steps, '.'))
    .join('');
}

/** Where the step with this index in its bar is played, in beats from the bar line. Triplets stay as written. */
export function stepBeat(index: number, steps: StepsPerBeat, swing: number): number {
  return steps === 3 ? index / 3 : swungBeat(index / steps, swing);
}

/** One bar of a line as steps; rests and holds are left out. */
export function readBar(signs: string, steps: StepsPerBeat, barBeat: number, swing: number): readonly Step[] {
  const read: Step[] = [];
  [...signs].forEach((sign, index) => {
    if (sign === '.' || sign === '-') return;
    let end = index + 1;
    while (signs[end] === '-') end++;
    const beat = stepBeat(index, steps, swing);
    read.push({ beat: barBeat + beat, durationBeats: stepBeat(end, steps, swing) - beat, sign });
  });
  return read;
}

/** A pattern for every bar: one choice holds for two bars, so that two-bar lines stay whole. */
export function patternOf<T extends { readonly weight?: number }>(
  patterns: readonly T[],
  chance: Chance,
  bars: number,
): readonly T[] {
  const weights = patterns.map((pattern) => pattern.weight ?? 1);
  const pairs = Array.from({ length: Math.ceil(bars / 2) }, () => chance.pick(patterns, weights));
  return Array.from({ length: bars }, (_, bar) => pairs[Math.floor(bar / 2)]!);
}

/** Grid places are sums of fractions: this much apart they are the same. */
export const sameBeat = 1e-6;

/** The span at a beat of the chorus; the chorus goes round. */
export function spanAt(form: BandForm, beat: number): ChordSpan | undefined {
  const total = form.bars * form.beatsPerBar;
  const inside = beat >= total - sameBeat ? beat - total : beat;
  return form.spans.find((span) => span.startBeat <= inside + sameBeat && inside < span.endBeat - sameBeat);
}

/** The span after this one; the chorus goes round. */
export function spanAfter(form: BandForm, span: ChordSpan): ChordSpan | undefined {
  return form.spans[form.spans.indexOf(span) + 1] ?? form.spans[0];
}
