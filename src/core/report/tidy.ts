/** The report's numbers, brought to digits that mean something. */

/**
 * Nine significant digits: a hundredth of a millisecond in two hours, and small p values whole. More would only
 * be the rounding of doubles, and differ between machines.
 */
const DIGITS = 9;

/**
 * A share of a power of two, as chances by exact count are, may lie just between two numbers of nine digits. The order of
 * a sum decides its last bit, which would decide the ninth digit: what is beyond this many digits is rounded off first.
 */
const DIGITS_OF_SUMS = 13;

/**
 * A copy in which every number has nine significant digits at most, and none is -0.
 * @throws RangeError for a number that JSON can't hold: NaN and the infinities are bugs in the grading
 */
export function tidyNumbers<T>(value: T): T {
  return tidy(value) as T;
}

const roundedTo = (digits: number, value: number): number => Number(value.toPrecision(digits));

function tidy(value: unknown): unknown {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new RangeError(`a report holds finite numbers, found ${value}`);
    return Number.isInteger(value) ? value + 0 : roundedTo(DIGITS, roundedTo(DIGITS_OF_SUMS, value)) + 0;
  }
  if (Array.isArray(value)) return value.map(tidy);
  if (typeof value === 'object' && value !== null) {
    return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, tidy(item)]));
  }
  return value;
}
