/** The chart of a take on time, from what is needed to grade it. */
import { bad, good, type Outcome } from './base/outcome.ts';
import { isRound, roundBeatMap } from './chart/beat-maps.ts';
import { timelineFromTempo, timelineOnBeats } from './chart/build-timeline.ts';
import { FASTEST_BPM, SLOWEST_BPM, STRAIGHT_SWING, WIDEST_SWING } from './chart/chart.ts';
import { parseChart } from './chart/parse-chart.ts';
import type { Timeline } from './chart/timeline.ts';
import type { GradeOrder } from './grade-order.ts';

/** The chart laid on time as the order has it: the same in the worker and on the page. */
export function timelineOf(
  order: Pick<
    GradeOrder,
    'chartText' | 'bpm' | 'swing' | 'firstBeatSeconds' | 'beatSeconds' | 'feel' | 'rise' | 'turnBars'
  >,
): Outcome<Timeline> {
  const { chartText, bpm, swing, firstBeatSeconds, beatSeconds, feel, rise, turnBars } = order;
  if (!(bpm >= SLOWEST_BPM && bpm <= FASTEST_BPM))
    return bad('order.tempo', { bpm, slowest: SLOWEST_BPM, fastest: FASTEST_BPM });
  if (!(swing >= STRAIGHT_SWING && swing <= WIDEST_SWING))
    return bad('order.swing', { swing, straight: STRAIGHT_SWING, widest: WIDEST_SWING });
  const chart = parseChart(chartText);
  if (chart.ok && beatSeconds !== undefined)
    return isRound(beatSeconds)
      ? good(timelineOnBeats(chart.value, roundBeatMap(beatSeconds, firstBeatSeconds), swing))
      : bad('backing.beatOrder');
  if (!chart.ok) return chart;
  return good(
    timelineFromTempo(chart.value, {
      bpm,
      swing,
      firstBeatSeconds,
      ...(feel && { feel }),
      ...(rise && { rise }),
      ...(turnBars !== undefined && { turnBars }),
    }),
  );
}
