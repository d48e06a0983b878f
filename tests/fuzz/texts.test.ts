/** Texts from outside, 10,000 of each: none makes its reader throw, and what is refused has its sentence. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { timelineFromBeats, timelineFromTempo } from '../../src/core/chart/build-timeline.ts';
import { readChartArgument } from '../../src/core/chart/forms.ts';
import { parseChart } from '../../src/core/chart/parse-chart.ts';
import { writeChart } from '../../src/core/chart/write-chart.ts';
import { readBeatsCsv } from '../../src/core/files/charts/beats-csv.ts';
import { readNotesCsv } from '../../src/core/files/notes/notes-csv.ts';
import { readAim } from '../../src/core/grade/aims/aim.ts';
import { readAnswer, writeAnswer } from '../../src/core/lesson/answer.ts';
import { LINK_START, readSheetFragment, sheetFragment } from '../../src/core/lesson/sheet-link.ts';
import { readSheet, type SheetFile } from '../../src/core/lesson/sheet.ts';
import { parseChord } from '../../src/core/music/parse-chord.ts';
import { parseKey } from '../../src/core/music/keys.ts';
import { damaged, expectSentences, fuzz, textOf } from './fuzz.ts';

const CHART = [
  ...[
    '|',
    ' | ',
    '||',
    '|:',
    ':|',
    ':|:',
    ' x3',
    ' x99',
    '[1 ',
    '1. ',
    '2-3. ',
    '[A]',
    'A:',
    '\n',
    '\r\n',
    ' ',
    '  ',
    '/',
    ' % ',
  ],
  ...[
    'C7',
    'F#m7b5',
    'Bb',
    'N.C.',
    'Gsus4',
    'E7alt',
    'C/E',
    'H',
    'c7',
    'C:2',
    'C7:0',
    'Cmaj7(#11)',
    '(b9',
    'Db°',
  ],
  ...[
    'key: Bb',
    'meter: 3/4',
    'meter: 12/8',
    'tempo: 120',
    'tempo: 1e9',
    'swing: 0.6',
    'pickup: 1',
    'title: x',
    'feel: bossa',
  ],
  ...[
    'D.S. al Coda',
    'To Coda',
    'Coda',
    'Fine',
    'D.C. al Fine',
    'Segno',
    '𝄋',
    '𝄌',
    '‖',
    '#',
    ' # x',
    ';',
    ':',
    '\t',
    '\u0000',
  ],
];

describe('texts from outside', { timeout: 300_000 }, () => {
  it('charts: read or refused, and what is read is written and read again', () => {
    fuzz(textOf(CHART, 40), (text) => {
      const read = parseChart(text);
      expectSentences(read);
      if (!read.ok) return;
      timelineFromTempo(read.value, { bpm: 100 }).spansBetween(0, 8);
      expect(parseChart(writeChart(read.value)).ok).toBe(true);
    });
  });

  it('forms, chord symbols and keys', () => {
    const pieces = [
      'form:',
      '12-bar blues',
      ' in ',
      'Bb',
      ' minor',
      'C',
      'b',
      '#',
      'm',
      'maj',
      '7',
      '9',
      '13',
      '(',
      ')',
      ',',
      'sus',
      'add',
      'no3',
      '/',
      'alt',
      '°',
      'Δ',
    ];
    fuzz(textOf(pieces, 12), (text) => {
      expectSentences(readChartArgument(text));
      const chord = parseChord(text);
      if (chord !== null)
        expect(chord.tones.every(({ pitchClass }) => pitchClass >= 0 && pitchClass < 12)).toBe(true);
      parseKey(text);
    });
  });

  it('lists of notes', () => {
    const pieces = [
      'onset,duration,pitch\n',
      '0,1,60\n',
      '1.5;0,2;61,5\n',
      '"',
      ',',
      ';',
      '\t',
      '\n',
      '\r',
      '-1',
      '1e9',
      '1e999',
      'NaN',
      '60',
      '128',
      '""',
      ' ',
    ];
    fuzz(
      fc
        .tuple(fc.constantFrom('onset,duration,pitch\n', 'pitch;onset;duration\n', ''), textOf(pieces, 40))
        .map((parts) => parts.join('')),
      (text) => {
        const read = readNotesCsv(text, 'line.csv');
        expectSentences(read);
        if (read.ok)
          for (const note of read.value) expect(note.offsetSeconds).toBeGreaterThanOrEqual(note.onsetSeconds);
      },
    );
  });

  it('lists of beats', () => {
    const pieces = [
      '0,C\n',
      '1,\n',
      '2,F7\n',
      '3,N.C.\n',
      '3.001,G\n',
      '1e5,C\n',
      '1e-300,C\n',
      '"',
      ',',
      '\n',
      '-1,C\n',
      'x,C\n',
      '4,H\n',
    ];
    fuzz(
      textOf(pieces, 40).map((text) => `time,chord\n${text}`),
      (text) => {
        const read = readBeatsCsv(text, 'beats.csv');
        expectSentences(read);
        if (!read.ok) return;
        const timeline = timelineFromBeats(read.value);
        expectSentences(timeline);
        if (timeline.ok) timeline.value.nextChange(timeline.value.beatMap.beatAt(1.5));
      },
    );
  });
});

const SHEET = {
  ...{
    format: 'landfall-sheet',
    version: 1,
    title: 'Thirds',
    note: 'Sing.',
    chart: 'form:12-bar blues in Eb',
    tempo: 66,
  },
  ...{ feel: 'slow-blues', choruses: 2, instrument: 'guitar' },
  aims: [
    { id: 'third-on-arrival', shareToReach: 0.4 },
    {
      ...{
        format: 'landfall-aim',
        version: 1,
        id: 'roots',
        name: 'Roots',
        task: 'Land on the root.',
        events: 'landings',
      },
      ...{
        test: 'is one of',
        tones: ['root'],
        over: ['IV7'],
        shareToReach: 0.6,
        leastEvents: 4,
        againstLuck: false,
      },
    },
  ],
};

const ANSWER = {
  ...{ format: 'landfall-answer', version: 1, takeId: 'take-1', mark: '0123456789abcdef', title: 'Thirds' },
  ...{ student: 'Alto', tryNumber: 2, note: 'Sing it first.' },
  comments: [
    { chorus: 0, bar: 3, text: 'Wait.' },
    { chorus: 1, bar: 0, text: 'Good.' },
  ],
};

describe('JSON from outside', { timeout: 300_000 }, () => {
  it('lesson sheets', () => {
    fuzz(
      fc.oneof(
        { weight: 8, arbitrary: damaged(SHEET).map((value) => JSON.stringify(value) ?? '') },
        { weight: 1, arbitrary: fc.json() },
        { weight: 1, arbitrary: fc.string() },
      ),
      (text) => {
        expectSentences(readSheet(text, 'task.json'));
      },
    );
  });

  it('answers of a teacher', () => {
    fuzz(
      fc.oneof(
        { weight: 8, arbitrary: damaged(ANSWER).map((value) => JSON.stringify(value) ?? '') },
        { weight: 1, arbitrary: fc.json() },
        { weight: 1, arbitrary: fc.string() },
      ),
      (text) => {
        const read = readAnswer(text, 'a.answer.json');
        expectSentences(read);
        if (read.ok) expect(readAnswer(writeAnswer(read.value), 'again')).toEqual(read);
      },
    );
  });

  it('links to sheets', () => {
    const whole = sheetFragment(SHEET as SheetFile);
    if (!whole.ok) throw new Error(whole.problem.code);
    const letters = fc.constantFrom(...'AZaz09-_=%#é\u0000');
    const changed = fc
      .tuple(
        fc.nat({ max: whole.value.length }),
        fc.nat({ max: 40 }),
        fc.string({ unit: letters, maxLength: 40 }),
      )
      .map(([at, gone, put]) => whole.value.slice(0, at) + put + whole.value.slice(at + gone));
    const packed = damaged(SHEET)
      .filter((value) => value !== undefined)
      .map((value) => {
        const fragment = sheetFragment(value as SheetFile);
        return fragment.ok ? fragment.value : LINK_START;
      });
    fuzz(
      fc.oneof(
        { weight: 4, arbitrary: changed },
        { weight: 4, arbitrary: packed },
        { weight: 1, arbitrary: fc.string({ maxLength: 9000 }).map((text) => LINK_START + text) },
        { weight: 1, arbitrary: fc.string() },
      ),
      (fragment) => {
        const read = readSheetFragment(fragment);
        if (read !== null) expectSentences(read);
      },
    );
  });

  it('aims', () => {
    fuzz(
      fc.oneof({ weight: 8, arbitrary: damaged(SHEET.aims[1]) }, { weight: 1, arbitrary: fc.anything() }),
      (value) => {
        // As JSON gives it: neither Infinity nor a gap.
        expectSentences(readAim(JSON.parse(JSON.stringify(value) ?? 'null')));
      },
    );
  });
});
