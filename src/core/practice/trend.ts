/** Whether a share rises over the takes of many days, or only goes up and down as every player's does. */
import { normalTail } from '../base/statistics.ts';

/** One take's count: so many of so many events. */
export interface TakeCount {
  readonly hits: number;
  readonly of: number;
}

export interface Trend {
  /** 'steady' says only that neither rise nor fall can be shown by these takes. */
  readonly direction: 'rising' | 'falling' | 'steady' | 'too few';
  /** Two-sided probability of a trend as strong where there is none; null where there are too few takes. */
  readonly p: number | null;
}

/** Fewer takes than this have no trend. */
const LEAST_TAKES = 4;
/** Fewer events than this in all say nothing of a share. */
const LEAST_EVENTS = 20;
/** A trend is told from here on. */
export const TREND_P = 0.05;

/**
 * The test for a linear trend in proportions (P. Armitage, Biometrics 11, 1955; W. G. Cochran, Biometrics 10, 1954),
 * over the takes in order, one step a take. A player's days differ more than coins do: the variance is multiplied by
 * the dispersion of the takes about the straight line, where that is above one (quasi-binomial, McCullagh and Nelder,
 * Generalized Linear Models, 1989, section 4.5), so that good and bad days are not told as progress.
 * @param takes the oldest first; those without events are left out
 * @param scores where each take stands in time, in any unit; one step a take unless given
 * @throws RangeError where scores and takes are not of one number
 */
export function findTrend(takes: readonly TakeCount[], scores?: readonly number[]): Trend {
  if (scores !== undefined && scores.length !== takes.length)
    throw new RangeError(`${takes.length} takes need as many scores, not ${scores.length}`);
  const counted = takes
    .map(({ hits, of }, i) => ({ hits, of, score: scores?.[i] ?? i }))
    .filter(({ of }) => of > 0);
  const events = counted.reduce((sum, { of }) => sum + of, 0);
  if (counted.length < LEAST_TAKES || events < LEAST_EVENTS) return { direction: 'too few', p: null };
  const z = armitageZ(counted, true);
  if (z === null) return { direction: 'steady', p: 1 };
  const p = 2 * normalTail(Math.abs(z));
  return { direction: p >= TREND_P ? 'steady' : z > 0 ? 'rising' : 'falling', p };
}

interface Scored extends TakeCount {
  readonly score: number;
}

/**
 * The statistic z of the trend test; null where every event or none was a hit, or all takes stand at one score.
 * @param widened whether the dispersion of the takes widens the variance
 */
export function armitageZ(takes: readonly Scored[], widened: boolean): number | null {
  const events = takes.reduce((sum, { of }) => sum + of, 0);
  const share = takes.reduce((sum, { hits }) => sum + hits, 0) / events;
  const mean = takes.reduce((sum, { of, score }) => sum + of * score, 0) / events;
  const spread = takes.reduce((sum, { of, score }) => sum + of * (score - mean) ** 2, 0);
  if (spread === 0 || share === 0 || share === 1) return null;
  const covariance = takes.reduce(
    (sum, { hits, of, score }) => sum + (hits - of * share) * (score - mean),
    0,
  );
  const slope = covariance / spread;
  const variance = share * (1 - share);
  const dispersion = widened
    ? takes.reduce(
        (sum, { hits, of, score }) =>
          sum + (hits - of * (share + slope * (score - mean))) ** 2 / (of * variance),
        0,
      ) /
      (takes.length - 2)
    : 1;
  return covariance / Math.sqrt(variance * spread * Math.max(1, dispersion));
}
