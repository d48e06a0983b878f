/** Meter, downbeat, length and chords of a form, from chords that were heard with slips; and what the player sets in it. */
import { describe, expect, test } from 'vitest';
import { numberOfSymbol } from '../../../src/core/harmony/chord-names.ts';
import { proposeChart, type ChartPins } from '../../../src/core/harmony/propose.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { writeKey } from '../../../src/core/music/keys.ts';
import { beatsOf, heardAs } from './heard.ts';

// Common practice: the twelve-bar blues.
const BLUES = beatsOf('A7|A7|A7|A7|D7|D7|A7|A7|E7|D7|A7|E7');
const WALTZ = beatsOf('Am|Am|Dm|Dm|E7|E7|Am|Am', 3);

const times = (count: number, chorus: readonly string[]) =>
  Array.from({ length: count }, () => chorus).flat();
const lead = (beats: number) => new Array<string>(beats).fill('N.C.');

function proposed(symbols: readonly string[], pins?: ChartPins, wrong = 0.15) {
  const logs = heardAs(symbols, wrong, 8);
  return proposeChart({ logs, beats: symbols.length, tuningCents: 0 }, pins);
}
const chordsOf = (proposal: ReturnType<typeof proposed>) =>
  proposal!.bars.map(({ chords }) => chords.map(({ symbol }) => symbol).join(' '));

describe('a form that comes back', () => {
  test('is found with its downbeat, its choruses, its key, its chords and its name', () => {
    const proposal = proposed([...lead(3), ...times(4, BLUES)])!;
    expect(proposal).toMatchObject({ beatsPerBar: 4, downbeat: 3, choruses: 4 });
    expect(chordsOf(proposal)).toEqual('A7 A7 A7 A7 D7 D7 A7 A7 E7 D7 A7 E7'.split(' '));
    expect(writeKey(proposal.key)).toBe('A');
    expect(proposal.form).toMatchObject({ name: '12-bar blues', alike: 1 });
    expect(writeKey(proposal.form!.key)).toBe('A');
    const chart = parseChart(proposal.chart);
    expect(chart.ok && chart.value.sections.flatMap(({ bars }) => bars)).toHaveLength(12);
  });

  test('in three is told from one in four', () => {
    const proposal = proposed(times(3, WALTZ))!;
    expect(proposal).toMatchObject({ beatsPerBar: 3, downbeat: 0, choruses: 3 });
    expect(chordsOf(proposal)).toEqual('Am Am Dm Dm E7 E7 Am Am'.split(' '));
    expect(proposal.chart).toContain('meter: 3/4');
  });

  test('votes: what one chorus hears wrongly the others mend', () => {
    const right = 'A7 A7 A7 A7 D7 D7 A7 A7 E7 D7 A7 E7'.split(' ');
    expect(chordsOf(proposed(times(4, BLUES), {}, 0.4))).toEqual(right);
  });

  test('that ends within a chorus is still found', () => {
    expect(proposed([...times(2, BLUES), ...BLUES.slice(0, 21)])!.bars).toHaveLength(12);
  });
});

test('what goes through once is written out, and two chords in a bar are kept apart', () => {
  const symbols = beatsOf('Cmaj7 A7|Dm7 G7|Em7|A7|Dm7|G7|C|Fm');
  const proposal = proposed(symbols, {}, 0)!;
  expect(proposal.bars).toHaveLength(8);
  expect(chordsOf(proposal).slice(0, 3)).toEqual(['Cmaj7 A7', 'Dm7 G7', 'Em7']);
  expect(proposal.chart).toContain('Cmaj7 / A7 /');
  expect(proposal.form).toBeNull();
});

describe('what the player sets', () => {
  const heard = times(3, BLUES);

  test('holds, is sure, and leaves the others as they were', () => {
    const pins = { bars: new Map([[1, numberOfSymbol('D7')!]]) };
    const proposal = proposed(heard, pins)!;
    expect(chordsOf(proposal)).toEqual('A7 D7 A7 A7 D7 D7 A7 A7 E7 D7 A7 E7'.split(' '));
    expect(proposal.bars[1]!.sure).toBeGreaterThan(0.99);
    expect(proposal.form?.name).toBe('quick-change blues');
  });

  test('may be the length, the meter or the first bar', () => {
    expect(proposed(heard, { formBars: 24 })).toMatchObject({ choruses: 2 });
    expect(proposed(heard, { downbeat: 16 })!.downbeat).toBe(16);
    expect(proposed(heard, { downbeat: 16 })!.bars[0]!.chords[0]!.symbol).toBe('D7');
    expect(proposed(heard, { beatsPerBar: 3 })!.beatsPerBar).toBe(3);
  });
});

test('a bar that could be two chords is less sure, and names the other', () => {
  const unsure = times(2, beatsOf('C|Am|F|G'));
  const logs = heardAs(unsure, 0, 3);
  const size = logs.length / unsure.length;
  for (let b = 0; b < unsure.length; b++)
    if (b % 16 >= 4 && b % 16 < 8) {
      logs[b * size + numberOfSymbol('Am')!] = Math.log(0.45);
      logs[b * size + numberOfSymbol('Am7')!] = Math.log(0.42);
    }
  const { bars } = proposeChart({ logs, beats: unsure.length, tuningCents: 0 })!;
  expect(bars[1]!.sure).toBeLessThan(bars[0]!.sure);
  expect([bars[1]!.chords[0]!.symbol, ...bars[1]!.others]).toEqual(expect.arrayContaining(['Am', 'Am7']));
});

test('however sure a bar is, it names four other chords; one that was set names first what was heard in it', () => {
  const heard = times(3, BLUES);
  for (const { others } of proposed(heard)!.bars) expect(new Set(others).size).toBe(4);
  const set = proposed(heard, { bars: new Map([[1, numberOfSymbol('F#7')!]]) })!;
  expect(set.bars[1]!.chords[0]!.symbol).toBe('F#7');
  expect(set.bars[1]!.others).toHaveLength(4);
  expect(set.bars[1]!.others[0]).toBe('A7');
});

test('where no chord is heard nothing is proposed', () => {
  expect(proposed(lead(40), {}, 0)).toBeNull();
});
