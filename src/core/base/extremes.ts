/**
 * The largest and the smallest of many numbers. `Math.max(...values)` lays every value on the stack, which a hundred
 * thousand of them overflow.
 */

/** @param least what stands for none, and under what nothing counts */
export function largest(values: Iterable<number>, least = -Infinity): number {
  let most = least;
  for (const value of values) if (value > most) most = value;
  return most;
}

/** @param most what stands for none, and above what nothing counts */
export function smallest(values: Iterable<number>, most = Infinity): number {
  let least = most;
  for (const value of values) if (value < least) least = value;
  return least;
}
