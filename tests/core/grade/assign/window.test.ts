/** Notes near a place in time, found by halving. */
import { describe, expect, it } from 'vitest';
import { firstFrom, notesBetween, soundingUntil } from '../../../../src/core/grade/assign/window.ts';
import { gradedOver } from '../graded.ts';

const notes = gradedOver('| C7 |', [
  [0, 3, 60],
  [1, 0.5, 62],
  [1, 0.5, 64],
  [2, 0.5, 65],
  [4, 0.5, 67],
]);

describe('notes near a place', () => {
  it('begin with the first that starts at it or after it', () => {
    expect([-1, 0, 0.5, 1, 1.5, 2, 3, 4, 4.5].map((beat) => firstFrom(notes, beat))).toEqual([
      0, 0, 1, 1, 3, 3, 4, 4, 5,
    ]);
    expect(firstFrom([], 2)).toBe(0);
  });

  it('are those from one beat to another, both included', () => {
    const found = (from: number, to: number) => notesBetween(notes, from, to).map(({ index }) => index);
    expect(found(1, 2)).toEqual([1, 2, 3]);
    expect(found(1.1, 1.9)).toEqual([]);
    expect(found(-4, 0)).toEqual([0]);
    expect(found(2.5, 9)).toEqual([4]);
  });

  it('know how long any note up to them sounds on', () => {
    expect([...soundingUntil(notes)]).toEqual([3, 3, 3, 3, 4.5]);
  });
});
