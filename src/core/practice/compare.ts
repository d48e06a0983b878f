/** Whether two takes differ by more than two takes of the same player do. */
import type { TakeCount } from './trend.ts';

export interface Difference {
  /** Two-sided, by Fisher's exact test; null where one of the two has no event. */
  readonly p: number | null;
  readonly told: 'better' | 'worse' | 'no difference' | 'too few';
}

/** Fewer events in either take say nothing. */
const LEAST_EVENTS = 5;
const TOLD_P = 0.05;

/**
 * Compares two shares by Fisher's exact test (R. A. Fisher, 1922): all tables with the same margins that are no likelier
 * than the one found.
 */
export function compareCounts(before: TakeCount, after: TakeCount): Difference {
  if (before.of === 0 || after.of === 0) return { p: null, told: 'too few' };
  const p = fisher(before, after);
  if (Math.min(before.of, after.of) < LEAST_EVENTS) return { p, told: 'too few' };
  if (p >= TOLD_P) return { p, told: 'no difference' };
  return { p, told: after.hits / after.of > before.hits / before.of ? 'better' : 'worse' };
}

/** Two-sided p of a table of two counts. */
function fisher(one: TakeCount, other: TakeCount): number {
  const hits = one.hits + other.hits;
  const all = one.of + other.of;
  const lowest = Math.max(0, hits - other.of);
  const highest = Math.min(hits, one.of);
  const weight = (k: number) =>
    Math.exp(chooseLog(one.of, k) + chooseLog(other.of, hits - k) - chooseLog(all, hits));
  const found = weight(one.hits);
  let p = 0;
  for (let k = lowest; k <= highest; k++) if (weight(k) <= found * (1 + 1e-9)) p += weight(k);
  return Math.min(1, p);
}

/** Logarithm of the number of ways to choose k of n. */
function chooseLog(n: number, k: number): number {
  let sum = 0;
  for (let i = 1; i <= k; i++) sum += Math.log((n - k + i) / i);
  return sum;
}
