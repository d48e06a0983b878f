/** What may be said of a share: the marks lie at 5 % (more than luck) and 0.5 % (less than luck). */
import { describe, expect, it } from 'vitest';
import { answer, skilledShare, type Question } from '../../../../src/core/grade/chance/verdict.ts';

/** A question of ten events that luck meets half of the time, and that a skilled player would be seen in from `from` times on. */
const question = (change: Partial<Question> = {}, from = Infinity): Question => ({
  ...{ events: 10, chance: 0.5, choruses: 2, power: (times: number) => (times >= from ? 0.8 : 0.79) },
  ...change,
});
const verdict = (upper: number, lower: number, change: Partial<Question> = {}, from = Infinity) =>
  answer(question(change, from), upper, lower).verdict;

describe('the answer of a share', () => {
  it('is more than luck where luck gives as much in less than one take of twenty', () => {
    expect(verdict(0.049, 1)).toBe('above chance');
    expect(verdict(0.05, 1)).toBe('too short to tell');
    expect(answer(question(), 0.01, 1)).toEqual({ verdict: 'above chance', moreChoruses: null });
  });

  it('is less than luck only where luck gives as little in less than one take of two hundred', () => {
    expect(verdict(1, 0.0049)).toBe('below chance');
    expect(verdict(1, 0.005)).toBe('too short to tell');
    expect(answer(question(), 1, 0.001)).toEqual({ verdict: 'below chance', moreChoruses: null });
  });

  it('is nothing for fewer than five events, however they fall', () => {
    expect(verdict(0.001, 1, { events: 5 })).toBe('above chance');
    expect(verdict(0.001, 1, { events: 4 })).toBe('too short to tell');
    expect(verdict(1, 0.001, { events: 4 })).toBe('too short to tell');
    expect(verdict(1, 1, { events: 4 }, 1)).toBe('too short to tell');
  });

  it('is no more than luck where the take would have shown a skilled player', () => {
    expect(verdict(0.3, 1, {}, 1)).toBe('at chance');
    expect(answer(question({}, 1), 0.3, 1)).toEqual({ verdict: 'at chance', moreChoruses: null });
  });

  it('is no more than luck where luck gives nearly all', () => {
    expect(verdict(0.3, 1, { chance: 0.95 })).toBe('at chance');
    expect(verdict(0.3, 1, { chance: 0.94 })).toBe('too short to tell');
    expect(verdict(0.3, 1, { chance: 0.95, events: 4 })).toBe('too short to tell');
  });

  it('says how many choruses more would tell', () => {
    // Two choruses were played: so many more make 2.5 times as much.
    expect(answer(question({}, 2.5), 0.3, 1)).toEqual({ verdict: 'too short to tell', moreChoruses: 3 });
    expect(answer(question({ events: 2 }, 1), 0.3, 1).moreChoruses).toBe(3);
    expect(answer(question({ choruses: 1 }, 25), 0.3, 1).moreChoruses).toBe(24);
    expect(answer(question({ choruses: 1 }, 25.5), 0.3, 1).moreChoruses).toBeNull();
  });

  it('says nothing of choruses where nothing goes round', () => {
    expect(answer(question({ choruses: null }, 1.5), 0.3, 1).moreChoruses).toBeNull();
    expect(answer(question({ choruses: 0 }, 1.5), 0.3, 1).moreChoruses).toBeNull();
  });
});

describe('the share of a skilled player', () => {
  it('is the share to reach, or a quarter of what luck leaves where luck comes near it', () => {
    expect(skilledShare(0.5, 0.2)).toBe(0.5);
    expect(skilledShare(0.5, 0.6)).toBeCloseTo(0.7, 12);
    expect(skilledShare(1, 1)).toBe(1);
    expect(skilledShare(1.2, 0.1)).toBe(1);
  });
});
