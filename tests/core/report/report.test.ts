import { describe, expect, it } from 'vitest';
import { instrumentOf } from '../../../src/core/music/instruments.ts';
import { explainBar, explainNote } from '../../../src/core/report/explain.ts';
import { reportJsonSchema } from '../../../src/core/report/json-schema.ts';
import { readReport } from '../../../src/core/take/schema.ts';
import { reportText } from '../../../src/core/report/text.ts';
import { wrapText } from '../../../src/core/report/text-lines.ts';
import { tidyNumbers } from '../../../src/core/report/tidy.ts';
import { AIM_LADDER } from '../../../src/core/grade/aims/aims.ts';
import { gradeLine, TWELVE_BARS, type Played } from '../grade/line.ts';

/** Four choruses that wander, made by arithmetic: something of everything on the page. */
const wandering = Array.from({ length: 330 }, (_, i): Played => {
  const scale = [60, 63, 65, 66, 67, 70, 72, 64, 69];
  return [i * 0.58, i % 7 === 0 ? 1.1 : 0.5, scale[(i * i + 3 * i) % scale.length]!];
});
const report = gradeLine(
  TWELVE_BARS,
  wandering,
  { instrument: instrumentOf('guitar')!, aims: [AIM_LADDER[5]!] },
  'C',
);

describe('readReport', () => {
  it('names the field that is wrong', () => {
    const read = readReport({ ...report, tuning: { ...report.tuning, referenceHz: '440' } });
    expect(read).toMatchObject({
      ok: false,
      sentence:
        'Its field "tuning.referenceHz" is not what a Landfall report of version 1 holds (expected number, found "440"). ' +
        'Grade the take again to get a fresh report.',
    });
    expect(readReport(null).ok).toBe(false);
    expect(readReport({ ...report, version: 2 }).ok).toBe(false);
  });
});

describe('the JSON Schema', () => {
  const schema = reportJsonSchema() as {
    readonly $schema: string;
    readonly required: readonly string[];
    readonly properties: Readonly<
      Record<string, { readonly items?: { readonly required: readonly string[] } }>
    >;
  };

  it('asks for the fields that readers rely on', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.required).toEqual(
      expect.arrayContaining([
        'format',
        'version',
        'source',
        'tuning',
        'timeline',
        'notes',
        'landings',
        'summary',
      ]),
    );
    expect(schema.properties['notes']!.items!.required).toEqual(
      expect.arrayContaining([
        'onsetSeconds',
        'offsetSeconds',
        'midi',
        'name',
        'cents',
        'beat',
        'chord',
        'degree',
        'role',
        'keyDegree',
      ]),
    );
    expect(schema.properties['landings']!.items!.required).toEqual(
      expect.arrayContaining(['beat', 'chord', 'note', 'degree', 'role', 'offsetMs']),
    );
  });
});

describe('the page', () => {
  const page = reportText(report);
  const lines = page.split('\n');

  it('is no wider than a terminal and fits a screen', () => {
    expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(80);
    expect(lines.length).toBeLessThanOrEqual(45);
  });

  it('opens with the headline and holds the form, thirds, palette, aims and advice', () => {
    expect(page.replace(/\n/g, ' ')).toContain(report.summary.headline);
    for (const part of ['│ 5 F7', 'Thirds', 'Palette', 'Aims', 'Next: ', 'Advice', '1. Bar'])
      expect(page).toContain(part);
  });

  it('names the chord of every bar, whether a chord arrives there or only stays', () => {
    for (const bar of ['│ 1 C7 ', '│ 4 C7  ', '│ 6 F7  ', '│12 C7  ']) expect(page).toContain(bar);
    const two = reportText(gradeLine('| C7 F7 | F7 / G7 / | % | N.C. |', [[0, 1, 64]], {}, 'C'));
    for (const bar of ['│ 2 F7 G7', '│ 3 F7 G7', '│ 4 N.C.']) expect(two).toContain(bar);
  });

  it('is drawn for an empty take and for a long list of beats too', () => {
    expect(reportText(gradeLine(TWELVE_BARS, []))).toContain('nothing to grade yet');
    const long = `| ${Array.from({ length: 40 }, (_, i) => ['C7', 'F7', 'G7'][i % 3]!).join(' | ')} |`;
    expect(reportText(gradeLine(long, wandering))).toContain('on the third');
  });
});

describe('explaining', () => {
  it('tells a note in sentences', () => {
    const small = gradeLine(
      '| C7 | F7 |',
      [
        [2, 1, 64],
        [3, 0.5, 62],
        [3.5, 1, 60],
      ],
      {},
      'C',
    );
    expect(explainNote(small, 1)).toEqual([
      'D4 (+0 cents) in chorus 1, bar 1, beat 4: 9 of C7, a colour from the palette; 2 of C major.',
      'C7 stands where it starts.',
      'It is passing by step, all in one direction, between chord tones (E4, C4).',
      'On time against the nearest eighth, weight 0.15 by its length.',
    ]);
    expect(explainNote(small, 2)).toContain(
      'It starts 0.5 beat before F7, still sounds when that arrives, and is one of its tones.',
    );
    expect(() => explainNote(small, 3)).toThrow(RangeError);
  });

  it('names a second note that sounds with it, at the reference', () => {
    const double = gradeLine('| C7 |', [[0, 1, 64, { second: 67.31 }]], { referenceHz: 448 }, 'C');
    expect(double.notes[0]!.second).toBe('G4');
    expect(explainNote(double, 0)).toContain('G4 sounds with it.');
    const { second: _, ...old } = double.notes[0]!;
    expect(readReport({ ...double, notes: [old] })).toMatchObject({
      ok: true,
      value: { notes: [{ second: null }] },
    });
  });

  it('tells a bar, its open changes too, and knows the bars there are', () => {
    const small = gradeLine(
      '| C7 | F7 |',
      [
        [0, 1, 64],
        [8, 1, 60],
      ],
      {},
      'C',
    );
    expect(explainBar(small, 2)).toEqual(['Open: nothing sounds at the change to F7 in chorus 1, bar 2.']);
    expect(explainBar(small, 3)).toBeNull();
    expect(explainBar(small, 1)!.filter((line) => line.startsWith('E4'))).toHaveLength(1);
  });

  it('tells with a bar the notes that land early in it or are held into it, in order of time', () => {
    const small = gradeLine('| C7 | F7 |', [
      [-0.5, 1, 64],
      [3.5, 1, 57],
      [7, 1.9, 60],
      [13, 1, 60],
    ]);
    const told = (bar: number) => explainBar(small, bar)!.filter((line) => !line.startsWith(' '));
    expect(told(1).map((line) => line.slice(0, 2))).toEqual(['E4', 'A3', 'C4']);
    expect(told(2).map((line) => line.slice(0, 2))).toEqual(['A3', 'C4', 'C4']);
    expect(explainBar(small, 1)!.join()).toContain('Held over the change to C7 in chorus 2, bar 1');
  });
});

describe('small parts', () => {
  it('wraps at spaces', () => {
    expect(wrapText('one two three', 7)).toEqual(['one two', 'three']);
    expect(wrapText('', 7)).toEqual(['']);
  });

  it('keeps nine digits, no -0, and refuses what JSON can’t hold', () => {
    expect(tidyNumbers({ a: [1 / 3, -0], b: null, c: 'x', d: 1.23456789012e-12 })).toEqual({
      ...{ a: [0.333333333, 0], b: null, c: 'x', d: 1.23456789e-12 },
    });
    expect(() => tidyNumbers({ a: Number.NaN })).toThrow(RangeError);
  });
});
