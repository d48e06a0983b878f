/** What luck draws from: the player's own notes. At 120 bpm a beat lasts half a second. */
import { describe, expect, it } from 'vitest';
import { pitchClassShares } from '../../../../src/core/grade/chance/chance.ts';
import { gradedOver } from '../graded.ts';

describe('a player’s own notes', () => {
  it('are shared out by length', () => {
    const shares = pitchClassShares(
      gradedOver('| C7 | F7 |', [
        [0, 1, 60],
        [1, 2, 64],
        [5, 1, 72],
      ]),
    );
    expect(shares).toEqual([0.5, 0, 0, 0, 0.5, 0, 0, 0, 0, 0, 0, 0]);
  });

  it('are counted over chords alone', () => {
    const shares = pitchClassShares(
      gradedOver('| C7 | N.C. |', [
        [0, 1, 62],
        [5, 1, 64],
      ]),
    );
    expect(shares[2]).toBe(1);
    expect(shares[4]).toBe(0);
  });

  it('are none where nothing sounded under a chord', () => {
    expect(pitchClassShares([])).toEqual(new Array(12).fill(0));
    expect(pitchClassShares(gradedOver('| C7 |', [[0, 0, 60]]))).toEqual(new Array(12).fill(0));
  });
});
