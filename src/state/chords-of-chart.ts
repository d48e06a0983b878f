/** What a chart asks to be played, without how it is written: by this, takes over the same chords are known. */
import { timelineFromTempo } from '../core/chart/build-timeline.ts';
import { parseChart } from '../core/chart/parse-chart.ts';

/** Any tempo does. */
const BPM = 120;

/** Remembers each chart that it is asked for. @returns by chart text; null where that can't be read */
export function chordsReader(): (chartText: string) => string | null {
  const known = new Map<string, string | null>();
  return (chartText) => {
    const found = known.get(chartText);
    if (found !== undefined) return found;
    const chords = chordsOf(chartText);
    known.set(chartText, chords);
    return chords;
  };
}

function chordsOf(chartText: string): string | null {
  const chart = parseChart(chartText);
  if (!chart.ok) return null;
  const { roundBeats, beatsPerBar, ...timeline } = timelineFromTempo(chart.value, { bpm: BPM });
  const spans = timeline.spansBetween(0, roundBeats);
  return JSON.stringify([
    beatsPerBar,
    roundBeats,
    spans.map(({ startBeat, chord }) => [startBeat, chord?.symbol ?? null]),
  ]);
}
