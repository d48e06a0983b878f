/** A timeline with its chords as a transposing player reads them; nothing of its time changes. */
import { keyAsRead, type Reading } from '../music/reading.ts';
import { timelineFromTempo } from './build-timeline.ts';
import { parseChart } from './parse-chart.ts';
import type { Timeline } from './timeline.ts';
import { transposeChart } from './transpose-chart.ts';

/**
 * The same timeline at concert pitch, and where the beats were listed: such a list is no chart that could be moved.
 * @example timelineAsRead(bluesInA, readingOf(tenorSax, 'written')) // a blues in B
 */
export function timelineAsRead(timeline: Timeline, reading: Reading): Timeline {
  const { beatMap, swing, key } = timeline;
  if (reading.semitones === 0 || beatMap.bpm === null) return timeline;
  const chart = parseChart(timeline.chart);
  if (!chart.ok) return timeline;
  return timelineFromTempo(transposeChart({ ...chart.value, key }, keyAsRead(key, reading)), {
    bpm: beatMap.bpm,
    swing,
    firstBeatSeconds: beatMap.secondsAt(0),
  });
}
