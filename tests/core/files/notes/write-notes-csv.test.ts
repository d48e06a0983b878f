/** The table of graded notes against RFC 4180 and its own reader. */
import { execFileSync, spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { readNotesCsv } from '../../../../src/core/files/notes/notes-csv.ts';
import { writeNotesCsv } from '../../../../src/core/files/notes/write-notes-csv.ts';
import { readKeptReport } from '../../../../src/core/kept-report.ts';
import { needs } from '../../../needs.ts';
import { madeTake } from '../../take-file/made-take.ts';

const { report: kept, details } = madeTake();
const report = readKeptReport({ report: kept, details });
if (!report.ok) throw new Error(report.problem.code);
const { notes, landings } = report.value;
const table = writeNotesCsv({ notes, landings });

describe('the table of notes', () => {
  it('is read back as the same notes', () => {
    const read = readNotesCsv(table, 'notes.csv');
    expect(read.ok && read.value.map(({ onsetSeconds, midi }) => [onsetSeconds, midi])).toEqual(
      notes.map(({ onsetSeconds, midi }) => [onsetSeconds, midi]),
    );
  });

  it('ends every line as the standard says, and quotes what has to be (RFC 4180, 2.1, 2.6, 2.7)', () => {
    expect(table.split('\r\n')).toHaveLength(notes.length + 2);
    expect(table.replaceAll('\r\n', '')).not.toContain('\n');
    const odd = writeNotesCsv({ notes: [{ ...notes[0]!, chord: 'C7(b9,#11)', name: 'a"b' }], landings: [] });
    expect(odd).toContain(',"a""b",');
    expect(odd).toContain(',"C7(b9,#11)",');
  });

  const hasPython = spawnSync('python3', ['--version']).status === 0;
  it(
    'is read by the csv module of Python in strict mode, as many columns in each row',
    needs(hasPython, 'Python is not installed: python3.'),
    () => {
      const script =
        'import csv,sys,json; print(json.dumps(list(csv.reader(sys.stdin, dialect="excel", strict=True))))';
      const rows = JSON.parse(
        execFileSync('python3', ['-c', script], { input: table, encoding: 'utf8' }),
      ) as string[][];
      expect(new Set(rows.map((row) => row.length)).size).toBe(1);
      expect(rows.slice(1).map((row) => row[rows[0]!.indexOf('chord')])).toEqual(
        notes.map(({ chord }) => chord),
      );
    },
  );
});
