/** What is needed besides samples to grade a take, as plain data that crosses into a worker. */
import { timelineFromTempo } from '../core/chart/build-timeline.ts';
import { FASTEST_BPM, SLOWEST_BPM, STRAIGHT_SWING, WIDEST_SWING } from '../core/chart/chart.ts';
import { parseChart } from '../core/chart/parse-chart.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { bad, good, type Outcome } from '../core/outcome.ts';

export interface GradeOrder {
  /** The chart in our own text form, its key among the headings. */
  readonly chartText: string;
  readonly bpm: number;
  /** Share of the beat that the first eighth takes. */
  readonly swing: number;
  /** Where the first downbeat lies, in seconds from the first sample, round trip included. */
  readonly firstBeatSeconds: number;
  /** A4 in Hz, or estimated from the notes. */
  readonly reference: number | 'auto';
  readonly source: 'microphone' | 'audio';
}

/** The chart laid on time as the order has it: the same in the worker and on the page. */
export function timelineOf(
  order: Pick<GradeOrder, 'chartText' | 'bpm' | 'swing' | 'firstBeatSeconds'>,
): Outcome<Timeline> {
  const { chartText, bpm, swing, firstBeatSeconds } = order;
  if (!(bpm >= SLOWEST_BPM && bpm <= FASTEST_BPM))
    return bad(`The tempo is ${bpm}; it can be ${SLOWEST_BPM} to ${FASTEST_BPM} beats a minute.`);
  if (!(swing >= STRAIGHT_SWING && swing <= WIDEST_SWING))
    return bad(`The swing is ${swing}; it can be ${STRAIGHT_SWING} (straight) to ${WIDEST_SWING}.`);
  const chart = parseChart(chartText);
  return chart.ok ? good(timelineFromTempo(chart.value, { bpm, swing, firstBeatSeconds })) : chart;
}
