/** A line that is written down and not recorded: a table of notes, or a part of a standard MIDI file. */
import type { HeardNote } from '../take/note.ts';
import { bad, good, type Outcome } from '../base/outcome.ts';
import type { ByteSource } from './bytes/bytes.ts';
import { readMidi } from './notes/midi.ts';
import { readNotesCsv } from './notes/notes-csv.ts';
import { type AudioKind, type FileKind } from './sniff.ts';
import type { Notice } from '../words/problem.ts';
import { decodeText } from './bytes/text.ts';

export interface ListedLine {
  /** In order of onset, seconds from the file's beginning. */
  readonly notes: readonly HeardNote[];
  /** Where the last of them ends. */
  readonly durationSeconds: number;
  /** What was odd and mended, or chosen. */
  readonly warnings: readonly Notice[];
}

/** Lists longer than this are no line that anybody played: a million notes take about 30 MB. */
const LONGEST_LIST_BYTES = 1 << 26;

/**
 * Reads the notes of a file whose kind `sniff` has told; the command line and the app come through here.
 * @param part the part of a MIDI file to take, from 1; null to choose
 */
export async function readList(
  source: ByteSource,
  kind: Exclude<FileKind, AudioKind>,
  part: number | null = null,
): Promise<Outcome<ListedLine>> {
  const { name } = source;
  if (kind === 'beats') return bad('file.beats', { name });
  if (kind === 'text') return bad('file.text', { name });
  if (source.size > LONGEST_LIST_BYTES) return bad('file.listTooLong', { name });
  const bytes = await source.read(0, source.size);
  if (kind === 'midi') {
    const line = readMidi(bytes, name, part);
    return line.ok ? good(listed(line.value.notes, line.value.warnings)) : line;
  }
  const text = decodeText(bytes);
  if (text === null) return bad('file.notAllText', { name });
  const notes = readNotesCsv(text, name);
  return notes.ok ? good(listed(notes.value, [])) : notes;
}

const listed = (notes: readonly HeardNote[], warnings: readonly Notice[]): ListedLine => ({
  notes,
  durationSeconds: notes.reduce((latest, note) => Math.max(latest, note.offsetSeconds), 0),
  warnings,
});
