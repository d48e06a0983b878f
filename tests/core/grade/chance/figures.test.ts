/** Figures: what comes back in a line counts once. */
import { describe, expect, it } from 'vitest';
import { figureAt, differentBars } from '../../../../src/core/grade/chance/figures.ts';
import { chart, type Played } from '../line.ts';
import { gradedOver } from '../graded.ts';

const notes = (...classes: readonly number[]) => classes.map((pitchClass) => ({ pitchClass }));

describe('the figure that ends at a note', () => {
  it('is its pitch class with the two before it', () => {
    expect(figureAt(notes(0, 3, 4, 7, 9), 3)).toBe('3 4 7');
    expect(figureAt(notes(0, 3, 4, 7, 9), 2)).toBe('0 3 4');
  });

  it('is shorter at the beginning of a line that does not come back', () => {
    expect(figureAt(notes(0, 3, 4, 7, 9), 0)).toBe('0');
    expect(figureAt(notes(0, 3, 4, 7, 9), 1)).toBe('0 3');
  });

  it('is that of the next time where the beginning comes again with the two notes after it', () => {
    const riff = notes(0, 3, 4, 7, 0, 3, 4, 7);
    expect(figureAt(riff, 0)).toBe('4 7 0');
    expect(figureAt(riff, 1)).toBe('7 0 3');
    // The end of the line is near enough: two notes come after the first.
    expect(figureAt(notes(0, 3, 4, 7, 0, 3, 4), 0)).toBe('4 7 0');
    expect(figureAt(notes(0, 3, 4, 7, 0, 3), 0)).toBe('0');
    // Another note after it makes another beginning.
    expect(figureAt(notes(0, 3, 4, 7, 0, 3, 5, 7), 0)).toBe('0');
  });
});

describe('the figure of a bar', () => {
  const figures = (played: readonly Played[]) =>
    differentBars(gradedOver('| C7 | F7 |', played), chart('| C7 | F7 |'), 0.05);

  it('is one number for all bars with the same pitch classes in the same order', () => {
    expect(
      figures([
        [0, 1, 60],
        [1, 1, 64],
        [4, 1, 60],
        [8, 1, 72],
        [10, 1, 64],
        [12, 1, 64],
        [13, 1, 60],
      ]),
    ).toEqual([0, 0, 1, 0, 0, 2, 2]);
  });

  it('begins a little before its downbeat, by the tolerance', () => {
    // 40 ms before bar 2 a note belongs to bar 2; 60 ms before, to bar 1.
    expect(
      figures([
        [0, 1, 60],
        [3.92, 1, 64],
      ]),
    ).toEqual([0, 1]);
    expect(
      figures([
        [0, 1, 60],
        [3.88, 1, 64],
      ]),
    ).toEqual([0, 0]);
  });

  it('does not join pitch classes: 1 and 1 are not 11', () => {
    expect(
      figures([
        [0, 1, 61],
        [1, 1, 61],
        [4, 1, 71],
      ]),
    ).toEqual([0, 0, 1]);
  });
});
