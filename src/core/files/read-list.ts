/** A line that is written down and not recorded: a table of notes, or a part of a standard MIDI file. */
import type { HeardNote } from '../take/note.ts';
import { bad, good, type Outcome } from '../base/outcome.ts';
import { MOST_LIST_BYTES, MOST_MIDI_BYTES, MOST_NOTES, MOST_TAKE_SECONDS } from '../base/limits.ts';
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
  if (source.size > (kind === 'midi' ? MOST_MIDI_BYTES : MOST_LIST_BYTES))
    return bad('file.listTooLong', { name });
  const bytes = await source.read(0, source.size);
  if (kind === 'midi') {
    const line = readMidi(bytes, name, part);
    return line.ok ? listed(line.value.notes, line.value.warnings, name) : line;
  }
  const text = decodeText(bytes);
  if (text === null) return bad('file.notAllText', { name });
  const notes = readNotesCsv(text, name);
  return notes.ok ? listed(notes.value, [], name) : notes;
}

function listed(notes: readonly HeardNote[], warnings: readonly Notice[], name: string): Outcome<ListedLine> {
  if (notes.length > MOST_NOTES) return bad('file.tooManyNotes', { name, most: MOST_NOTES });
  const durationSeconds = notes.reduce((latest, note) => Math.max(latest, note.offsetSeconds), 0);
  const first = notes[0]?.onsetSeconds ?? 0;
  if (durationSeconds > MOST_TAKE_SECONDS || first < -MOST_TAKE_SECONDS)
    return bad('file.takeTooLong', { name, hours: MOST_TAKE_SECONDS / 3600 });
  return good({ notes, durationSeconds, warnings });
}
