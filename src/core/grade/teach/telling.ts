/** Numbers as a teacher says them: counts first, then per cent, and no digit the sample can't carry. */
import type { Share } from '../../take/schema.ts';

/** A share of fewer events is told by its counts alone: one event more or less would move it by ten points. */
const LEAST_FOR_PERCENT = 10;

/** @example percent(0.583) // '58 %' */
export const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** @example countOf({ hits: 7, of: 12, … }) // '7 of 12' */
export const countOf = ({ hits, of }: Pick<Share, 'hits' | 'of'>): string => `${hits} of ${of}`;

/** @example several(1, 'change') // 'change' */
export const several = (count: number, one: string): string => (count === 1 ? one : `${one}s`);

/** @example countAndPercent({ hits: 7, of: 12, … }) // '7 of 12 (58 %)' */
export function countAndPercent(share: Share): string {
  if (share.share === null || share.of < LEAST_FOR_PERCENT) return countOf(share);
  return `${countOf(share)} (${percent(share.share)})`;
}

/** The interval in words: "surely between 32 and 81 %". */
export function interval({ low, high }: Share): string | null {
  if (low === null || high === null) return null;
  return `${Math.round(low * 100)} to ${Math.round(high * 100)} %`;
}

/** What luck would give, in events, reckoned as the verdict reckons it: "luck gives about 1". */
export function luckClause({ expected: plain, fairExpected }: Share): string {
  const expected = fairExpected ?? plain;
  if (expected === null) return 'luck can’t be told';
  if (expected === 0) return 'luck gives none';
  if (expected < 0.5) return 'luck gives hardly one';
  return `luck gives about ${Math.round(expected)}`;
}

/** A p value as it is written: "p < 0.001", "p = 0.03". */
export function pValue(tail: number): string {
  if (tail < 0.001) return 'p < 0.001';
  return `p = ${tail < 0.01 ? tail.toFixed(3) : tail.toFixed(2)}`;
}
