/** A take against the chart that it fits better: in another key, or begun at another beat. */
import { parseChart } from '../core/chart/parse-chart.ts';
import { movedChart } from '../core/chart/transpose-chart.ts';
import { writeChart } from '../core/chart/write-chart.ts';
import { writeKey } from '../core/music/keys.ts';
import type { Review } from './phase.ts';
import { movedSetup } from './take-setup.ts';
import type { TakeDetails } from './take.ts';

/**
 * What of a take's details changes where its report suspects another key or another first beat.
 * @returns null where nothing is suspected, or where the chart would begin before the sound does
 */
export function chartChange({
  details,
  report: { suspected },
  timeline,
}: Pick<Review, 'details' | 'report' | 'timeline'>): Partial<TakeDetails> | null {
  if (suspected === null) return null;
  if (suspected.what === 'key') return inOtherKey(details, suspected.semitones);
  const { beatMap } = timeline;
  // The beats of a recording lie where they lie; only a chart at a tempo can begin at any of its beats.
  if (beatMap.bpm === null || details.firstBeatSeconds === null) return null;
  const firstBeatSeconds =
    details.firstBeatSeconds + beatMap.secondsAt(suspected.beats) - beatMap.secondsAt(0);
  return firstBeatSeconds >= 0 ? { firstBeatSeconds } : null;
}

function inOtherKey(
  { chartText, key: old, title, setup }: TakeDetails,
  semitones: number,
): Partial<TakeDetails> {
  const chart = parseChart(chartText);
  if (!chart.ok) throw new Error('the chart of a take in review can always be read');
  const moved = movedChart(chart.value, semitones);
  const key = writeKey(moved.key);
  const inOld = ` in ${old}`;
  return {
    chartText: writeChart(moved),
    key,
    ...(setup && { setup: movedSetup(setup, semitones) }),
    // A built-in form is named with its key: "12-bar blues in A".
    ...(title.endsWith(inOld) && { title: `${title.slice(0, -inOld.length)} in ${key}` }),
  };
}
