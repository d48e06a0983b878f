/** Notes cut at the changes they cross. At 120 bpm a beat lasts half a second. */
import { describe, expect, it } from 'vitest';
import { splitAtChanges } from '../../../../src/core/grade/assign/length-parts.ts';
import { chart, type Played } from '../line.ts';
import { gradedOver } from '../graded.ts';

const parts = (text: string, played: readonly Played[]) =>
  splitAtChanges(gradedOver(text, played), chart(text)).map(({ note, pitchClass, chord, seconds }) => [
    note,
    pitchClass,
    chord.symbol,
    seconds,
  ]);

describe('the parts of a note', () => {
  it('are cut where the chord changes, each as long as it sounds there', () => {
    expect(parts('| C7 | F7 |', [[2, 3, 64]])).toEqual([
      [0, 4, 'C7', 1],
      [0, 4, 'F7', 0.5],
    ]);
  });

  it('are one where a note stays over its chord', () => {
    expect(
      parts('| C7 | F7 |', [
        [1, 1, 64],
        [4, 4, 57],
      ]),
    ).toEqual([
      [0, 4, 'C7', 0.5],
      [1, 9, 'F7', 2],
    ]);
  });

  it('leave out what sounds over no chord, and before the first downbeat', () => {
    expect(parts('| C7 | N.C. | F7 |', [[3, 6, 60]])).toEqual([
      [0, 0, 'C7', 0.5],
      [0, 0, 'F7', 0.5],
    ]);
    expect(parts('| C7 |', [[-1, 2, 60]])).toEqual([[0, 0, 'C7', 0.5]]);
  });

  it('do not exist for a note without a length', () => {
    expect(parts('| C7 |', [[1, 0, 60]])).toEqual([]);
  });
});
