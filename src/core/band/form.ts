/** The harmony of one chorus, as the band needs it: plain data that can be sent to a worker. */
import { parseChart } from '../chart/parse-chart.ts';
import { playedBars } from '../chart/play-order.ts';
import type { ChordSpan, Timeline } from '../chart/timeline.ts';
import type { Key } from '../music/chord.ts';
import { feelOf } from '../chart/feel-words.ts';
import type { FeelName } from '../chart/feel-names.ts';

/** From this bar on the band plays so; null: as the whole performance. */
export interface FeelChange {
  /** From 0. */
  readonly bar: number;
  readonly feel: FeelName | null;
}

export interface BandForm {
  readonly key: Key;
  /** The keys that a chorus goes through, as the timeline has them; `keyAt` reads them. */
  readonly keys?: NonNullable<Timeline['keys']>;
  readonly beatsPerBar: number;
  /** Eighths in a beat: 2, or 3 in compound time. */
  readonly divisions: 2 | 3;
  readonly bars: number;
  /** One chorus from beat 0, in order, without gaps. */
  readonly spans: readonly ChordSpan[];
  /** What stands once before beat 0; its beats are negative. */
  readonly pickup: readonly ChordSpan[];
  /** Bars (from 0) at which a section of the chart begins; the band plays a fill before each. */
  readonly sectionBars: readonly number[];
  /** Where a section asks for a feel of its own, and where that ends; in order, empty for most forms. */
  readonly feelChanges: readonly FeelChange[];
}

/** Bars in a phrase, where the chart names no sections, and in a long section. *Common practice.* */
const phraseBars = 4;
const longPhraseBars = 8;

/**
 * The first chorus of a timeline as a form. Sections and their feels are read out of the timeline's chart; a chart
 * of one section has phrases of four bars.
 */
export function bandForm(timeline: Timeline): BandForm {
  return {
    key: timeline.key,
    ...(timeline.keys && { keys: timeline.keys }),
    beatsPerBar: timeline.beatsPerBar,
    divisions: timeline.divisions,
    bars: timeline.bars,
    spans: timeline
      .spansBetween(0, timeline.bars * timeline.beatsPerBar)
      .filter((span) => span.startBeat >= 0 && span.chorus === 0),
    pickup: timeline.spansBetween(-timeline.beatsPerBar, 0).filter((span) => span.startBeat < 0),
    ...sectionsOf(timeline),
  };
}

function sectionsOf(timeline: Timeline): Pick<BandForm, 'sectionBars' | 'feelChanges'> {
  const chart = parseChart(timeline.chart);
  const played = chart.ok ? playedBars(chart.value) : [];
  if (!chart.ok || played.length !== timeline.bars || chart.value.sections.length < 2) {
    return { sectionBars: every(phraseBars, 0, timeline.bars), feelChanges: [] };
  }
  // A section starts where the name changes and where a repeat goes back.
  const starts = played.flatMap(({ section, written }, bar) => {
    const before = played[bar - 1];
    return before?.section === section && before.written < written ? [] : [bar];
  });
  const feels = played.map(({ section }) => chart.value.sections[section]?.feel ?? null);
  const feelChanges = feels.flatMap((words, bar): FeelChange[] => {
    const feel = words === null ? null : feelOf(words);
    const before = feels[bar - 1] ?? null;
    const feelBefore = before === null ? null : feelOf(before);
    return feel === feelBefore ? [] : [{ bar, feel }];
  });
  return {
    sectionBars: starts.flatMap((bar, i) => every(longPhraseBars, bar, starts[i + 1] ?? timeline.bars)),
    feelChanges,
  };
}

const every = (step: number, from: number, to: number): readonly number[] =>
  Array.from({ length: Math.ceil((to - from) / step) }, (_, i) => from + i * step);

/** Beats of one chorus. */
export const chorusBeats = (form: BandForm): number => form.bars * form.beatsPerBar;

/** Beats of the pickup: 0 without one. */
export const pickupBeats = (form: BandForm): number => -(form.pickup[0]?.startBeat ?? 0);

/** The feel a bar asks for, or null. */
export const feelOfBar = (form: BandForm, bar: number): FeelName | null =>
  form.feelChanges.findLast((change) => change.bar <= bar)?.feel ?? null;
