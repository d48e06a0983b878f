/** The chords under a line where no chart is given: found in the backing, or in the band beside the line, where they are sure. */
import { timelineOnBeats } from '../core/chart/build-timeline.ts';
import { listedBeatMap } from '../core/chart/beat-maps.ts';
import { STRAIGHT_SWING } from '../core/chart/chart.ts';
import { parseChart } from '../core/chart/parse-chart.ts';
import { openAudio, readWhole } from '../core/files/audio.ts';
import type { GradeSettings } from '../core/grade-settings.ts';
import { chartOfRecording, isBarSure } from '../core/harmony/chart-of-recording.ts';
import { meanSureness } from '../core/harmony/has-band.ts';
import { notice } from '../core/words/problem.ts';
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';
import { openFile } from './file-source.ts';
import type { GradeOrder } from './orders.ts';
import type { ReadTimeline } from './read-timeline.ts';

/** Bars that are less likely right than this in the mean are nothing to grade by. */
const LEAST_SURE = 0.85;
const PER_MILLION = 1e-6;

/** A recording that is its own backing. */
const OWN = { offsetSeconds: 0, driftPpm: 0 } as const;

/** @param source the take, which says where in it the backing was heard; null where the band is in the take itself */
export async function foundTimeline(
  order: GradeOrder,
  source: GradeSettings['source'] | null,
): Promise<Outcome<ReadTimeline>> {
  const name = source === null ? order.file : order.backing!;
  const place = source === null ? OWN : (source.backing ?? null);
  if (place === null) return bad('cli.backingUnplaced', { name });
  const file = openFile(name);
  if (!file.ok) return file;
  try {
    const opened = await openAudio(file.value);
    if (!opened.ok) return opened;
    const recording = await readWhole(opened.value, name);
    if (!recording.ok) return recording;
    const found = chartOfRecording(recording.value.samples, recording.value.sampleRate);
    if (found === null) throw new Error('The search for chords stopped and nobody asked it to');
    if (source === null && !(found.ok && found.value.hasBand)) return bad('cli.noBand', { name });
    if (!found.ok) return bad('cli.inFile', { name, cause: found.problem });
    const { proposal, beats, bpm } = found.value;
    const unsure = proposal.bars.filter((bar) => !isBarSure(bar)).length;
    if (meanSureness(proposal) < LEAST_SURE)
      return bad('cli.chordsUnsure', { name, unsure, bars: proposal.bars.length });
    const chart = parseChart(proposal.chart);
    if (!chart.ok) return failure(chart.problem);
    const inTake = beats
      .slice(proposal.downbeat)
      .map((seconds) => place.offsetSeconds + seconds * (1 + place.driftPpm * PER_MILLION));
    const keyed = order.key ? { ...chart.value, key: order.key } : chart.value;
    return good({
      timeline: timelineOnBeats(keyed, listedBeatMap(inTake), order.swing ?? STRAIGHT_SWING),
      warnings: [
        notice('cli.chordsFound', {
          name,
          bars: proposal.bars.length,
          bpm: Math.round(bpm),
          unsure,
          chart: proposal.chart
            .split('\n')
            .filter((line) => line.startsWith('|'))
            .join(' '),
        }),
      ],
    });
  } finally {
    file.value.dispose();
  }
}
