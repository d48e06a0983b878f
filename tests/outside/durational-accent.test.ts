/**
 * Parncutt's durational accent (Music Perception 11, 1994, 409-464): (1 - e^(-IOI / 0.5 s))^2.
 * The values are the formula worked out by hand from a table of e^-x (Abramowitz and Stegun, table 4.4; from memory).
 */
import { describe, expect, it } from 'vitest';
import { durationalAccent } from '../../src/core/grade/assign/accent.ts';

describe('durational accent', () => {
  it.each([
    [0, 0],
    [0.1, 0.0329], // e^-0.2 = 0.81873
    [0.25, 0.1548], // e^-0.5 = 0.60653
    [0.5, 0.3996], // e^-1   = 0.36788
    [1, 0.7476], // e^-2   = 0.13534
    [1.5, 0.9029], // e^-3   = 0.04979
  ])('%f s between onsets weighs %f', (ioi, weight) => {
    expect(durationalAccent(ioi)).toBeCloseTo(weight, 4);
  });

  it('refuses time that runs backwards', () => {
    expect(() => durationalAccent(-0.1)).toThrow(RangeError);
  });
});
