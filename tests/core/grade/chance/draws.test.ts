/** One draw a figure, counted by hand. tests/outside/luck-by-figures.test.ts counts many by brute force. */
import { describe, expect, it } from 'vitest';
import { hitsOfFigure, luckOf, type PitchEvent } from '../../../../src/core/grade/chance/draws.ts';

const own = (shares: Readonly<Record<number, number>>) =>
  Array.from({ length: 12 }, (_, pitchClass) => shares[pitchClass] ?? 0);
const event = (change: Partial<PitchEvent>): PitchEvent => ({
  ...{ figure: 'a', hit: false, hasEarlier: false, hasLater: false, counts: () => false },
  ...change,
});
const onE = (figure: string) => event({ figure, counts: (drawn) => drawn === 4 });
const close = (weights: readonly number[]) => weights.map((weight) => expect.closeTo(weight, 12) as number);

describe('the hits of one figure', () => {
  it('come all together where it stands at like places', () => {
    expect(hitsOfFigure([onE('a'), onE('a')], own({ 4: 0.25, 7: 0.75 }))).toEqual(close([0.75, 0, 0.25]));
  });

  it('have a second go where a later note is taken if the first does not fit', () => {
    const early = event({
      hasLater: true,
      counts: (drawn, later) => (drawn === 4 ? true : later === 4),
    });
    // 1 - 3/4 × 3/4.
    expect(hitsOfFigure([early], own({ 4: 0.25, 7: 0.75 }))).toEqual(close([0.5625, 0.4375]));
  });

  it('have an earlier go likewise', () => {
    const late = event({ hasEarlier: true, counts: (drawn, _, earlier) => earlier === 4 && drawn === 7 });
    expect(hitsOfFigure([late], own({ 4: 0.25, 7: 0.75 }))).toEqual(close([0.8125, 0.1875]));
  });

  it('are none for a player without notes', () => {
    expect(hitsOfFigure([onE('a')], own({}))).toEqual([1, 0]);
  });

  it('have one draw for all where only chances are known: the rarer comes with the more likely', () => {
    const chance = (value: number) => ({ figure: 'a', hit: false, chance: value });
    expect(hitsOfFigure([chance(0.2), chance(0.5)], own({}))).toEqual(close([0.5, 0.3, 0.2]));
  });
});

describe('the luck of a take', () => {
  it('adds figures that are drawn by themselves', () => {
    const { total, singleVariance, repeatedVariance } = luckOf(
      [onE('a'), onE('b'), onE('c'), onE('c')],
      own({ 4: 0.5, 7: 0.5 }),
    );
    // a and b give 0 or 1, c gives 0 or 2.
    expect(total.from).toBe(0);
    expect(total.weights).toEqual(close([0.125, 0.25, 0.25, 0.25, 0.125]));
    expect(singleVariance).toBeCloseTo(0.5, 12);
    expect(repeatedVariance).toBeCloseTo(1, 12);
  });
});
