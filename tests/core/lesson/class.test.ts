import { describe, expect, it } from 'vitest';
import { gradeForSheet } from '../../../src/core/grade-for-sheet.ts';
import { classCsv, csvCell } from '../../../src/core/lesson/class-csv.ts';
import { classHtml } from '../../../src/core/lesson/class-html.ts';
import { attentionOf, classChanges, classRows, rowsBySheet } from '../../../src/core/lesson/class-table.ts';
import { rowWords } from '../../../src/core/lesson/class-words.ts';
import { classText } from '../../../src/core/lesson/class-text.ts';
import { returnedTake, weakestChange, type ReturnedTake } from '../../../src/core/lesson/returned-take.ts';
import { readSheet } from '../../../src/core/lesson/sheet.ts';
import { wordsOf } from '../../../src/core/words/catalogues.ts';
import { problem } from '../../../src/core/words/problem.ts';

const read = readSheet(
  JSON.stringify({
    format: 'landfall-sheet',
    version: 1,
    title: 'Four chords',
    note: '',
    chart: '| D7 | G7 | A7 | E7 |',
    tempo: 120,
    feel: 'straight',
    choruses: 8,
    aims: [{ id: 'third-on-arrival', shareToReach: 0.5 }],
  }),
  'two.json',
);
if (!read.ok) throw new Error('The sheet of this test can’t be read.');
const sheet = read.value;

/** One note a bar on the downbeat, three times through the four chords. */
const line = (pitches: readonly number[]) =>
  Array.from({ length: 12 }, (_, bar) => ({
    onsetSeconds: 2 * bar,
    offsetSeconds: 2 * bar + 1,
    midi: pitches[bar % 4]!,
    confidence: 1,
    levelDb: null,
    attack: 'struck' as const,
    bendSemitones: 0,
    vibrato: null,
    second: null,
  }));
/** F#, B, C# and G#: the third of each chord. */
const THIRDS = [66, 71, 73, 68];
/** Tones that belong to none of the four chords where they stand. */
const BESIDE = [61, 66, 68, 63];

function take(
  student: string,
  notes: ReturnType<typeof line>,
  more: Partial<ReturnedTake> = {},
): ReturnedTake {
  const source = { kind: 'notes' as const, durationSeconds: 24, sampleRate: null };
  const report = gradeForSheet(notes, sheet, { source, firstBeatSeconds: 0, referenceHz: 440 });
  return {
    ...returnedTake(report, {
      student,
      file: `${student}.csv`,
      sheet: 'this one',
      mark: sheet.mark,
      title: sheet.file.title,
      tryNumber: null,
      startedAt: null,
      corrections: 0,
    }),
    ...more,
  };
}
const thirds = take('cello', line(THIRDS));
const beside = take('tuba', line(BESIDE));

describe('a take that came back', () => {
  it('says how the aim of the sheet went, counted by hand: 12 thirds of 12 bars, and none', () => {
    expect(thirds.aims[0]).toMatchObject({ id: 'third-on-arrival', verdict: 'reached' });
    expect(thirds.thirds).toMatchObject({ hits: 12, of: 12 });
    expect(beside.thirds).toMatchObject({ hits: 0, of: 12 });
    expect(beside.aims[0]?.verdict).toBe('not yet');
  });

  it('names the doubts that make its figures worthless', () => {
    expect(take('x', line(THIRDS).slice(0, 3)).doubts).toContain('few notes');
    expect(take('x', line(THIRDS), { sheet: 'another', doubts: ['another sheet'] }).doubts).toEqual([
      'another sheet',
    ]);
  });

  it('tells what was moved in key, and to where', () => {
    // Chord tones of the four chords, a whole step higher, in changing orders.
    const tones = [62, 66, 69, 72, 67, 71, 74, 77, 69, 73, 76, 79, 64, 68, 71, 74];
    const higher = Array.from({ length: 96 }, (_, beat) => ({
      ...line(THIRDS)[0]!,
      onsetSeconds: beat / 2,
      offsetSeconds: beat / 2 + 0.45,
      midi:
        2 +
        tones[
          4 * (Math.floor(beat / 4) % 4) + ((beat + 3 * Math.floor(beat / 16) + Math.floor(beat / 4)) % 4)
        ]!,
    }));
    const moved = take('x', higher);
    expect(moved.doubts).toEqual(['moved key']);
    const [row] = classRows([moved]);
    expect(row?.attention).toBe('doubtful');
    expect(rowWords(row!, wordsOf('en')).doubts).toEqual([
      `fits ${moved.suspected?.tonic} far better: played in another key?`,
    ]);
    expect(moved.suspected?.semitones).toBe(2);
  });
});

describe('the weakest change', () => {
  const change = (to: string, hits: number, of: number) => ({ from: null, to, bar: 0, hits, of });
  it('is a habit of missing before a single miss', () => {
    expect(weakestChange([change('G7', 0, 1), change('C7', 1, 12), change('D7', 9, 9)])?.to).toBe('C7');
  });
  it('is none where nothing was missed', () => {
    expect(weakestChange([change('G7', 4, 4)])).toBeNull();
    expect(weakestChange([])).toBeNull();
  });
});

describe('the table of a class', () => {
  it('has a row a student, doubtful takes first, then by how far the aim is from being reached', () => {
    const rows = classRows([
      thirds,
      beside,
      take('viola', line([66, 71, 68, 63])),
      take('vic', line(THIRDS), { doubts: ['delay'] }),
    ]);
    expect(rows.map(({ student, attention }) => [student, attention])).toEqual([
      ['vic', 'doubtful'],
      ['tuba', 'not reached'],
      ['viola', rows[2]?.attention],
      ['cello', 'reached'],
    ]);
  });

  it('lets the latest take of a student speak, whatever the order of the files', () => {
    const first = { ...beside, tryNumber: 2, file: 'b.csv' };
    const last = { ...thirds, student: 'tuba', tryNumber: 10, file: 'a.csv' };
    for (const takes of [
      [first, last],
      [last, first],
    ]) {
      const [row] = classRows(takes);
      expect(row).toMatchObject({ student: 'tuba', takes: 2, attention: 'reached' });
    }
  });

  it('never lets a take for another sheet speak while there is one for this sheet', () => {
    const foreign = { ...thirds, student: 'tuba', tryNumber: 99, sheet: 'another' as const };
    expect(classRows([foreign, { ...beside, tryNumber: 1 }])[0]?.take.sheet).toBe('this one');
  });

  it('has a row of its own for another sheet, which is named where there are several', () => {
    const other = { ...beside, student: 'cello', mark: '0'.repeat(16), title: 'Five chords' };
    const rows = classRows([thirds, other, beside]);
    expect(rows.map(({ student, take }) => [student, take.title])).toEqual([
      ['cello', 'Five chords'],
      ['tuba', 'Four chords'],
      ['cello', 'Four chords'],
    ]);
    expect(rowsBySheet(rows).map(({ title, rows: own }) => [title, own.length])).toEqual([
      ['Four chords', 2],
      ['Five chords', 1],
    ]);
    const text = classText({ title: 'Four chords', rows, takes: 3 }, wordsOf('en'));
    expect(text).toContain('cello (Five chords): not reached');
    expect(text).toContain('Changes of “Five chords”');
  });

  it('shows which change fails for whom', () => {
    const changes = classChanges(classRows([thirds, beside]));
    // Two students, three times round: D7 comes first with no chord before it, and twice more from E7.
    expect(changes.map(({ from, to, hits, of }) => [from, to, hits, of])).toEqual([
      [null, 'D7', 1, 2],
      ['E7', 'D7', 2, 4],
      ['D7', 'G7', 3, 6],
      ['G7', 'A7', 3, 6],
      ['A7', 'E7', 3, 6],
    ]);
    expect(changes.find(({ to }) => to === 'G7')?.missedBy).toEqual(['tuba']);
  });

  it('asks for attention by the leading aim', () => {
    expect(attentionOf(thirds)).toBe('reached');
    expect(attentionOf({ ...thirds, doubts: ['few notes', 'corrected'] })).toBe('reached');
    expect(attentionOf({ ...thirds, aims: [] })).toBe('too short');
  });
});

describe('the pages of a class', () => {
  const hostile = '"><script>alert(1)</script>';
  const rows = classRows([thirds, { ...beside, student: hostile }, { ...beside, student: '=1+2' }]);

  it('are CSV by RFC 4180: CRLF, quotes doubled, one number of cells in every line', () => {
    const lines = classCsv(rows).split('\r\n');
    expect(lines.at(-1)).toBe('');
    const cells = (text: string) => text.replace(/"(?:[^"]|"")*"/g, '').split(',').length;
    for (const text of lines.slice(0, -1)) expect(cells(text)).toBe(cells(lines[0]!));
    expect(csvCell('a "b", c')).toBe('"a ""b"", c"');
  });

  it('are never run as a formula by a spreadsheet (OWASP, CSV Injection)', () => {
    for (const start of ['=1+2', '+1', '-1', '@a', '\tx', '＝1', '＋1', '－1', '＠a'])
      expect(csvCell(start)).toMatch(/^"?'/);
    expect(csvCell(-1)).toBe('-1');
  });

  it('are HTML in which no name becomes a tag, and which loads nothing', () => {
    const page = classHtml(
      {
        title: hostile,
        rows,
        takes: 3,
        failed: [{ file: hostile, problem: problem('file.empty', { name: hostile }) }],
        version: '0',
      },
      wordsOf('en'),
    );
    expect(page).not.toContain('<script');
    expect(page).not.toMatch(/\b(?:src|href)=/);
    expect(page.match(/class="student"/g)).toHaveLength(3);
    expect(page).toContain('break-before:page');
  });

  it('are a text with the same facts, in both languages', () => {
    expect(classText({ title: 'Four chords', rows, takes: 3 }, wordsOf('en'))).toContain('cello: reached');
    expect(classText({ title: 'Vier Akkorde', rows, takes: 3 }, wordsOf('de'))).toContain('cello: erreicht');
  });
});
