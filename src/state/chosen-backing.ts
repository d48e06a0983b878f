/** The player's own recording that is chosen in the band's place: what of it is played, graded and kept. */
import { timelineOf } from '../core/timeline-of-order.ts';
import { chartOver, rangeOf, roundOf, type Round } from '../core/beats/round.ts';
import type { BeatTrack } from '../core/beats/track.ts';
import type { Chart } from '../core/chart/chart.ts';
import { parseChart } from '../core/chart/parse-chart.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { writeChart } from '../core/chart/write-chart.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import type { TakenBacking } from '../core/take/taken-backing.ts';
import type { BackingRecord } from '../storage/backing-record.ts';
import type { BackingRun, BackingSource, BackingsPort } from './ports.ts';
import type { TakePlan } from './take-plan.ts';

export type { BackingRecord } from '../storage/backing-record.ts';

export interface ChosenBacking {
  readonly record: BackingRecord;
  readonly source: BackingSource;
  /** The chart over the bars that are repeated. */
  readonly chart: Chart;
  readonly round: Round;
  /** As it is played, in the mean. */
  readonly bpm: number;
  /** A4 as it sounds, in Hz: what the player tunes to. */
  readonly soundingHz: number;
}

export const beatTrack = ({ beats, pinned, downbeat }: BackingRecord): BeatTrack => ({
  marks: beats.map((seconds, i) => ({ seconds, pinned: pinned.includes(i) })),
  downbeat,
});

/** Where the file of a recording is read from. */
export const backingSource = (
  backings: Pick<BackingsPort, 'file'>,
  { id, title }: Pick<TakenBacking, 'id' | 'title'>,
): BackingSource => ({ id, name: title, file: () => backings.file(id) });

/** Fails where its chart can't be read, or its beats hold no whole bar. */
export function readChosenBacking(record: BackingRecord, source: BackingSource): Outcome<ChosenBacking> {
  const chart = parseChart(record.chartText);
  if (!chart.ok) return chart;
  const track = beatTrack(record);
  const { beatsPerBar } = chart.value.meter;
  const bars = rangeOf(track, chart.value, record.bars);
  if (bars === null) return bad('backing.noWholeBar', { title: record.title });
  const round = roundOf(track, beatsPerBar, bars, record.speed);
  const { beatSeconds } = round;
  return good({
    record,
    source,
    chart: chartOver(chart.value, bars),
    round,
    bpm: (60 * (beatSeconds.length - 1)) / beatSeconds.at(-1)!,
    soundingHz: record.referenceHz * 2 ** (record.cents / 1200),
  });
}

/** Its chart on its beats, the first downbeat at 0 seconds. */
export const backingTimeline = ({ record, chart, round, bpm }: ChosenBacking): Outcome<Timeline> =>
  timelineOf({
    chartText: writeChart(chart),
    bpm,
    swing: record.swing,
    firstBeatSeconds: 0,
    beatSeconds: round.beatSeconds,
  });

/** What a take keeps of it. */
function takenBacking({ record, round }: ChosenBacking): TakenBacking {
  const { id, title, speed, cents, bars } = record;
  const { fromSeconds, toSeconds, beatSeconds } = round;
  return { id, title, speed, cents, fromSeconds, toSeconds, beatSeconds: [...beatSeconds], bars };
}

/** What of the chosen recording is played. */
export const chosenBackingRun = (standing: ChosenBacking): BackingRun =>
  backingRun(takenBacking(standing), standing.source, standing.chart.meter.beatsPerBar);

/** The plan of a take with the recording in the band's place. A reference that is set is the recording's as it sounds. */
export function planWithBacking(plan: TakePlan, standing: ChosenBacking): TakePlan {
  const { record, source, chart, bpm, soundingHz } = standing;
  const { swing } = record;
  const backing = takenBacking(standing);
  return {
    ...plan,
    band: { ...plan.band, bpm, swing },
    backing: backingRun(backing, source, chart.meter.beatsPerBar),
    details: {
      ...plan.details,
      bpm,
      swing,
      reference: plan.details.reference === 'auto' ? 'auto' : soundingHz,
      backing,
    },
  };
}

/** What is to be played of a recording. */
export const backingRun = (
  { speed, cents, fromSeconds, toSeconds, beatSeconds }: TakenBacking,
  source: BackingSource,
  beatsPerBar: number,
): BackingRun => ({ source, order: { speed, cents, fromSeconds, toSeconds }, beatSeconds, beatsPerBar });
