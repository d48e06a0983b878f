import { english } from '../../english.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseChart, readChart } from '../../../src/core/chart/parse-chart.ts';
import { writeChart } from '../../../src/core/chart/write-chart.ts';
import { chartOf, chartText, playedText, refusalOf } from './charts.ts';

describe('bars', () => {
  it.each([
    ['| G7 | C7 | G7 | G7 |', 'G7:4 | C7:4 | G7:4 | G7:4'],
    ['G7 | C7', 'G7:4 | C7:4'],
    ['| Dm7 G7 | Cmaj7 |', 'Dm7:2 G7:2 | Cmaj7:4'],
    ['| C7 F7 G7 |', 'C7:2 F7:1 G7:1'],
    ['| C7 / / G7 |', 'C7:3 G7:1'],
    ['| C7 . . G7 |', 'C7:3 G7:1'],
    ['| C7 /// |', 'C7:4'],
    ['| C7 | / / F7 / |', 'C7:4 | C7:2 F7:2'],
    ['| C7 | / |', 'C7:4 | C7:4'],
    ['| C7 F7 | % | % |', 'C7:2 F7:2 | C7:2 F7:2 | C7:2 F7:2'],
    ['| C7:3.5 F7:0.5 |', 'C7:3.5 F7:0.5'],
    ['| N.C. | NC C7 | n.c. |', 'N.C.:4 | N.C.:2 C7:2 | N.C.:4'],
    ['| C/E | C7/Bb F6/9/A |', 'C/E:4 | C7/Bb:2 F6/9/A:2'],
    ['| C7 ||\n|| F7 |\n\n| G7 |]', 'C7:4 | F7:4 | G7:4'],
    ['| C7 | F7\n| G7 |', 'C7:4 | F7:4 | G7:4'],
    ['| C7 | # the tonic\n# a line of words | and bars\n| C#7 |', 'C7:4 | C#7:4'],
    ['meter: 3/4\n| C7 F7 | Bb7 |', 'C7:2 F7:1 | Bb7:3'],
    ['meter: 12/8\n| C7 F7 | Bb7 / / F7 |', 'C7:2 F7:2 | Bb7:3 F7:1'],
    ['meter: 6/8\n| C7 F7 | G7 |', 'C7:1 F7:1 | G7:2'],
    ['meter: 2/4\n| C7 F7 | G7 |', 'C7:1 F7:1 | G7:2'],
    ['meter: 5/4\n| C7 F7 | G7 |', 'C7:3 F7:2 | G7:5'],
  ])('%j plays %s', (text, played) => {
    expect(playedText(chartOf(text))).toBe(played);
  });

  it('takes the meter that the caller has in mind where the chart says none', () => {
    const beats = (chart: ReturnType<typeof parseChart>) => (chart.ok ? chart.value.meter.beatsPerBar : 0);
    expect(beats(parseChart('| C |', { beatsPerBar: 3 }))).toBe(3);
    expect(beats(parseChart('| C |', { meter: '12/8' }))).toBe(4);
    expect(beats(parseChart('meter: 5/4\n| C |', { meter: '12/8' }))).toBe(5);
    expect(() => parseChart('| C |', { meter: '4/3' })).toThrow(RangeError);
  });
});

describe('repeats and endings', () => {
  it.each([
    ['|: C | D :|', 'C D C D'],
    ['|: C | D :| x3', 'C D C D C D'],
    ['| C | D :| E |', 'C D C D E'],
    ['|: C :|: D :| E', 'C C D D E'],
    ['|: C :||: D :|', 'C C D D'],
    ['|: C |[1 D :|[2 E ||', 'C D C E'],
    ['|: C |1. D :|2. E || F |', 'C D C E F'],
    ['|: C |[1,2 D :|[3 E | F |', 'C D C D C E F'],
    ['|: C |[1-3 D :|[4 E |', 'C D C D C D C E'],
    ['|: C |[1 D :|[2 E :| F |', 'C D C E F'],
    ['|: C |[1 D :|\n[2 E |\n|: F :|', 'C D C E F F'],
    ['| A |: C |[1 D | E :|[2 F | G |', 'A C D E C F G'],
  ])('%j plays %s', (text, roots) => {
    expect(playedText(chartOf(text)).replaceAll(':4', '').replaceAll(' |', '')).toBe(roots);
  });
});

describe('headings and sections', () => {
  it('reads every heading', () => {
    const chart = chartOf(
      'title: Late bus\nkey: F# minor\nmeter: 3/4\nfeel: jazz waltz\ntempo: 132\nswing: 0.6\npickup: 1\n' +
        '| C#7 |\n[A]\n| F#m7 | Bm7 |\nBridge:\nfeel: straight\n| D | C#7 |\nOutro\n| F#m6 |',
    );
    expect(chart).toMatchObject({
      title: 'Late bus',
      key: { tonic: 'F#', mode: 'minor' },
      keyWritten: true,
      meter: { written: '3/4' },
      feel: 'jazz waltz',
      bpm: 132,
      swing: 0.6,
    });
    expect(chart.pickup?.chords[0]?.beats).toBe(1);
    expect(chart.sections.map(({ name, feel, bars }) => [name, feel, bars.length])).toEqual([
      ['A', null, 2],
      ['Bridge', 'straight', 2],
      ['Outro', null, 1],
    ]);
  });

  it('lets them stand before the bars of their line', () => {
    expect(chartOf('key: Bb; meter: 3/4 | Bb7 | Eb7 |')).toMatchObject({
      key: { tonic: 'Bb' },
      meter: { written: '3/4' },
    });
    expect(chartOf('[A] | C7 | [B] F7 |').sections.map(({ name }) => name)).toEqual(['A', 'B']);
    expect(chartOf('Verse: | C7 | F7 |').sections[0]?.name).toBe('Verse');
  });

  it('reads letters and signs of double width like plain ones, but in a title', () => {
    // Unicode, Halfwidth and Fullwidth Forms, FF01 to FF5E; U+3000 is their space.
    const chart = chartOf('title：枯葉！\nｋｅｙ：　Ｂｂ\n｜Ｅ７（ｂ９）　／　／　Ａｍ７｜％｜');
    expect(chart).toMatchObject({ title: '枯葉！', key: { tonic: 'Bb' } });
    expect(chart.sections[0]?.bars.map(({ chords }) => chords.map((one) => one.chord?.symbol))).toEqual([
      ['E7(b9)', 'Am7'],
      ['E7(b9)', 'Am7'],
    ]);
  });

  it('takes a letter alone in its line for a section, not for a chord', () => {
    expect(chartOf('A\n| C7 |\nB\n| F7 |').sections.map(({ name }) => name)).toEqual(['A', 'B']);
  });
});

describe('a chart that can’t be read', () => {
  it.each([
    ['| G7 | C7 | Hm7 |', 'Bar 3: “Hm7” can’t be read as a chord'],
    ['| G7 | c7 |', 'Bar 2: “c7” can’t be read as a chord; a root is a capital letter: write C7.'],
    ['| G7zz |', 'only G7 of it can be read'],
    ['| C7 | | F7 |', 'Bar 2 is empty: write % to repeat the bar before, or N.C. for no chord.'],
    ['| C7 / F7 |', 'Bar 1 has 3 beats written, but holds 4'],
    ['| C7 F7 / / / / |', 'Bar 1 has 6 beats written, but holds 4'],
    ['| C7:2 F7 |', 'Bar 1 writes beats behind some of its chords'],
    ['| C7:3 F7:2 |', 'Bar 1 has 5 beats written, but holds 4'],
    ['| C7:0 |', 'lasts 0 beats'],
    ['| % | C7 |', 'Bar 1 repeats the bar before with %, but there is none'],
    ['| / F7 / / |', 'Bar 1 starts with a beat mark'],
    ['| C7 % |', 'stands alone'],
    ['C7 F7 G7', 'no bar lines'],
    ['', 'The chart has no bars'],
    ['pickup: 1 | E7 |', 'The chart has a pickup and no bar after it'],
    [
      '| E7 | H7 |',
      'Bar 2: “H7” can’t be read as a chord; chords are written with English note names: write B7.',
    ],
    ['title: Empty', 'The chart has no bars'],
    ['| G7 |: C7 | F7 |', 'Bar 2 opens a repeat that is never closed'],
    ['|: C7 |: F7 :|', 'Bar 2 opens a repeat inside a repeat'],
    [':| C7 |', 'closes here with no bar in it'],
    ['| C7 |[1 F7 |', 'Bar 2 starts an ending, but no repeat sign'],
    ['|: C7 :| x99', 'x2 to x32'],
    ['C7', 'C7 has no bar lines around it: write a bar as | C7 |.'],
    ['[A]\n[B]\n| C7 |', 'Section A has no bars'],
    ['| C7 |\n[B]', 'Section B has no bars'],
    ['key: H\n| C7 |', '“H” is not a key'],
    ['meter: 7/8\n| C7 |', 'is not a meter'],
    ['swing: 0.9\n| C7 |', 'swing “0.9” is out of range'],
    ['tempo: 0\n| C7 |', 'tempo “0” is out of range'],
    ['colour: blue\n| C7 |', '“colour” is not a heading of a chart'],
    ['| C7 |\ntempo: 90', 'tempo must stand above the first bar'],
    ['pickup: 4\n| C7 | F7 |', 'A pickup is shorter than a bar'],
  ])('%j: %s', (text, sentence) => {
    expect(refusalOf(text)).toContain(sentence);
  });

  it('points at the symbol', () => {
    const text = 'key: C\n| C7 | F7 |\n| Gm7 H7 |';
    const result = readChart(text);
    if (!('problem' in result)) throw new Error('read');
    expect(result.problem).toMatchObject({ line: 3, column: 7, length: 2 });
  });

  it('counts bars as they are written, the pickup aside', () => {
    expect(refusalOf('pickup: 1\n| C7 | F7 | H |')).toContain('Bar 2:');
    expect(refusalOf('pickup: 1\n| H7 | F7 |')).toContain('The pickup:');
  });

  it('never crashes, whatever the text', () => {
    const pieces = fc.constantFrom(
      ...[
        '|',
        '||',
        '|:',
        ':|',
        ':|:',
        '[1',
        '[2',
        '[A]',
        ']',
        '%',
        '/',
        '.',
        ' ',
        '\n',
        'C7',
        'F7:2',
        'x3',
        'key:',
        'feel:',
        'Bb',
        'N.C.',
        '#',
        ':',
        ';',
        'pickup: 1',
        '1.',
      ],
    );
    const almost = fc.array(pieces, { maxLength: 25 }).map((list) => list.join(''));
    fc.assert(
      fc.property(fc.oneof(almost, fc.string({ unit: 'binary', maxLength: 60 })), (text) => {
        const result = readChart(text);
        if ('problem' in result) {
          expect(english(result.problem.problem)).toMatch(/^.+[.]$/s);
          expect(result.problem.line).toBeGreaterThan(0);
          expect(result.problem.column).toBeGreaterThan(0);
        } else {
          expect(readChart(writeChart(result.chart))).toEqual({ chart: result.chart });
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('writing a chart', () => {
  it('writes what reads back to the same chart', () => {
    fc.assert(
      fc.property(chartText, (text) => {
        const chart = chartOf(text);
        expect(chartOf(writeChart(chart))).toEqual(chart);
      }),
      { numRuns: 150 },
    );
  });

  it('writes the plain form of each chart', () => {
    expect(writeChart(chartOf('key: Bb\n|: Bb7 | Eb7 F7 / / |[1 Bb7 / / F7 :|[2 % ||'))).toBe(
      'key: Bb\n|: Bb7 | Eb7 F7 / / |[1 Bb7 / / F7 :| [2 Bb7 / / F7 |',
    );
  });
});
