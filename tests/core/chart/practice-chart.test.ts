import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { practiceChart, type Practice } from '../../../src/core/chart/practice-chart.ts';
import { playedBars } from '../../../src/core/chart/play-order.ts';
import { writeChart } from '../../../src/core/chart/write-chart.ts';
import { chartOf, chartText, playedText } from './charts.ts';

const whole: Practice = { loop: null, keys: null, seed: 1 };
const practised = (text: string, practice: Partial<Practice>) =>
  practiceChart(chartOf(text), { ...whole, ...practice });
const loop = (fromBar: number, toBar: number) => ({ loop: { fromBar, toBar } });

describe('a loop', () => {
  const text = 'key: C\n[A]\n|: C6 | A7 :|\n[B]\n| Dm7 | G7 | C6 | C6 |';
  it('takes bars as they are played, in the chart’s key', () => {
    const chart = practised(text, loop(4, 6));
    expect(playedText(chart)).toBe('A7:4 | Dm7:4 | G7:4');
    expect(chart.key.tonic).toBe('C');
    expect(chart.sections.map(({ name }) => name)).toEqual(['A', 'B']);
  });
  it('is brought into the chorus', () => {
    expect(playedText(practised(text, loop(8, 99)))).toBe('C6:4');
    expect(playedText(practised(text, loop(-3, 1)))).toBe('C6:4');
    expect(playedText(practised(text, loop(5, 2)))).toBe('Dm7:4');
  });
});

describe('keys', () => {
  // Common practice: the circle of fourths from C.
  it('go round by fourths', () => {
    const roots = playedText(practised('key: C\n| C7 |', { keys: 'fourths' }));
    expect(roots.replaceAll('7:4', '')).toBe('C | F | Bb | Eb | Ab | Db | Gb | B | E | A | D | G');
  });
  it('rise by half steps', () => {
    const roots = playedText(practised('key: A minor\n| Am |', { keys: 'half steps' }));
    expect(roots.replaceAll('m:4', '')).toBe('A | Bb | B | C | C# | D | Eb | E | F | F# | G | G#');
  });
  it('come at random, each once, the same for the same seed', () => {
    const order = (seed: number) =>
      playedText(practised('key: C\n| C |', { keys: 'random', seed })).split(' | ');
    expect(order(3)).toEqual(order(3));
    expect(order(3)).not.toEqual(order(4));
    expect(new Set(order(3)).size).toBe(12);
    expect(order(3)[0]).toBe('C:4');
  });
});

describe('any practice', () => {
  it('is a chart that reads back, as long as it should be', () => {
    const practices = fc.record({
      loop: fc.option(
        fc.record({ fromBar: fc.integer({ min: 1, max: 9 }), toBar: fc.integer({ min: 1, max: 9 }) }),
      ),
      keys: fc.constantFrom(null, 'fourths' as const, 'half steps' as const, 'random' as const),
      seed: fc.nat(1000),
    });
    fc.assert(
      fc.property(chartText, practices, (text, practice) => {
        const chart = practiceChart(chartOf(text), practice);
        const back = chartOf(writeChart(chart));
        expect(playedText(back)).toBe(playedText(chart));
        expect(back.key).toEqual(chart.key);
        const looped = practiceChart(chartOf(text), { ...practice, keys: null });
        const rounds = practice.keys === null ? 1 : 12;
        expect(playedBars(chart)).toHaveLength(rounds * playedBars(looped).length);
      }),
      { numRuns: 60 },
    );
  });
});
