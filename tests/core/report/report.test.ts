import { describe, expect, it } from 'vitest';
import { en } from '../../../src/core/words/en.ts';
import { de } from '../../../src/core/words/de.ts';
import { headlineOf } from '../../../src/core/report/sentences.ts';
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
      problem: {
        code: 'report.unreadable',
        facts: {
          field: 'tuning.referenceHz',
          wanted: { kind: 'number' },
          found: { kind: 'value', json: '"440"' },
        },
      },
    });
    expect(readReport(null).ok).toBe(false);
    expect(readReport({ ...report, version: 1 }).ok).toBe(false);
    expect(readReport({ ...report, version: 3 }).ok).toBe(false);
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
  const page = reportText(report, en, 'full');
  const short = reportText(report, en).split('\n');

  it('is no wider than a terminal and fits a screen; with all figures it is longer', () => {
    for (const lines of [short, page.split('\n')])
      expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(80);
    expect(short.length).toBeLessThan(25);
    expect(page.split('\n').length).toBeLessThanOrEqual(60);
  });

  it('is short: headline, advice, next, form, and the figures of the landings', () => {
    const places = ['landings', 'Advice', 'Next', '│ 1 C7', 'landings  ', 'More: --full'].map((part) =>
      short.findIndex((line) => line.includes(part)),
    );
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  it('opens with the headline and holds the form, thirds, palette, aims and advice', () => {
    expect(page.replace(/\n/g, ' ')).toContain(headlineOf(report, en));
    for (const part of ['│ 5 F7', 'Thirds', 'Palette', 'Aims', 'Next: ', 'Advice', '1. Bar'])
      expect(page).toContain(part);
  });

  it('names the chord of every bar, whether a chord arrives there or only stays', () => {
    for (const bar of ['│ 1 C7 ', '│ 4 C7  ', '│ 6 F7  ', '│12 C7  ']) expect(page).toContain(bar);
    const two = reportText(gradeLine('| C7 F7 | F7 / G7 / | % | N.C. |', [[0, 1, 64]], {}, 'C'), en);
    for (const bar of ['│ 2 F7 G7', '│ 3 F7 G7', '│ 4 N.C.']) expect(two).toContain(bar);
  });

  it('is drawn for an empty take and for a long list of beats too', () => {
    expect(reportText(gradeLine(TWELVE_BARS, []), en)).toContain('nothing to grade yet');
    const long = `| ${Array.from({ length: 40 }, (_, i) => ['C7', 'F7', 'G7'][i % 3]!).join(' | ')} |`;
    expect(reportText(gradeLine(long, wandering), en)).toContain('on the third');
  });
});

describe('the page in German', () => {
  const page = reportText(report, de, 'full');

  it('is no wider, and says the same with German names', () => {
    const lines = page.split('\n');
    expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(80);
    expect(lines.length).toBeLessThanOrEqual(65);
    for (const part of ['│ 5 F7', 'Terzen', 'Skalen', 'Ziele', 'Nächstes Ziel: ', 'Rat', '1. Takt', 'C-Dur'])
      expect(page).toContain(part);
    expect(page).not.toMatch(/\b(?:the|luck|landing|chord)\b/);
  });

  it('writes H for B and B for Bb', () => {
    const small = gradeLine(
      '| B7 | Bb7 |',
      [
        [0, 1, 63],
        [4, 1, 62],
      ],
      {},
      'B',
    );
    expect(reportText(small, de)).toMatch(/│ 1 H7.*│ 2 B7/);
    expect(explainNote(small, 1, de)).toMatchObject({ name: 'D4', reading: 'die Terz von B7' });
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
    expect(explainNote(small, 1, en)).toEqual({
      name: 'D4',
      reading: 'a scale tone over C7',
      place: 'bar 1, beat 4',
      sentences: [
        '9 of the chord, 2 of C major.',
        'In tune, on time.',
        'C7 sounds when it starts.',
        'It passes by step, all in one direction, between two chord tones (E4, C4).',
      ],
      numbers: ['Weight 0.15 by its length.'],
    });
    expect(explainNote(small, 2, en).sentences).toContain(
      'It starts 0.5 beat before F7, lasts until that arrives, and is one of its tones.',
    );
    expect(() => explainNote(small, 3, en)).toThrow(RangeError);
  });

  it('names a second note that sounds with it, at the reference', () => {
    const double = gradeLine('| C7 |', [[0, 1, 64, { second: 67.31 }]], { referenceHz: 448 }, 'C');
    expect(double.notes[0]!.second).toBe('G4');
    expect(explainNote(double, 0, en).sentences).toContain('G4 sounds with it.');
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
    expect(explainBar(small, 2, null, en)).toEqual(['A rest: nothing sounds at the change to F7 in bar 2.']);
    expect(explainBar(small, 3, null, en)).toBeNull();
    expect(explainBar(small, 1, null, en)!.filter((line) => line.startsWith('E4'))).toHaveLength(1);
    // Of one chorus alone: E is played in the first, C in the second.
    const heads = (chorus: number | null) =>
      explainBar(small, 1, chorus, en)!
        .filter((line) => !line.startsWith(' '))
        .map((line) => line.slice(0, 2));
    expect([heads(null), heads(1), heads(2)]).toEqual([['E4', 'C4'], ['E4'], ['C4']]);
    expect(explainBar(small, 1, 3, en)).toEqual(['Nothing was played in bar 1 of chorus 3.']);
  });

  it('tells with a bar the notes that land early in it or are held into it, in order of time', () => {
    const small = gradeLine('| C7 | F7 |', [
      [-0.5, 1, 64],
      [3.5, 1, 57],
      [7, 1.9, 60],
      [13, 1, 60],
    ]);
    const told = (bar: number) => explainBar(small, bar, null, en)!.filter((line) => !line.startsWith(' '));
    expect(told(1).map((line) => line.slice(0, 2))).toEqual(['E4', 'A3', 'C4']);
    expect(told(2).map((line) => line.slice(0, 2))).toEqual(['A3', 'C4', 'C4']);
    expect(explainBar(small, 1, null, en)!.join()).toContain('Held over the change to C7');
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
