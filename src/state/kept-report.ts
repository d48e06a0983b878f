/** The report that is stored with a take. */
import { choiceOf, timelineOf } from '../analysis/order.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import { regradeVersion1 } from '../core/regrade.ts';
import { readReport, type Report } from '../core/take/schema.ts';
import { gradeOrder, type StoredTake } from './take.ts';

/** Reads a kept report; one of version 1 is made anew by grading its notes again. */
export function readKeptReport({
  report: kept,
  details,
}: Pick<StoredTake, 'report' | 'details'>): Outcome<Report> {
  const report = readReport(kept);
  if (report.ok) return report;
  const order = gradeOrder(details);
  const timeline = timelineOf(order);
  if (!timeline.ok) return report;
  const again = regradeVersion1(kept, timeline.value, choiceOf(order));
  return again === null ? report : good(again);
}
