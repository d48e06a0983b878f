/** Whether a take is long enough to show a skilled player, against sums that can be done by hand. */
import { describe, expect, it } from 'vitest';
import { powerOfEvents, powerOfRotations } from '../../../../src/core/grade/chance/power.ts';
import { luckOf, type LuckEvent } from '../../../../src/core/grade/chance/draws.ts';

/** So many events of figures of their own, each met by luck half of the time. */
const coins = (count: number): readonly LuckEvent[] =>
  Array.from({ length: count }, (_, i) => ({ figure: String(i), hit: false, chance: 0.5 }));
const powerOfCoins = (count: number, skilled: number) =>
  powerOfEvents(count, luckOf(coins(count), []), count / 2, skilled);

describe('the power of events', () => {
  it('is the chance that a skilled player gets what luck gives in fewer than one take of twenty', () => {
    // Of five coins only five heads (1/32) are rarer than one in twenty: 0.9^5.
    expect(powerOfCoins(5, 0.9)(1)).toBeCloseTo(0.9 ** 5, 9);
    // Of four coins even four heads are not (1/16).
    expect(powerOfCoins(4, 0.9)(1)).toBe(0);
    // Of eight, seven or eight heads (9/256): 8 × 0.9^7 × 0.1 + 0.9^8.
    expect(powerOfCoins(8, 0.9)(1)).toBeCloseTo(8 * 0.9 ** 7 * 0.1 + 0.9 ** 8, 9);
  });

  it('is nothing without events', () => {
    expect(powerOfEvents(0, luckOf([], []), 0, 0.9)(1)).toBe(0);
    expect(powerOfEvents(0, luckOf([], []), 0, 0.9)(3)).toBe(0);
  });

  it('of a longer take is that of the normal distribution', () => {
    // 20 events ten times: luck gives 100 ± √50, of which 111.6 are rarer than one in twenty. A player of 60 % gets
    // 120 ± √48: (111.63 - 120) / 6.93 = -1.21, of which 88.7 % lie above (any normal table).
    expect(powerOfCoins(20, 0.6 + 0.025)(10)).toBeGreaterThan(0.9);
    const events = coins(20);
    const power = powerOfEvents(20, luckOf(events, []), 10, 0.6);
    // The share of a skilled player is 0.625 here: a quarter of what luck leaves. 125 ± 6.85: z = -1.953, 97.5 %.
    expect(power(10)).toBeCloseTo(0.975, 2);
  });

  it('grows more slowly where figures come back', () => {
    const back = coins(20).map((event) => ({ ...event, figure: 'one' }));
    const power = powerOfEvents(20, luckOf(back, []), 10, 0.9);
    // All 20 together are one coin: luck gives as much in every second take, however often it is played.
    expect(power(10)).toBe(0);
    expect(power(1)).toBe(0);
  });
});

describe('the power of rotations', () => {
  it('is that of the normal distribution', () => {
    // 100 notes, half of them by luck, variance 25: 58.22 are needed. A player of 65 % gets 65 ± 4.77: z = -1.42, 92.2 %.
    const power = powerOfRotations({ of: 100, worth: 100, chance: 0.5, variance: 25 }, 0.65);
    expect(power(1)).toBeCloseTo(0.922, 3);
    // Four times as much: 216.45 needed of 400, 260 ± 9.54: sure.
    expect(power(4)).toBeCloseTo(1, 4);
  });

  it('is less where the notes are worth fewer equal ones', () => {
    // Worth 25: 65 ± 9.54: z = -0.711, 76.1 %.
    const power = powerOfRotations({ of: 100, worth: 25, chance: 0.5, variance: 25 }, 0.65);
    expect(power(1)).toBeCloseTo(0.761, 3);
  });

  it('is nothing where more would be needed than there is', () => {
    expect(powerOfRotations({ of: 10, worth: 10, chance: 0.5, variance: 25 }, 0.9)(1)).toBe(0);
  });

  it('is sure or nothing for a player who always, or never, gets what is needed', () => {
    expect(powerOfRotations({ of: 10, worth: 10, chance: 0.5, variance: 1 }, 1)(1)).toBe(1);
    expect(powerOfRotations({ of: 10, worth: 10, chance: 1, variance: 0 }, 1)(1)).toBe(1);
  });
});
