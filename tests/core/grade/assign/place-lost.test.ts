/** Sound that was lost while recording, placed in a form of two bars of four beats (at 120 bpm a bar lasts 2 s). */
import { describe, expect, it } from 'vitest';
import { placeLost } from '../../../../src/core/grade/assign/place-lost.ts';
import { chart } from '../line.ts';

const placed = (atSeconds: number) => placeLost([{ atSeconds, seconds: 0.25 }], chart('| C7 | F7 |'))[0];

describe('lost sound', () => {
  it('has its bar and chorus', () => {
    expect(placed(0)).toEqual({ atSeconds: 0, seconds: 0.25, beat: 0, bar: 0, chorus: 0 });
    expect(placed(2.5)).toEqual({ atSeconds: 2.5, seconds: 0.25, beat: 5, bar: 1, chorus: 0 });
    expect(placed(4)).toMatchObject({ beat: 8, bar: 0, chorus: 1 });
    expect(placed(11)).toMatchObject({ beat: 22, bar: 1, chorus: 2 });
  });

  it('has neither before the first downbeat', () => {
    expect(placed(-0.5)).toEqual({ atSeconds: -0.5, seconds: 0.25, beat: -1, bar: null, chorus: null });
  });
});
