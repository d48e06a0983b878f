/**
 * The graded notes of a report as a table (RFC 4180) that spreadsheets open, and that is read back as a list of notes by
 * its first three columns.
 */
import { csvField } from '../../base/csv.ts';
import type { Report } from '../../take/schema.ts';
import { NOTE_COLUMNS } from './notes-csv.ts';

/** Microseconds: far under a sample. */
const SECOND_DIGITS = 6;
const BEAT_DIGITS = 3;
const PITCH_DIGITS = 3;

type Cell = string | number | null;

const field = (cell: Cell): string => csvField(cell === null ? '' : String(cell));
const row = (cells: readonly Cell[]): string => `${cells.map(field).join(',')}\r\n`;

const COLUMNS = [
  ...NOTE_COLUMNS,
  ...['name', 'cents', 'bar', 'chorus', 'beat', 'chord', 'degree', 'role', 'key degree', 'function'],
  ...['landing', 'phrase', 'confidence'],
];

/** Bars, choruses and phrases are counted from 1; `landing` is 1 for a note that a change landed on. */
export function writeNotesCsv({ notes, landings }: Pick<Report, 'notes' | 'landings'>): string {
  const landed = new Set(landings.flatMap(({ kind, note }) => (kind === 'landing' ? [note] : [])));
  return (
    row(COLUMNS) +
    notes
      .map((note, i) =>
        row([
          note.onsetSeconds.toFixed(SECOND_DIGITS),
          (note.offsetSeconds - note.onsetSeconds).toFixed(SECOND_DIGITS),
          note.midi.toFixed(PITCH_DIGITS),
          note.name,
          Math.round(note.cents),
          note.bar === null ? null : note.bar + 1,
          note.chorus === null ? null : note.chorus + 1,
          note.beat.toFixed(BEAT_DIGITS),
          note.chord,
          note.degree,
          note.role,
          note.keyDegree,
          note.function,
          landed.has(i) ? 1 : 0,
          note.phrase + 1,
          note.confidence,
        ]),
      )
      .join('')
  );
}
