import { describe, expect, it } from 'vitest';
import { findDue, type PracticeItem } from '../../../src/core/practice/spacing.ts';

const item = (
  id: string,
  days: readonly (readonly [day: number, hits: number, of: number])[],
): PracticeItem => ({
  id,
  goal: 0.5,
  history: days.map(([day, hits, of]) => ({ day, hits, of })),
});

describe('what is due today', () => {
  it('is what missed its goal yesterday, and not what reached it', () => {
    const items = [item('weak', [[9, 1, 10]]), item('good', [[9, 9, 10]])];
    expect(findDue(items, 10).map(({ id }) => id)).toEqual(['weak']);
    expect(findDue(items, 11).map(({ id }) => id)).toEqual(['weak', 'good']);
  });

  it('comes back after twice the days each time it goes well, and the next day after it did not', () => {
    const good = (days: readonly number[]) =>
      item(
        'good',
        days.map((day) => [day, 9, 10] as const),
      );
    expect(findDue([good([1, 3])], 6)).toEqual([]);
    expect(findDue([good([1, 3])], 7)).toHaveLength(1);
    expect(findDue([good([1, 3, 7])], 14)).toEqual([]);
    expect(findDue([good([1, 3, 7])], 15)).toHaveLength(1);
    const missed = item('missed', [
      [1, 9, 10],
      [3, 9, 10],
      [7, 2, 10],
    ]);
    expect(findDue([missed], 8)).toHaveLength(1);
  });

  it('names the weakest first, and three at most', () => {
    const items = [
      item('half', [[1, 5, 20]]),
      item('none', [[1, 0, 20]]),
      item('some', [[1, 2, 20]]),
      item('few', [[1, 1, 2]]),
    ];
    const due = findDue(items, 5);
    expect(due.map(({ id }) => id)).toEqual(['none', 'some', 'few']);
    expect(due[0]).toMatchObject({ share: 0, low: 0, overdueDays: 3 });
  });

  it('takes what was never played as due, without a share', () => {
    expect(findDue([item('new', [])], 5)).toEqual([
      { id: 'new', overdueDays: Infinity, share: null, low: null, high: null },
    ]);
  });
});
