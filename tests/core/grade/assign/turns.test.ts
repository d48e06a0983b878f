/** Player and band trade two bars each, the player first: beats 0 to 8 are the player's, 8 to 16 the band's. */
import { describe, expect, it } from 'vitest';
import { playersNote, playersNotes } from '../../../../src/core/grade/assign/turns.ts';
import { chart, line } from '../line.ts';

const whole = chart('| C7 | F7 | C7 | G7 |');
const traded = { ...whole, turnBars: 2 };
/** Onset and end in beats of what is left of a note; null where nothing is. */
const left = (beat: number, beats: number, anticipation: number | 'an eighth' = 0.5, over = traded) => {
  const note = playersNote(line([[beat, beats, 60]])[0]!, over, anticipation, 0.05);
  return note === null ? null : [note.onsetSeconds * 2, note.offsetSeconds * 2];
};

describe('a note where player and band trade bars', () => {
  it('is the player’s in the player’s turn, in every round', () => {
    expect(left(0, 1)).toEqual([0, 1]);
    expect(left(7, 1)).toEqual([7, 8]);
    expect(left(17, 1)).toEqual([17, 18]);
  });

  it('is cut where it rings into the band’s turn', () => {
    expect(left(7, 2.5)).toEqual([7, 8]);
  });

  it('is nobody’s in the band’s turn', () => {
    expect(left(8, 1)).toBeNull();
    expect(left(12, 1)).toBeNull();
    expect(left(15, 2)).toBeNull();
  });

  it('is the player’s when it runs ahead to the player’s turn and sounds into it', () => {
    expect(left(15.5, 1)).toEqual([15.5, 16.5]);
    expect(left(15.42, 1)).toEqual([15.42, 16.42]);
    expect(left(15.38, 1)).toBeNull();
    expect(left(15.5, 0.3)).toBeNull();
  });

  it('is played on the turn within the tolerance before it, however short', () => {
    expect(left(15.92, 0.02)).toEqual([15.92, expect.closeTo(15.94, 9)]);
    expect(left(15.88, 0.005)).toBeNull();
  });

  it('does not run ahead where no anticipation is allowed', () => {
    expect(left(15.95, 1, 0)).toBeNull();
  });

  it('is always the player’s where nobody trades', () => {
    expect(left(9, 1, 0.5, whole as typeof traded)).toEqual([9, 10]);
    const all = line([
      [0, 1, 60],
      [9, 1, 60],
    ]);
    expect(playersNotes(all, whole, 0.5)).toBe(all);
    expect(playersNotes(all, traded, 0.5)).toEqual([all[0]]);
  });
});
