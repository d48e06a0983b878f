/** The report that is stored with a take. */
import { timelineOf } from './timeline-of-order.ts';
import { choiceOf, gradeOrder } from './grade-order.ts';
import { good, type Outcome } from './base/outcome.ts';
import { regradeVersion1 } from './regrade.ts';
import { readReport, type Report } from './take/schema.ts';
import type { TakeDetails } from './take/details-schema.ts';

/** Reads a kept report; one of version 1 is made anew by grading its notes again. */
export function readKeptReport({
  report: kept,
  details,
}: {
  readonly report: unknown;
  readonly details: TakeDetails;
}): Outcome<Report> {
  const report = readReport(kept);
  if (report.ok) return report;
  const order = gradeOrder(details);
  const timeline = timelineOf(order);
  if (!timeline.ok) return report;
  const again = regradeVersion1(kept, timeline.value, choiceOf(order));
  return again === null ? report : good(again);
}
