/** The digits of the report's numbers. */
import { describe, expect, it } from 'vitest';
import { tidyNumbers } from '../../../src/core/report/tidy.ts';

describe('the digits of a report', () => {
  it('do not depend on the last bit of a sum', () => {
    // 245 of 1,024: its ten digits end in a 5, so that nine digits lie between two numbers.
    const exact = 245 / 1024;
    const below = exact - 2 ** -55;
    const above = exact + 2 ** -55;
    expect(new Set([below, exact, above]).size).toBe(3);
    expect(tidyNumbers([below, exact, above])).toEqual([0.239257813, 0.239257813, 0.239257813]);
  });

  it('are nine at most, and whole numbers stay whole', () => {
    expect(tidyNumbers({ share: 1 / 3, small: 1.23456789012e-12, count: 1234567890123 })).toEqual({
      share: 0.333333333,
      small: 1.23456789e-12,
      count: 1234567890123,
    });
  });

  it('are never -0, and what JSON can not hold is a fault of the caller', () => {
    expect(Object.is(tidyNumbers(-0), 0)).toBe(true);
    expect(() => tidyNumbers(Number.NaN)).toThrow(RangeError);
    expect(() => tidyNumbers(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});
