/** The line that is to be graded: listened to, or read from a list. */
import { isAudio, openAudio, openAudioOfKind, readWhole, type Recording } from '../core/files/audio.ts';
import type { ByteSource } from '../core/files/bytes.ts';
import { readMidi } from '../core/files/midi.ts';
import { readNotesCsv } from '../core/files/notes-csv.ts';
import { beatsSentence, sniff, textSentence, type AudioKind } from '../core/files/sniff.ts';
import { decodeText } from '../core/files/text.ts';
import type { GradeSettings } from '../core/grading/settings.ts';
import { listen, Listener } from '../core/listen.ts';
import type { HeardNote } from '../core/notes/note.ts';
import { bad, good, type Outcome } from '../core/outcome.ts';
import { removeBand } from '../core/room/remove-band.ts';
import { ROOM_HZ } from '../core/room/room-rate.ts';
import type { Progress } from './progress.ts';

export interface Take {
  readonly notes: readonly HeardNote[];
  readonly source: GradeSettings['source'];
  /** What was odd in the file and mended, a sentence each. */
  readonly warnings: readonly string[];
}

/** Lists longer than this are no line that anybody played: a million notes take about 30 MB. */
const LONGEST_LIST_BYTES = 1 << 26;

async function listenTo(source: ByteSource, kind: AudioKind, progress: Progress): Promise<Outcome<Take>> {
  const opened = await openAudioOfKind(source, kind);
  if (!opened.ok) return opened;
  const { sampleRate, expectedFrames } = opened.value;
  const listener = new Listener({ sampleRate });
  const warnings: string[] = [];
  let samples = 0;
  for await (const block of opened.value.blocks((sentence) => warnings.push(sentence))) {
    listener.push(block);
    samples += block.length;
    progress.at(samples / sampleRate, expectedFrames === null ? null : Math.min(1, samples / expectedFrames));
  }
  if (samples === 0)
    return bad(`${source.name} holds no sound that can be read; it may be damaged: save or export it again.`);
  return good({
    notes: listener.finish(),
    source: { kind: 'audio', durationSeconds: samples / sampleRate, sampleRate },
    warnings,
  });
}

async function wholeOf(source: ByteSource): Promise<Outcome<Recording>> {
  const opened = await openAudio(source);
  return opened.ok ? readWhole(opened.value, source.name) : opened;
}

/** Both recordings whole, the backing out of the take, and the rest listened to. */
async function listenWithout(source: ByteSource, backing: ByteSource): Promise<Outcome<Take>> {
  const take = await wholeOf(source);
  if (!take.ok) return take;
  const band = await wholeOf(backing);
  if (!band.ok) return band;
  const { samples, sampleRate } = take.value;
  if (samples.length === 0)
    return bad(`${source.name} holds no sound that can be read; it may be damaged: save or export it again.`);
  const removed = removeBand(take.value, band.value);
  const heard = removed ? { samples: removed.samples, sampleRate: ROOM_HZ } : take.value;
  return good({
    notes: listen(heard.samples, heard.sampleRate),
    source: {
      kind: 'audio',
      durationSeconds: samples.length / sampleRate,
      sampleRate,
      backing: removed && {
        offsetSeconds: removed.alignment.offsetSeconds,
        driftPpm: removed.alignment.driftPpm,
        removedDb: removed.removedDb,
      },
    },
    warnings: [
      ...take.value.warnings,
      ...band.value.warnings,
      ...(removed
        ? []
        : [
            `${backing.name} is not heard in ${source.name} within 10 seconds of its start; the take is graded as it is.`,
          ]),
    ],
  });
}

const listed = (notes: readonly HeardNote[], warnings: readonly string[]): Take => ({
  notes,
  source: {
    kind: 'notes',
    durationSeconds: notes.reduce((latest, note) => Math.max(latest, note.offsetSeconds), 0),
    sampleRate: null,
  },
  warnings,
});

/**
 * Reads a take of any kind, told by its content.
 * @param part the part of a MIDI file to take, from 1; null to choose.
 * @param backing what is to be taken out of a recording first
 */
export async function readTake(
  source: ByteSource,
  part: number | null,
  progress: Progress,
  backing: ByteSource | null = null,
): Promise<Outcome<Take>> {
  const { name } = source;
  const kind = await sniff(source);
  if (!kind.ok) return kind;
  if (isAudio(kind.value))
    return backing ? listenWithout(source, backing) : listenTo(source, kind.value, progress);
  if (backing) return bad(`${name} is no recording: there is no backing to take out of it.`);
  if (kind.value === 'beats') return bad(beatsSentence(name));
  if (kind.value === 'text') return bad(textSentence(name));
  if (source.size > LONGEST_LIST_BYTES)
    return bad(`${name} is too long for a list of notes; cut it into takes.`);
  const bytes = await source.read(0, source.size);
  if (kind.value === 'midi') {
    const line = readMidi(bytes, name, part);
    return line.ok ? good(listed(line.value.notes, line.value.warnings)) : line;
  }
  const text = decodeText(bytes);
  if (text === null) return bad(`${name} is not all text; save it as a UTF-8 table and try again.`);
  const notes = readNotesCsv(text, name);
  return notes.ok ? good(listed(notes.value, [])) : notes;
}
