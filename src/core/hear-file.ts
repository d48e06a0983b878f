/** A file as a line of notes: a recording listened to block by block, or notes that are written down. */
import { MOST_TAKE_SECONDS } from './base/limits.ts';
import { isAudio, openAudioOfKind } from './files/audio.ts';
import type { ByteSource } from './files/bytes/bytes.ts';
import { readList } from './files/read-list.ts';
import { sniff, type AudioKind, type FileKind } from './files/sniff.ts';
import { bad, good, type Outcome } from './base/outcome.ts';
import type { GradeSettings } from './grade-settings.ts';
import { Listener } from './listen.ts';
import type { HeardNote } from './take/note.ts';
import { notice, type Notice } from './words/problem.ts';

/** The line that is to be graded. */
export interface HeardLine {
  readonly notes: readonly HeardNote[];
  readonly source: GradeSettings['source'];
  /** What was odd in the file and mended. */
  readonly warnings: readonly Notice[];
}

/** −80 dBFS: below the noise of any microphone that is open, above the dither of a silent file. */
const SILENT_PEAK = 1e-4;

/** How far the listening has come: seconds of sound, and the share, 0 to 1, or null where the end is not known. */
type HeardSoFar = (seconds: number, share: number | null) => void;

async function listenTo(
  source: ByteSource,
  kind: AudioKind,
  progress: HeardSoFar,
): Promise<Outcome<HeardLine>> {
  const opened = await openAudioOfKind(source, kind);
  if (!opened.ok) return opened;
  const { sampleRate, expectedFrames } = opened.value;
  const listener = new Listener({ sampleRate });
  const warnings: Notice[] = [];
  let samples = 0;
  let peak = 0;
  for await (const block of opened.value.blocks((warning) => warnings.push(warning))) {
    listener.push(block);
    // Looked for only while nothing sounds: a recording that is not silent is told by its first loud sample.
    if (peak <= SILENT_PEAK) for (const sample of block) peak = Math.max(peak, Math.abs(sample));
    samples += block.length;
    if (samples > MOST_TAKE_SECONDS * sampleRate)
      return bad('file.takeTooLong', { name: source.name, hours: MOST_TAKE_SECONDS / 3600 });
    progress(samples / sampleRate, expectedFrames === null ? null : Math.min(1, samples / expectedFrames));
  }
  if (samples === 0) return bad('file.noSound', { name: source.name });
  const notes = listener.finish();
  if (notes.length === 0)
    warnings.push(notice(peak <= SILENT_PEAK ? 'sound.silent' : 'sound.noNote', { name: source.name }));
  return good({
    notes,
    source: { kind: 'audio', durationSeconds: samples / sampleRate, sampleRate },
    warnings,
  });
}

/**
 * Hears a file whose kind `sniff` has told.
 * @param part the part of a MIDI file to take, from 1; null to choose.
 */
export async function hearFileOfKind(
  source: ByteSource,
  kind: FileKind,
  part: number | null,
  progress: HeardSoFar,
): Promise<Outcome<HeardLine>> {
  if (isAudio(kind)) return listenTo(source, kind, progress);
  const line = await readList(source, kind, part);
  if (!line.ok) return line;
  const { notes, durationSeconds, warnings } = line.value;
  return good({ notes, source: { kind: 'notes', durationSeconds, sampleRate: null }, warnings });
}

/** Hears a file of any kind, told by its content. */
export async function hearFile(source: ByteSource, progress: HeardSoFar): Promise<Outcome<HeardLine>> {
  const kind = await sniff(source);
  return kind.ok ? hearFileOfKind(source, kind.value, null, progress) : kind;
}
