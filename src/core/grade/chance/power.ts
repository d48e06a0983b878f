/** The chance that a take of this length would have shown a player who reaches the share. */
import { normalTail, poissonBinomial, tailFrom, type Distribution } from '../../base/statistics.ts';
import type { Luck } from './draws.ts';
import { LUCK, skilledShare } from './verdict.ts';

/** The normal point of {@link LUCK}, one-sided. */
const Z_LUCK = 1.6448536;

/**
 * Of events that luck draws for. For the take as it is the distribution is exact; for longer ones it is taken to be
 * normal, figures that stand once being new in each chorus, and those that come back coming back again.
 */
export function powerOfEvents(
  of: number,
  luck: Luck,
  expected: number,
  shareToReach: number,
): (times: number) => number {
  const skilled = skilledShare(shareToReach, of === 0 ? 0 : expected / of);
  return (times) => {
    if (of === 0) return 0;
    if (times === 1) return exactPower(of, luck.total, skilled);
    const spread = Math.sqrt(times * luck.singleVariance + times * times * luck.repeatedVariance);
    return normalPower(times * expected + Z_LUCK * spread, times * of, times * of, skilled);
  };
}

/**
 * Of shares whose chance comes from rotations.
 * @param of whole weight of the events
 * @param worth how many equal events they are worth
 * @param variance of the hits over the rotations
 */
export function powerOfRotations(
  { of, worth, chance, variance }: { of: number; worth: number; chance: number; variance: number },
  shareToReach: number,
): (times: number) => number {
  const skilled = skilledShare(shareToReach, chance);
  return (times) =>
    normalPower(
      times * chance * of + Z_LUCK * Math.sqrt(times * variance),
      times * of,
      times * worth,
      skilled,
    );
}

/** How surely a player of this share reaches the least number of hits that luck seldom reaches. */
function exactPower(of: number, { from, weights }: Distribution, skilled: number): number {
  let place = weights.length;
  let tail = 0;
  while (place > 0 && tail + weights[place - 1]! < LUCK) tail += weights[--place]!;
  const needed = from + place;
  if (needed > of) return 0;
  return tailFrom({ from: 0, weights: poissonBinomial(new Array<number>(of).fill(skilled)) }, needed);
}

/** A sum of shares may differ from one by 1e-16, and the root of such a variance by 1e-8: less than this is nothing. */
const ROUNDING = 1e-6;

/** Chance that a player of a share gets to as much as is needed. */
function normalPower(needed: number, of: number, worth: number, skilled: number): number {
  if (needed > of + ROUNDING) return 0;
  const spread = of * Math.sqrt((skilled * (1 - skilled)) / worth);
  return spread <= ROUNDING
    ? Number(skilled * of >= needed - ROUNDING)
    : normalTail((needed - skilled * of) / spread);
}
