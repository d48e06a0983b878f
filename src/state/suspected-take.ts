/** A take with what its own notes make probable: another delay, another key, another first beat. */
import { gradeOrder } from '../core/grade-order.ts';
import { withHeard, type GradedSound } from '../core/grade-samples.ts';
import { firstBeatAfterChange } from '../core/take/round-trip.ts';
import type { FinishedTake } from './finished-take.ts';
import type { Review } from './phase.ts';
import type { SessionPorts } from './session-ports.ts';
import type { TakeDetails } from './take.ts';
import { chartChange } from './take-chart.ts';

/** A take that is to be graded, for the first time or again. */
export interface TakeToGrade {
  readonly take: FinishedTake;
  /** Its grading, where the notes that were heard could be graded at once; null where the sound is to be heard again. */
  readonly known: GradedSound | null;
  /** Details that are not as they are kept with the take; they are kept once it is graded. */
  readonly changed: Partial<TakeDetails>;
}

export type SuspectedThing = 'delay' | 'chart';

/** Whether the report of a take suspects such a thing, and the take can be graded with another. */
export const canTakeSuspected = (what: SuspectedThing, review: Review): boolean =>
  what === 'delay' ? review.report.suspectedDelay !== null : chartChange(review) !== null;

/**
 * The take with what it makes probable. A delay is set for the devices of a take that was just played, and another key in
 * the setup, where that still has the take's chart.
 * @throws Error where nothing of the kind is suspected
 */
export async function suspectedTake(
  what: SuspectedThing,
  review: Review,
  ports: SessionPorts,
): Promise<TakeToGrade> {
  if (!canTakeSuspected(what, review)) throw new Error(`no other ${what} is suspected`);
  return what === 'delay' ? withOtherDelay(review, ports) : withOtherChart(review, ports);
}

function withOtherDelay(review: Review, { rooms, today }: SessionPorts): TakeToGrade {
  const { details, report, playedThrough } = review;
  const seconds = report.suspectedDelay!.ms / 1000;
  const moved = firstBeatAfterChange(
    details.firstBeatSeconds ?? 0,
    { roundTripSeconds: 0 },
    { roundTripSeconds: seconds },
  );
  if (playedThrough) {
    const delaySeconds = moved - playedThrough.undelayedFirstBeatSeconds;
    rooms.setDelay({ ...playedThrough.pair, delaySeconds }, today());
  }
  // Graded now, the round trip is known and not looked for in the sound; a later listening may look for it again.
  const { assumedRoundTripSeconds, ...known } = details;
  return {
    take: finished(review, { ...known, firstBeatSeconds: moved }),
    known: null,
    changed: {
      firstBeatSeconds: moved,
      ...(assumedRoundTripSeconds !== undefined && {
        assumedRoundTripSeconds: assumedRoundTripSeconds + seconds,
      }),
    },
  };
}

/** The notes stay as they were heard. */
async function withOtherChart(review: Review, { setup, analysis }: SessionPorts): Promise<TakeToGrade> {
  const { heard, report, details: old } = review;
  const changed = chartChange(review)!;
  const isSetUp = setup.timeline.ok && setup.timeline.value.chart === old.chartText;
  if (isSetUp && changed.key !== undefined) setup.chooseKey(changed.key);
  const details = { ...old, ...changed };
  const known =
    heard === null
      ? null
      : withHeard(heard, await analysis.gradeNotes(heard, report.source, gradeOrder(details)));
  return { take: finished(review, details), known: known?.ok ? known.value : null, changed };
}

const finished = ({ id, content, playedThrough }: Review, details: TakeDetails): FinishedTake => ({
  id,
  details,
  content,
  ...(playedThrough && { playedThrough }),
});
