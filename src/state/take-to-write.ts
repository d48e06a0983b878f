/** A take in review, or one from the store, as it is written into a file. */
import { crc32 } from '../core/files/zip/crc32.ts';
import { toPcm16 } from '../core/base/pcm16.ts';
import type { TakeToWrite } from '../core/take-file/take-file.ts';
import type { TakeContent } from './finished-take.ts';
import type { Review } from './phase.ts';
import type { TakeDetails } from './take.ts';

const pcm = (samples: Int16Array | Float32Array): Int16Array =>
  samples instanceof Int16Array ? samples : toPcm16(samples);

/** Seconds of the take. */
export const durationOf = ({ sampleRate }: TakeDetails, content: TakeContent): number =>
  content.kind === 'notes' ? content.durationSeconds : content.audio.samples.length / sampleRate;

export function takeToWrite(
  review: Pick<Review, 'id' | 'details' | 'content' | 'report' | 'heard'>,
): TakeToWrite {
  const { details, content, report, heard } = review;
  const samples = content.kind === 'sound' ? pcm(content.audio.samples) : new Int16Array(0);
  const band = content.kind === 'sound' && content.backing?.kind === 'band' ? content.backing.samples : null;
  const messages = content.kind === 'notes' ? content.messages : null;
  const isWritten = content.kind === 'notes' && messages === null;
  return {
    id: review.id ?? idOfContent(samples, details),
    details: isWritten ? { ...details, written: true } : details,
    frames: Math.round(durationOf(details, content) * details.sampleRate),
    messages,
    report: { ...report, ...(heard && { heard }) },
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
