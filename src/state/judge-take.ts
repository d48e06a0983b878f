/** From a finished take to its report, kept with the take where the take is kept. */
import type { GradingEvents } from '../analysis/grade-samples.ts';
import { good, type Outcome } from '../core/outcome.ts';
import type { Report } from '../core/report/schema.ts';
import { gradeTake, type FinishedTake } from './finished-take.ts';
import type { Library } from './library.svelte.ts';
import type { AnalysisPort, TakesPort } from './ports.ts';

export interface JudgePorts {
  readonly analysis: AnalysisPort;
  readonly takes: TakesPort;
  readonly library: Library;
}

/**
 * @param report what was graded while it was played; null hears the whole take anew
 * @returns the report, whether or not it could be kept; what stood in the way of that is told
 */
export async function judgeTake(
  take: FinishedTake,
  report: Report | null,
  { analysis, takes, library }: JudgePorts,
  events: GradingEvents,
): Promise<Outcome<Report>> {
  const graded = report === null ? await gradeTake(take, analysis, events) : good(report);
  if (take.id === null) return graded;
  if (graded.ok) {
    const saved = await takes.saveReport(take.id, graded.value, graded.value.summary);
    if (!saved.ok) events.told(saved.sentence);
  }
  void library.load();
  return graded;
}
