import { expect, it } from 'vitest';
import { chance } from '../../../src/core/base/random.ts';
import { tappedBpm, withTap } from '../../../src/core/beats/tapped-tempo.ts';

const tap = (times: readonly number[]) => times.reduce<readonly number[]>(withTap, []);

it('tells the tempo from the fourth tap on', () => {
  expect(tappedBpm(tap([10, 10.5, 11]))).toBeNull();
  expect(tappedBpm(tap([10, 10.5, 11, 11.5]))).toBe(120);
});

it('stays within 2 % where a hand scatters by 20 ms', () => {
  const luck = chance(5);
  for (const bpm of [60, 96, 140, 200]) {
    const times = Array.from(
      { length: 12 },
      (_, i) => (i * 60) / bpm + 0.02 * (luck.next() + luck.next() - 1),
    );
    expect(Math.abs(tappedBpm(tap(times))! / bpm - 1)).toBeLessThan(0.02);
  }
});

it('begins anew after a pause, and follows a hand that settles on another tempo', () => {
  expect(tappedBpm(tap([0, 1, 2, 3, 9, 9.5, 10]))).toBeNull();
  const slowThenFast = [...[0, 1, 2, 3, 4], ...Array.from({ length: 12 }, (_, i) => 4.5 + i / 2)];
  expect(tappedBpm(tap(slowThenFast))).toBe(120);
});
