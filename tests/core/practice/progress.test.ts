import { describe, expect, it } from 'vitest';
import { chance } from '../../../src/core/base/random.ts';
import { measureProgress, type PractisedTake } from '../../../src/core/practice/progress.ts';
import { processorTime } from '../../processor-time.ts';

type Counts = readonly (readonly [from: string | null, to: string, hits: number, of: number])[];
const take = (id: string, day: number, counts: Counts, more: Partial<PractisedTake> = {}): PractisedTake => ({
  id,
  day,
  form: '12-bar blues',
  key: 'A',
  counts: {
    aim: null,
    changes: counts.map(([from, to, hits, of], bar) => ({ from, to, bar, hits, of })),
    choruses: [],
  },
  ...more,
});

describe('progress over days', () => {
  it('counts by form, key, chord and aim, each with its interval', () => {
    const aim = { id: 'third-on-arrival', hits: 7, of: 12, goal: 0.5 };
    const first = take('1', 1, [
      ['A7', 'D7', 3, 5],
      ['D7', 'A7', 4, 7],
    ]);
    const { byForm, byKey, byChord, byAim, takes, days } = measureProgress(
      [{ ...first, counts: { ...first.counts, aim } }],
      1,
    );
    expect([takes, days]).toEqual([1, 1]);
    // Wilson 95 % of 7 of 12: 0.320 to 0.807 (the check values of the definitions).
    for (const [row] of [byForm, byKey, byAim]) {
      expect(row).toMatchObject({ hits: 7, of: 12, direction: 'too few' });
      expect(row!.low).toBeCloseTo(0.32, 3);
      expect(row!.high).toBeCloseTo(0.807, 3);
    }
    expect(byChord.map(({ id, hits, of }) => [id, hits, of])).toEqual([
      ['D7', 3, 5],
      ['A7', 4, 7],
    ]);
    expect(byAim[0]!.goal).toBe(0.5);
  });

  it('tells a steady climb, and does not sell good and bad days as one', () => {
    const course = (hits: readonly number[]) =>
      measureProgress(
        hits.map((n, i) => take(String(i), i, [['A7', 'D7', n, 24]])),
        hits.length,
      ).byForm[0]!.direction;
    expect(course([3, 6, 9, 12, 15, 18, 21])).toBe('rising');
    expect(course([3, 20, 2, 19, 4, 21, 8, 22])).toBe('steady');
    expect(course([3, 20])).toBe('too few');
  });

  it('calls a trend on a page in one of twenty histories at most where nothing changes', () => {
    let told = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const luck = chance(seed);
      const takes = Array.from({ length: 10 }, (_, day) => {
        const count = () => Array.from({ length: 6 }, () => luck.next()).filter((x) => x < 0.4).length;
        return take(String(day), day, [
          ['A7', 'D7', count(), 6],
          ['D7', 'A7', count(), 6],
          ['A7', 'E7', count(), 6],
        ]);
      });
      const { byForm, byKey, byChord } = measureProgress(takes, 10);
      if (
        [...byForm, ...byKey, ...byChord].some(
          ({ direction }) => direction === 'rising' || direction === 'falling',
        )
      )
        told++;
    }
    expect(told / 200).toBeLessThanOrEqual(0.06);
  });

  it('asks today for the weakest changes that are due, in their form and key', () => {
    const takes = [
      take('1', 1, [
        ['A7', 'D7', 9, 10],
        ['D7', 'A7', 1, 10],
        ['E7', 'D7', 3, 10],
        ['A7', 'E7', 0, 2],
      ]),
      take('2', 2, [['Bb7', 'Eb7', 2, 10]], { key: 'Bb' }),
    ];
    const { today } = measureProgress(takes, 3);
    expect(today.map(({ from, to, key }) => `${from} ${to} in ${key}`)).toEqual([
      'D7 A7 in A',
      'Bb7 Eb7 in Bb',
      'E7 D7 in A',
    ]);
    expect(today[0]).toMatchObject({ hits: 1, of: 10, daysAgo: 2, takeId: '1', bar: 1 });
    // What missed its goal today is due tomorrow.
    expect(measureProgress(takes, 2).today.map(({ key }) => key)).toEqual(['A', 'A']);
  });

  it('reads three hundred takes in under a second', async () => {
    const luck = chance(7);
    const chords = ['A7', 'D7', 'E7', 'F#m7', 'B7', 'Bm7'];
    const takes = Array.from({ length: 300 }, (_, i) =>
      take(
        String(i),
        Math.floor(i / 4),
        chords.flatMap((from) =>
          chords.filter((to) => to !== from).map((to) => [from, to, Math.floor(luck.next() * 5), 4] as const),
        ),
        { form: `form ${i % 20}`, key: ['A', 'Bb', 'C', 'Eb'][i % 4]! },
      ),
    );
    const { result: progress, milliseconds } = await processorTime(() => measureProgress(takes, 80));
    expect(milliseconds).toBeLessThan(1000);
    expect(progress.byForm).toHaveLength(12);
    expect(progress.today).toHaveLength(3);
  });
});
