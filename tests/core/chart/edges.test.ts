/** The edges of charts and lists of beats: what a change of one sign in the code would alter. Facts are common practice. */
import { describe, expect, it } from 'vitest';
import { timelineAsRead } from '../../../src/core/chart/as-read.ts';
import { timelineFromBeats, timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { formChart } from '../../../src/core/chart/forms.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { practiceChart } from '../../../src/core/chart/practice-chart.ts';
import { swingShare } from '../../../src/core/chart/swing.ts';
import { instrumentOf } from '../../../src/core/music/instruments.ts';
import { readingOf } from '../../../src/core/music/reading.ts';
import { english } from '../../english.ts';
import { chartOf, playedText } from './charts.ts';

const problemOf = (text: string) => {
  const chart = parseChart(text);
  return chart.ok ? 'was read' : english(chart.problem);
};
const keyOf = (text: string) => `${chartOf(text).key.tonic} ${chartOf(text).key.mode}`;
const beats = (list: readonly (readonly [number, string])[]) =>
  timelineFromBeats(list.map(([timeSeconds, chord]) => ({ timeSeconds, chord })));
const listed = (list: readonly (readonly [number, string])[]) => {
  const made = beats(list);
  if (!made.ok) throw new Error(english(made.problem));
  return made.value;
};

describe('the swing of a feel', () => {
  it.each(['straight', 'funk', 'bossa', 'rock'] as const)('is none in %s, at any tempo', (feel) => {
    for (const bpm of [60, 120, 240]) expect(swingShare(feel, bpm)).toBe(0.5);
  });
  it('is a triplet in a slow blues at any tempo, and no more than a triplet in a shuffle', () => {
    for (const bpm of [50, 120, 280]) expect(swingShare('slow-blues', bpm)).toBeCloseTo(2 / 3, 12);
    expect(swingShare('shuffle', 80)).toBeCloseTo(2 / 3, 12);
    expect(swingShare('shuffle', 280)).toBeLessThan(0.6);
  });
});

describe('the key of a chart', () => {
  it('is that of a V that leads into a tonic at rest, also where the chart begins elsewhere', () => {
    expect(keyOf('| Dm7 | G7 | C | F |')).toBe('C major');
    expect(keyOf('| F | G7 | C | C |')).toBe('C major');
  });
  it('hears the V that turns back from the end to the beginning', () => {
    expect(keyOf('| Cm | Fm | Cm | G7 |')).toBe('C minor');
  });
  it('is never diminished', () => {
    expect(keyOf('| Bdim7 | C | Bdim7 | C |')).toBe('C major');
  });
});

describe('chart text', () => {
  it('is read to its longest, and refused beyond', () => {
    const longest = 200_000;
    const padded = (length: number) => '| C |'.padEnd(length, ' ');
    expect(problemOf(padded(longest))).toBe('was read');
    expect(problemOf(padded(longest + 1))).toMatch(/longer than 200000 characters/);
  });
  it('takes the passes of an ending in any order, and refuses a pass of no number', () => {
    expect(playedText(chartOf('|: C |[2,1 F :|[3 G |'))).toBe(playedText(chartOf('|: C |[1,2 F :|[3 G |')));
    expect(problemOf('|: C |[0 F :|')).toMatch(/\.$/);
    expect(problemOf('|: C |[0 F :|')).not.toBe('was read');
  });
  it('repeats twice at the least', () => {
    expect(playedText(chartOf('|: C :|'))).toBe('C:4 | C:4');
    expect(playedText(chartOf('|: C :| x2'))).toBe('C:4 | C:4');
    expect(problemOf('|: C :| x1')).not.toBe('was read');
  });
  it('takes the name of a form with spaces and other signs about the key', () => {
    const flat = formChart('minor blues', ' e♭ minor ');
    expect(flat.ok && flat.value.key.tonic).toBe('Eb');
    const sharp = formChart('minor blues', 'f♯');
    expect(sharp.ok && sharp.value.key.tonic).toBe('F#');
  });
});

describe('a chart through keys', () => {
  const cycle = practiceChart(chartOf('key: A\n[Head]\n| A7 | D7 |\n[Tag]\n| E7 | A7 |'), {
    loop: null,
    keys: 'fourths',
    seed: 1,
    keyCount: 3,
  });
  it('names each round by its section and its key, and sets the key from the second on', () => {
    expect(cycle.sections.map(({ name }) => name)).toEqual([
      'Head in A',
      'Tag',
      'Head in D',
      'Tag',
      'Head in G',
      'Tag',
    ]);
    expect(cycle.sections.map((section) => ('key' in section ? section.key?.tonic : undefined))).toEqual([
      undefined,
      undefined,
      'D',
      undefined,
      'G',
      undefined,
    ]);
  });
  it('names a round by its key alone where the section has no name', () => {
    const bare = practiceChart(chartOf('key: F#\n| F#7 | B7 |'), {
      loop: null,
      keys: 'fourths',
      seed: 1,
      keyCount: 2,
    });
    expect(bare.sections.map(({ name }) => name)).toEqual(['in F♯', 'in B']);
  });
});

describe('a list of beats', () => {
  it('goes on with a chord where a row is empty, and trims what stands about one', () => {
    const timeline = listed([
      [0, ' A7 '],
      [0.5, ''],
      [1, '  '],
      [1.5, 'D7'],
    ]);
    expect([0, 1, 2, 3].map((beat) => timeline.chordAt(beat)?.symbol)).toEqual(['A7', 'A7', 'A7', 'D7']);
    expect(timeline.spansBetween(0, 4).map(({ startBeat, endBeat }) => [startBeat, endBeat])).toEqual([
      [0, 3],
      [3, expect.any(Number)],
    ]);
  });
  it('has no chord before the first that is named', () => {
    const timeline = listed([
      [0, ''],
      [0.5, ''],
      [1, 'G7'],
      [1.5, ''],
    ]);
    expect(timeline.chordAt(1)).toBeNull();
    expect(timeline.spansBetween(0, 3).map(({ chord }) => chord?.symbol ?? null)).toEqual([null, 'G7']);
  });
  it('refuses beats out of order and accepts neighbours', () => {
    expect(
      beats([
        [1, 'C'],
        [0.5, ''],
      ]).ok,
    ).toBe(false);
    expect(
      beats([
        [1, 'C'],
        [1, ''],
      ]).ok,
    ).toBe(false);
  });
});

describe('a timeline as a transposing player reads it', () => {
  const alto = instrumentOf('alto-sax') ?? instrumentOf('alto');
  const chart = chartOf('key: C\n| C7 | F7 |');
  const sounding = timelineFromTempo(chart, { bpm: 120 });
  it('moves every chord up a major sixth for an alto, and nothing of its time', () => {
    if (alto === null) throw new Error('There is no alto saxophone among the instruments.');
    const read = timelineAsRead(sounding, readingOf(alto, 'written'));
    expect(read.key.tonic).toBe('A');
    expect(read.chordAt(0)?.symbol).toBe('A7');
    expect(read.spansBetween(0, 8).map(({ chord, startBeat }) => [chord?.symbol, startBeat])).toEqual([
      ['A7', 0],
      ['D7', 4],
    ]);
    expect(read.nextChange(0)?.chord?.symbol).toBe('D7');
    expect(read.nextChange(0)?.startBeat).toBe(sounding.nextChange(0)?.startBeat);
  });
});
