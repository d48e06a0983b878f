/** A recording that was opened and graded is kept among the takes, with a copy of its sound. */
import { toPcm16 } from '../core/base/pcm16.ts';
import type { Message } from '../core/words/problem.ts';
import type { FinishedTake } from './finished-take.ts';
import type { TakesPort } from './ports.ts';
import type { TakeId } from './take.ts';

/** Written in pieces, so that a page of memory is enough for the writing, seconds. */
const PIECE_SECONDS = 10;

/**
 * A line that was written down has no sound: its notes are kept with its report. A backing that was given with a recording is
 * not kept.
 * @returns null where it can't be kept, which is told
 */
export async function keepRecording(
  { details, content }: FinishedTake,
  takes: TakesPort,
  tell: (message: Message) => void,
): Promise<TakeId | null> {
  if (content.kind === 'notes') {
    const begun = await takes.beginNotes({ ...details, written: true }, tell);
    if (!begun.ok) return told(begun.problem, tell);
    const failed = await begun.value.finish(content.durationSeconds);
    return failed === null ? begun.value.id : told(failed, tell);
  }
  const begun = await takes.begin(details, tell);
  if (!begun.ok) return told(begun.problem, tell);
  const { samples, sampleRate } = content.audio;
  const piece = PIECE_SECONDS * sampleRate;
  for (let from = 0; from < samples.length; from += piece) {
    const part = samples.slice(from, from + piece);
    begun.value.append(part instanceof Int16Array ? part : toPcm16(part), null);
  }
  const failed = await begun.value.finish();
  if (failed === null) return begun.value.id;
  // Half a recording is of no use: the player has the file.
  await takes.remove(begun.value.id);
  return told(failed, tell);
}

function told(message: Message, tell: (message: Message) => void): null {
  tell(message);
  return null;
}
