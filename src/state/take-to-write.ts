/** A take as it is written into a file: in review, from the store, or played and not graded. */
import { crc32 } from '../core/files/zip/crc32.ts';
import { toPcm16 } from '../core/base/pcm16.ts';
import type { TakeToWrite } from '../core/take-file/take-file.ts';
import type { HeardNote } from '../core/take/note.ts';
import type { Report } from '../core/take/schema.ts';
import type { FinishedTake, TakeContent } from './finished-take.ts';
import type { TakeDetails } from './take.ts';

const pcm = (samples: Int16Array | Float32Array): Int16Array =>
  samples instanceof Int16Array ? samples : toPcm16(samples);

/** Seconds of the take. */
export const durationOf = ({ sampleRate }: TakeDetails, content: TakeContent): number =>
  content.kind === 'notes' ? content.durationSeconds : content.audio.samples.length / sampleRate;

/** The grading of a take; null where it could not be graded. */
export interface Graded {
  readonly report: Report | null;
  /** Every note that was heard; null where they are not known. */
  readonly heard: readonly HeardNote[] | null;
}

export function takeToWrite({
  id,
  details,
  content,
  report,
  heard,
}: Pick<FinishedTake, 'id' | 'details' | 'content'> & Graded): TakeToWrite {
  const samples = content.kind === 'sound' ? pcm(content.audio.samples) : new Int16Array(0);
  const band = content.kind === 'sound' && content.backing?.kind === 'band' ? content.backing.samples : null;
  const messages = content.kind === 'notes' ? content.messages : null;
  const isWritten = content.kind === 'notes' && messages === null;
  return {
    id: id ?? idOfContent(samples, details),
    details: isWritten ? { ...details, written: true } : details,
    frames: Math.round(durationOf(details, content) * details.sampleRate),
    messages,
    report: report && { ...report, ...(heard && { heard }) },
    samples,
    band,
  };
}

/** A take that is not kept here has no id: the same take gets the same one each time. */
function idOfContent(samples: Int16Array, { startedAt, chartText }: TakeDetails): string {
  const sound = crc32(new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength));
  const words = crc32(new TextEncoder().encode(startedAt + chartText));
  return `of-${sound.toString(16)}-${words.toString(16)}`;
}
