/** R. Parncutt, Music Perception 11, 1994: (1 - e^(-IOI / 0.5 s))^2; the values were worked out by hand from it. */
import { describe, expect, it } from 'vitest';
import { durationalAccent } from '../../../../src/core/grade/assign/accent.ts';

describe('the accent of a length', () => {
  it('grows towards one', () => {
    expect(durationalAccent(0)).toBe(0);
    expect(durationalAccent(0.5)).toBeCloseTo((1 - Math.exp(-1)) ** 2, 12); // 0.3996
    expect(durationalAccent(0.5)).toBeCloseTo(0.3996, 4);
    expect(durationalAccent(1)).toBeCloseTo(0.7476, 4);
    expect(durationalAccent(10)).toBeCloseTo(1, 6);
  });

  it('is not defined for less than no time', () => {
    expect(() => durationalAccent(-0.001)).toThrow('0 s or more, found -0.001');
    expect(() => durationalAccent(Number.NaN)).toThrow(RangeError);
  });
});
