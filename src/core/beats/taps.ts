/**
 * Beats from taps: taps vary by some 20 ms and come early, so that they give the tempo, and the attacks of the
 * recording the exact times.
 */
import { upperMedian } from '../base/statistics.ts';
import { lastAtOrBefore } from '../chart/beat-maps.ts';
import { smoothed } from './intervals.ts';
import { LEAST_TAPS } from './tapped-tempo.ts';
import { CLOSEST_SECONDS } from './track.ts';

/**
 * An attack this near is the one that was tapped to: more than the variation of taps, less than an eighth note at 240
 * beats a minute.
 */
const NEAR_SECONDS = 0.06;

/**
 * The beats that were tapped: smoothed over the neighbouring taps, then all moved by the median distance to the attacks of
 * the recording, then each moved to its attack, where attacks are known.
 * @param taps seconds in the recording, in any order
 * @param attacks rising; empty where they are not known
 * @returns rising beats; empty for fewer than {@link LEAST_TAPS}
 */
export function beatsOfTaps(taps: readonly number[], attacks: readonly number[]): readonly number[] {
  const sorted = taps
    .toSorted((a, b) => a - b)
    .filter((tap, i, all) => i === 0 || tap - all[i - 1]! >= CLOSEST_SECONDS);
  if (sorted.length < LEAST_TAPS) return [];
  const smooth = smoothed(sorted);
  const early = upperMedian(smooth.flatMap((tap) => offsetTo(tap, attacks, NEAR_SECONDS * 2))) ?? 0;
  return smooth
    .map((tap) => tap + early)
    .map((tap) => tap + (offsetTo(tap, attacks, NEAR_SECONDS / 2)[0] ?? 0))
    .filter((tap, i, all) => tap >= 0 && (i === 0 || tap > all[i - 1]!));
}

/** From a place to the attack next to it, where one is near; else nothing. */
function offsetTo(seconds: number, attacks: readonly number[], near: number): readonly number[] {
  const before = lastAtOrBefore(attacks, seconds);
  const offsets = [attacks[before], attacks[before + 1]].flatMap((attack) =>
    attack === undefined ? [] : [attack - seconds],
  );
  const nearest = offsets.toSorted((a, b) => Math.abs(a) - Math.abs(b))[0];
  return nearest !== undefined && Math.abs(nearest) <= near ? [nearest] : [];
}
