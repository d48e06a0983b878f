/** The line that is to be graded: listened to, or read from a list. */
import { isAudio, LONGEST_WHOLE_SECONDS, openAudio, readWhole, type Recording } from '../core/files/audio.ts';
import type { ByteSource } from '../core/files/bytes/bytes.ts';
import { readBacking } from '../core/files/read-backing.ts';
import { sniff } from '../core/files/sniff.ts';
import { hearFileOfKind, type HeardLine } from '../core/hear-file.ts';
import { listenWithout } from '../core/listen-without.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import type { Progress } from './progress.ts';

async function wholeOf(source: ByteSource): Promise<Outcome<Recording>> {
  const opened = await openAudio(source);
  if (!opened.ok) return opened;
  const whole = await readWhole(opened.value, source.name);
  return whole.ok || whole.problem.code !== 'file.tooLongForWhole'
    ? whole
    : bad('take.tooLongWithBacking', { name: source.name, minutes: LONGEST_WHOLE_SECONDS / 60 });
}

/** Both recordings whole, the backing out of the take, and the rest listened to. */
async function listenWithBacking(source: ByteSource, backing: ByteSource): Promise<Outcome<HeardLine>> {
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
): Promise<Outcome<HeardLine>> {
  const { name } = source;
  const kind = await sniff(source);
  if (!kind.ok) return kind;
  if (backing === null)
    return hearFileOfKind(source, kind.value, part, (seconds, share) => progress.at(seconds, share));
  return isAudio(kind.value) ? listenWithBacking(source, backing) : bad('take.notesHaveNoBacking', { name });
}
