/**
 * The uncertainty of a share, and the probability of reaching it by luck. Exact or in closed form, nothing is simulated.
 */

/** The 97.5 % point of the standard normal distribution: two-sided 95 %. */
const Z_95 = 1.959963984540054;

/** An interval of a share, within 0 to 1. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * Wilson score interval, 95 %, of `hits` out of `of` (E. B. Wilson, J. Am. Stat. Assoc. 22, 1927).
 * Unlike the normal approximation it stays within 0 to 1 and is accurate for a dozen events.
 * Both may be fractions (weighted shares); null for no events.
 * @throws RangeError unless 0 <= hits <= of
 * @example wilsonInterval(7, 12) // { low: 0.320, high: 0.807 }
 */
export function wilsonInterval(hits: number, of: number): Interval | null {
  if (!(hits >= 0 && hits <= of)) throw new RangeError(`hits must lie in 0..${of}, found ${hits}`);
  if (of === 0) return null;
  const share = hits / of;
  const z2 = Z_95 * Z_95;
  const middle = (share + z2 / (2 * of)) / (1 + z2 / of);
  const half = (Z_95 / (1 + z2 / of)) * Math.sqrt((share * (1 - share)) / of + z2 / (4 * of * of));
  return {
    low: hits === 0 ? 0 : Math.max(0, middle - half),
    high: hits === of ? 1 : Math.min(1, middle + half),
  };
}

/**
 * Distribution of the number of successes among independent events of different probabilities (Poisson binomial):
 * element k is the probability of exactly k. Computed by convolution, one event after another; every term is a sum of
 * products of non-negative numbers, so that no digits are lost.
 * @throws RangeError for a chance outside 0..1
 * @example poissonBinomial([0.1, 0.2, 0.3])[0] // 0.504
 */
export function poissonBinomial(chances: readonly number[]): readonly number[] {
  let distribution = [1];
  for (const chance of chances) {
    if (!(chance >= 0 && chance <= 1)) throw new RangeError(`a chance must lie in 0..1, found ${chance}`);
    const next = new Array<number>(distribution.length + 1).fill(0);
    distribution.forEach((weight, k) => {
      next[k] = next[k]! + weight * (1 - chance);
      next[k + 1] = next[k + 1]! + weight * chance;
    });
    distribution = next;
  }
  return distribution;
}

/**
 * Probability of `hits` successes or more (the exact upper tail).
 * Summed from the smallest term, so that a tail of 1e-12 keeps its digits.
 */
export function upperTail(chances: readonly number[], hits: number): number {
  if (hits <= 0) return 1;
  const tail = poissonBinomial(chances)
    .slice(hits)
    .reduceRight((sum, weight) => sum + weight, 0);
  return Math.min(1, tail);
}

/** Probability of `hits` successes or fewer (the exact lower tail). */
export function lowerTail(chances: readonly number[], hits: number): number {
  const tail = poissonBinomial(chances)
    .slice(0, Math.max(0, hits + 1))
    .reduce((sum, weight) => sum + weight, 0);
  return Math.min(1, tail);
}

/** Middle value, the mean of the two middle ones for an even count; null for none. */
export function median(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/**
 * Middle value, the larger of the two middle ones for an even count, so that it is always one of them; null for none.
 */
export function upperMedian(values: readonly number[]): number | null {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? null;
}

/**
 * The value below which this share of the values lies, interpolated linearly between two values (type 7 of Hyndman and
 * Fan, The American Statistician 1996).
 * @throws RangeError for no values, or for a share outside 0 to 1
 * @example quantile([1, 2, 3, 4], 0.25) // 1.75
 */
export function quantile(values: readonly number[], share: number): number {
  if (values.length === 0) throw new RangeError('a quantile needs at least one value');
  if (!(share >= 0 && share <= 1)) throw new RangeError(`a quantile's share is 0 to 1, not ${share}`);
  const sorted = values.slice().sort((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below]! + (place - below) * (sorted[above]! - sorted[below]!);
}

/** Standard deviation of a sample (n - 1); null below two values. */
export function standardDeviation(values: readonly number[]): number | null {
  if (values.length < 2) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1));
}

/**
 * The number of equally weighted events that carry as much information: (sum w)^2 / sum w^2 (L. Kish, Survey Sampling,
 * 1965). Notes of different lengths carry less than as many notes of one length.
 */
export function effectiveCount(weights: readonly number[]): number {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const squares = weights.reduce((total, weight) => total + weight * weight, 0);
  return squares === 0 ? 0 : (sum * sum) / squares;
}
