/** The harmony of one chorus, as the band needs it: plain data that can be sent to a worker. */
import type { ChordSpan, Timeline } from '../chart/timeline.ts';

export interface BandForm {
  readonly beatsPerBar: number;
  readonly bars: number;
  /** One chorus from beat 0, in order, without gaps. */
  readonly spans: readonly ChordSpan[];
  /** Bars (from 0) at which a section of the chart begins; the band plays a fill before each. */
  readonly sectionBars: readonly number[];
}

/** The first chorus of a timeline as a form. Where the chart names no sections, one begins every `sectionLength` bars. */
export function bandForm(timeline: Timeline, sectionBars?: readonly number[], sectionLength = 4): BandForm {
  const spans = timeline.spansBetween(0, timeline.bars * timeline.beatsPerBar);
  const everyFew = Array.from(
    { length: Math.ceil(timeline.bars / sectionLength) },
    (_, i) => i * sectionLength,
  );
  return {
    beatsPerBar: timeline.beatsPerBar,
    bars: timeline.bars,
    spans,
    sectionBars: sectionBars ?? everyFew,
  };
}
