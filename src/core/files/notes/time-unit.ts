/** Whether the times of a list are seconds, as they should be, or what other programs write. */
import { median } from '../../base/statistics.ts';

export type TimeUnit = 'seconds' | 'milliseconds' | 'samples';

/** Half of the steps of a list are longer than this in no line and no pulse that anybody plays, in seconds. */
const LONGEST_STEP_SECONDS = 20;
/** Steps of a tenth to four seconds are 100 to 4,000 milliseconds, and from 4,410 samples up at 44,100 Hz. */
const LONGEST_STEP_MILLISECONDS = 4000;
/** Fewer steps may be long for their own reasons. */
const LEAST_STEPS = 3;

/** @param times rising */
export function unitOf(times: readonly number[]): TimeUnit {
  const steps = times.slice(1).map((time, i) => time - times[i]!);
  const step = median(steps.filter((one) => one > 0));
  if (step === null || steps.length < LEAST_STEPS || step < LONGEST_STEP_SECONDS) return 'seconds';
  return step < LONGEST_STEP_MILLISECONDS ? 'milliseconds' : 'samples';
}
