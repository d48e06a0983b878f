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

/** Parts of a distribution that are smaller than this are nothing to any tail that is printed. */
const NEGLIGIBLE = 1e-30;

/** How likely each whole number from `from` on is: element k is the chance of `from + k`. */
export interface Distribution {
  readonly from: number;
  readonly weights: readonly number[];
}

/** A number that is surely this. */
export const certain = (value: number): Distribution => ({ from: value, weights: [1] });

/**
 * The sum of two independent whole numbers, by convolution. Every term is a product of non-negative numbers, so
 * nothing cancels; ends below 1e-30 are cut, so that thousands of events stay quick.
 */
export function addIndependent(one: Distribution, other: Distribution): Distribution {
  const sums = new Array<number>(one.weights.length + other.weights.length - 1).fill(0);
  const seconds = other.weights.flatMap((weight, place) => (weight === 0 ? [] : [{ weight, place }]));
  for (let i = 0; i < one.weights.length; i++) {
    const weight = one.weights[i]!;
    if (weight === 0) continue;
    for (const second of seconds) sums[i + second.place] = sums[i + second.place]! + weight * second.weight;
  }
  let start = 0;
  let end = sums.length;
  while (start < end - 1 && sums[start]! < NEGLIGIBLE) start++;
  while (end > start + 1 && sums[end - 1]! < NEGLIGIBLE) end--;
  return { from: one.from + other.from + start, weights: sums.slice(start, end) };
}

/**
 * The sum of many independent whole numbers, in nearly linear time: the short ones are added in pairs, then the pairs,
 * so that what is added is always of a like length. Those that are long and nearly empty (one that is 0 or 500) come
 * last, one after another.
 */
export function addAllIndependent(parts: readonly Distribution[]): Distribution {
  const sparse: Distribution[] = [];
  let dense: Distribution[] = [];
  for (const part of parts) (isSparse(part) ? sparse : dense).push(part);
  while (dense.length > 1) {
    const pairs: Distribution[] = [];
    dense.sort((a, b) => a.weights.length - b.weights.length);
    for (let i = 0; i + 1 < dense.length; i += 2) pairs.push(addIndependent(dense[i]!, dense[i + 1]!));
    if (dense.length % 2 === 1) pairs.push(dense.at(-1)!);
    dense = pairs;
  }
  return sparse.reduce(addIndependent, dense[0] ?? certain(0));
}

/** Of so many weights hardly any are not nought. */
const SPARSE_SHARE = 0.25;

const isSparse = ({ weights }: Distribution): boolean =>
  weights.reduce((count, weight) => count + Number(weight !== 0), 0) < SPARSE_SHARE * weights.length;

/**
 * Distribution of the number of successes among independent events of different probabilities (Poisson binomial):
 * element k is the probability of exactly k. Computed by convolution; every term is a sum of products of non-negative
 * numbers, so that no digits are lost.
 * @throws RangeError for a chance outside 0..1
 * @example poissonBinomial([0.1, 0.2, 0.3])[0] // 0.504
 */
export function poissonBinomial(chances: readonly number[]): readonly number[] {
  const { from, weights } = addAllIndependent(
    chances.map((chance) => {
      if (!(chance >= 0 && chance <= 1)) throw new RangeError(`a chance must lie in 0..1, found ${chance}`);
      return { from: 0, weights: [1 - chance, chance] };
    }),
  );
  return Array.from({ length: chances.length + 1 }, (_, hits) => weights[hits - from] ?? 0);
}

/** Chance of `value` or more, summed from the small end. */
export function tailFrom({ from, weights }: Distribution, value: number): number {
  if (value <= from) return 1;
  return Math.min(
    1,
    weights.slice(value - from).reduceRight((sum, weight) => sum + weight, 0),
  );
}

/** Chance of `value` or less. */
export function tailTo({ from, weights }: Distribution, value: number): number {
  return Math.min(
    1,
    weights.slice(0, Math.max(0, value - from + 1)).reduce((sum, weight) => sum + weight, 0),
  );
}

/** Mean and variance. */
export function momentsOf({ from, weights }: Distribution): {
  readonly mean: number;
  readonly variance: number;
} {
  const mean = weights.reduce((sum, weight, k) => sum + weight * (from + k), 0);
  const variance = weights.reduce((sum, weight, k) => sum + weight * (from + k - mean) ** 2, 0);
  return { mean, variance };
}

/**
 * p values corrected for their number (S. Holm, Scand. J. Statistics 6, 1979): the smallest times their number, the next
 * times one less, and none smaller than the one before. Compared with 5 %, the chance of one false mark or more
 * among all of them is 5 % at most.
 * @example holm([0.01, 0.04, 0.03]) // [0.03, 0.06, 0.06]
 */
export function holm(pValues: readonly number[]): readonly number[] {
  const order = pValues.map((p, index) => ({ p, index })).sort((a, b) => a.p - b.p);
  const corrected = new Array<number>(pValues.length).fill(1);
  let least = 0;
  order.forEach(({ p, index }, rank) => {
    least = Math.max(least, Math.min(1, p * (pValues.length - rank)));
    corrected[index] = least;
  });
  return corrected;
}

/** Chance that a standard normal number is above z, to 1e-7 (M. Abramowitz and I. Stegun, 1964, formula 7.1.26). */
export function normalTail(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const series =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = (series * Math.exp(-x * x)) / 2;
  return z >= 0 ? tail : 1 - tail;
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
