/** The line that is to be graded: listened to, or read from a list. */
import type { Notice } from '../core/words/problem.ts';
import {
  isAudio,
  LONGEST_WHOLE_SECONDS,
  openAudio,
  openAudioOfKind,
  readWhole,
  type Recording,
} from '../core/files/audio.ts';
import { MOST_TAKE_SECONDS } from '../core/base/limits.ts';
import type { ByteSource } from '../core/files/bytes/bytes.ts';
import { readBacking } from '../core/files/read-backing.ts';
import { readList } from '../core/files/read-list.ts';
import { sniff, type AudioKind } from '../core/files/sniff.ts';
import type { GradeSettings } from '../core/grade-settings.ts';
import { Listener } from '../core/listen.ts';
import { listenWithout } from '../core/listen-without.ts';
import type { HeardNote } from '../core/take/note.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import type { Progress } from './progress.ts';

export interface Take {
  readonly notes: readonly HeardNote[];
  readonly source: GradeSettings['source'];
  /** What was odd in the file and mended. */
  readonly warnings: readonly Notice[];
}

async function listenTo(source: ByteSource, kind: AudioKind, progress: Progress): Promise<Outcome<Take>> {
  const opened = await openAudioOfKind(source, kind);
  if (!opened.ok) return opened;
  const { sampleRate, expectedFrames } = opened.value;
  const listener = new Listener({ sampleRate });
  const warnings: Notice[] = [];
  let samples = 0;
  for await (const block of opened.value.blocks((warning) => warnings.push(warning))) {
    listener.push(block);
    samples += block.length;
    if (samples > MOST_TAKE_SECONDS * sampleRate)
      return bad('file.takeTooLong', { name: source.name, hours: MOST_TAKE_SECONDS / 3600 });
    progress.at(samples / sampleRate, expectedFrames === null ? null : Math.min(1, samples / expectedFrames));
  }
  if (samples === 0) return bad('file.noSound', { name: source.name });
  return good({
    notes: listener.finish(),
    source: { kind: 'audio', durationSeconds: samples / sampleRate, sampleRate },
    warnings,
  });
}

async function wholeOf(source: ByteSource): Promise<Outcome<Recording>> {
  const opened = await openAudio(source);
  if (!opened.ok) return opened;
  const whole = await readWhole(opened.value, source.name);
  return whole.ok || whole.problem.code !== 'file.tooLongForWhole'
    ? whole
    : bad('take.tooLongWithBacking', { name: source.name, minutes: LONGEST_WHOLE_SECONDS / 60 });
}

/** Both recordings whole, the backing out of the take, and the rest listened to. */
async function listenWithBacking(source: ByteSource, backing: ByteSource): Promise<Outcome<Take>> {
  const take = await wholeOf(source);
  if (!take.ok) return take;
  const band = await readBacking(backing);
  if (!band.ok) return band;
  const { samples, sampleRate } = take.value;
  if (samples.length === 0) return bad('file.noSound', { name: source.name });
  const heard = listenWithout(
    { name: source.name, samples, sampleRate },
    { name: backing.name, ...band.value },
  );
  return good({
    notes: heard.notes,
    source: {
      kind: 'audio',
      durationSeconds: samples.length / sampleRate,
      sampleRate,
      backing: heard.backing,
    },
    warnings: [
      ...take.value.warnings,
      ...band.value.warnings,
      ...(heard.notice === null ? [] : [heard.notice]),
    ],
  });
}

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
    return backing ? listenWithBacking(source, backing) : listenTo(source, kind.value, progress);
  if (backing) return bad('take.notesHaveNoBacking', { name });
  const line = await readList(source, kind.value, part);
  if (!line.ok) return line;
  const { notes, durationSeconds, warnings } = line.value;
  return good({ notes, source: { kind: 'notes', durationSeconds, sampleRate: null }, warnings });
}
