/** Which rotations of a chart are graded: every one of a short chart, an even choice of a long one's. */
import { chance } from '../../base/random.ts';

/**
 * More rotations are not worth their time: the mean share of so many differs from that of all by about 0.01, and every
 * rotation grades all notes again. A form of eight bars that goes through all twelve keys still has every rotation.
 */
export const MOST_ROTATIONS = 128;

/**
 * The rotations, each as the number of bars by which the chart begins later, rising from 0 (the chart as it stands). Of a
 * long chart one is drawn from each of `MOST_ROTATIONS` equal stretches: even steps could coincide with a form that repeats
 * after as many bars.
 */
export function rotationsAsked(bars: number): readonly number[] {
  if (bars <= MOST_ROTATIONS) return Array.from({ length: bars }, (_, rotation) => rotation);
  const { next } = chance(bars);
  return Array.from({ length: MOST_ROTATIONS }, (_, part) =>
    part === 0 ? 0 : Math.floor(((part + next()) * bars) / MOST_ROTATIONS),
  );
}
