/** A list of notes as a table: header `onset,duration,pitch` in seconds, seconds and MIDI numbers. */
import { listedNote } from '../../take/listed-note.ts';
import type { HeardNote } from '../../take/note.ts';
import { bad, good, type Outcome } from '../../base/outcome.ts';
import { MOST_NOTES } from '../../base/limits.ts';
import { numberIn, readTable } from '../bytes/table.ts';
import { shownSymbol } from '../../music/parse-chord.ts';
import { unitOf } from './time-unit.ts';

export const NOTE_COLUMNS = ['onset', 'duration', 'pitch'] as const;

/** The highest MIDI number there is; pitch fractions (bends, quarter tones) are welcome below it. */
const HIGHEST_MIDI = 127;

/**
 * Reads a list of notes; the rows may stand in any order, the notes come out by onset.
 * @param name the file, for the problems.
 */
export function readNotesCsv(text: string, name: string): Outcome<readonly HeardNote[]> {
  const table = readTable(text, NOTE_COLUMNS, name, MOST_NOTES);
  if (!table.ok) return table;
  if (table.value.length > MOST_NOTES) return bad('file.tooManyNotes', { name, most: MOST_NOTES });
  const notes: HeardNote[] = [];
  for (const { line, cells } of table.value) {
    const [onset, duration, pitch] = cells.map(numberIn) as [number, number, number];
    const wrong = (column: (typeof NOTE_COLUMNS)[number]) =>
      bad('notes.cell', {
        name,
        line,
        column,
        cell: shownSymbol(cells[NOTE_COLUMNS.indexOf(column)]!),
        highest: HIGHEST_MIDI,
      });
    if (!Number.isFinite(onset)) return wrong('onset');
    if (!(duration >= 0 && duration < Infinity)) return wrong('duration');
    if (!(pitch >= 0 && pitch <= HIGHEST_MIDI)) return wrong('pitch');
    notes.push(listedNote(onset, duration, pitch));
  }
  if (notes.length === 0) return bad('notes.none', { name });
  notes.sort((a, b) => a.onsetSeconds - b.onsetSeconds);
  const unit = unitOf(notes.map(({ onsetSeconds }) => onsetSeconds));
  return unit === 'seconds' ? good(notes) : bad('notes.unit', { name, unit });
}
