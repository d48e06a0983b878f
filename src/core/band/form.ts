/** The harmony of one chorus, as the band needs it: plain data that can be sent to a worker. */
import type { ChordSpan, Timeline } from '../chart/timeline.ts';
import type { Key } from '../music/chord.ts';

export interface BandForm {
  readonly key: Key;
  readonly beatsPerBar: number;
  readonly bars: number;
  /** One chorus from beat 0, in order, without gaps. */
  readonly spans: readonly ChordSpan[];
  /** Bars (from 0) at which a section of the chart begins; the band plays a fill before each. */
  readonly sectionBars: readonly number[];
}

/** Bars in a phrase, where the chart names no sections. *Common practice.* */
const phraseBars = 4;

/** The first chorus of a timeline as a form; sections begin at `sectionBars`, else every four bars. */
export function bandForm(timeline: Timeline, sectionBars?: readonly number[]): BandForm {
  const phrases = Array.from({ length: Math.ceil(timeline.bars / phraseBars) }, (_, i) => i * phraseBars);
  return {
    key: timeline.key,
    beatsPerBar: timeline.beatsPerBar,
    bars: timeline.bars,
    spans: timeline
      .spansBetween(0, timeline.bars * timeline.beatsPerBar)
      .filter((span) => span.startBeat >= 0 && span.chorus === 0),
    sectionBars: sectionBars ?? phrases,
  };
}

/** Beats of one chorus. */
export const chorusBeats = (form: BandForm): number => form.bars * form.beatsPerBar;
