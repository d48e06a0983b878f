/**
 * The distribution of a sum of scores, where each part of the sum takes one of its rotations independently of the others,
 * all rotations equally likely. It is exact, on a fine grid, for few parts; for many it is taken as normal.
 */
import { addIndependent, certain, normalTail, tailFrom, tailTo } from '../../base/statistics.ts';

export interface RotatedSum {
  /** Chance of a sum as high as the one played, or higher. */
  readonly upper: number;
  /** Chance of one as low or lower. */
  readonly lower: number;
  readonly variance: number;
}

/** More parts than this make a sum that is normal enough, and a convolution that is slow. */
export const MOST_EXACT_PARTS = 48;
/** Steps of the grid over the whole range of the sum. */
const GRID_STEPS = 1500;

/**
 * @param rotations the score of every part in each rotation
 * @param played the scores as played
 */
export function sumOfRotations(rotations: readonly Float64Array[], played: Float64Array): RotatedSum {
  const parts = Array.from(played, (_, part) => rotations.map((scores) => scores[part]!));
  const moments = parts.map((scores) => {
    const mean = scores.reduce((sum, score) => sum + score, 0) / scores.length;
    const variance = scores.reduce((sum, score) => sum + (score - mean) ** 2, 0) / scores.length;
    return { mean, variance };
  });
  const variance = moments.reduce((sum, part) => sum + part.variance, 0);
  const total = played.reduce((sum, score) => sum + score, 0);
  if (parts.length > MOST_EXACT_PARTS)
    return normalSum(
      total,
      moments.reduce((sum, part) => sum + part.mean, 0),
      variance,
    );
  if (!(variance > SAME_SCORE)) return CERTAIN;
  const range = parts.reduce((sum, scores) => sum + Math.max(...scores) - Math.min(...scores), 0);
  const steps = (score: number) => Math.round((score / range) * GRID_STEPS);
  const distribution = parts.reduce(
    (sum, scores) => addIndependent(sum, evenly(scores.map(steps))),
    certain(0),
  );
  const at = played.reduce((sum, score) => sum + steps(score), 0);
  return { upper: tailFrom(distribution, at), lower: tailTo(distribution, at), variance };
}

/** The sum of many parts, which is normal enough. @param total the sum as played */
export function normalSum(total: number, mean: number, variance: number): RotatedSum {
  if (!(variance > SAME_SCORE)) return CERTAIN;
  const z = (total - mean) / Math.sqrt(variance);
  return { upper: normalTail(z), lower: normalTail(-z), variance };
}

const SAME_SCORE = 1e-9;

/** Every rotation gives the same scores: no other sum is possible. */
const CERTAIN: RotatedSum = { upper: 1, lower: 1, variance: 0 };

/** Every value as likely as every other. */
function evenly(values: readonly number[]): { readonly from: number; readonly weights: readonly number[] } {
  const from = Math.min(...values);
  const weights = new Array<number>(Math.max(...values) - from + 1).fill(0);
  for (const value of values) weights[value - from] = weights[value - from]! + 1 / values.length;
  return { from, weights };
}
