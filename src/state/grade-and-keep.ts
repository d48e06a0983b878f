/** From a finished take to its report, kept with the take where the take is kept. */
import { foundIn, type GradingEvents } from '../analysis/grade-samples.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import type { Report } from '../core/take/schema.ts';
import { gradeTake, type FinishedTake } from './finished-take.ts';
import type { Library } from './library.svelte.ts';
import type { AnalysisPort, TakesPort } from './ports.ts';
import { gradeOrder, type TakeDetails } from './take.ts';

export interface GradingPorts {
  readonly analysis: AnalysisPort;
  readonly takes: TakesPort;
  readonly library: Library;
}

export interface GradedTake {
  /** With what the grading found out about it. */
  readonly take: FinishedTake;
  readonly report: Report;
}

/**
 * @param known what was graded while it was played; null hears the whole take anew
 * @param changed what of the take is not as it was kept
 * @returns take and report, whether or not they could be kept; a failure to keep them is a notice
 */
export async function gradeAndKeep(
  take: FinishedTake,
  known: Report | null,
  { analysis, takes, library }: GradingPorts,
  events: GradingEvents,
  changed: Partial<TakeDetails> = {},
): Promise<Outcome<GradedTake>> {
  const graded =
    known !== null && !mayHoldBand(take) ? good(known) : await gradeTake(take, known, analysis, events);
  if (!graded.ok) {
    if (take.id !== null) void library.load();
    return graded;
  }
  const report = graded.value;
  const change = { ...changed, ...correctedFirstBeat(take, report) };
  if (take.id !== null) {
    const saved = await takes.saveReport(take.id, report, report.summary, change);
    if (!saved.ok) events.message(saved.problem);
    void library.load();
  }
  return good({ take: { ...take, details: { ...take.details, ...change } }, report });
}

/** Whether the band may be in what the live listener heard: no sound check has measured if it came back. */
const mayHoldBand = ({ content }: FinishedTake): boolean =>
  content.kind === 'sound' && content.backing?.kind === 'band' && content.backing.path === null;

/** The first downbeat by the round trip that was found in the take, where it had been placed by an assumed one. */
function correctedFirstBeat(take: FinishedTake, { source }: Report) {
  if (!mayHoldBand(take) || !source.backing || take.details.assumedRoundTripSeconds === undefined) return {};
  const { firstBeatSeconds, assumedRoundTripSeconds } = foundIn(gradeOrder(take.details), source.backing);
  return assumedRoundTripSeconds === undefined ? {} : { firstBeatSeconds, assumedRoundTripSeconds };
}
