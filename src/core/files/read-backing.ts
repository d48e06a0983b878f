/** A recording that is to be taken out of another: one line, and what left and right differ by where they do. */
import { good, type Outcome } from '../base/outcome.ts';
import { openAudio, readWhole, type Recording } from './audio.ts';
import type { ByteSource } from './bytes/bytes.ts';
import { readChannels } from './read-channels.ts';

export interface BackingRecording extends Recording {
  /** Half of left less right; null in mono, and where they hardly differ. */
  readonly side: Float32Array<ArrayBuffer> | null;
}

/** Less than this of the whole, −36 dB, lies under what is left of a band that is out: not worth a second path. */
const LEAST_SIDE = 2.5e-4;

/** Reads it whole; a stereo one is read twice, as every other reader takes it and as it is. */
export async function readBacking(source: ByteSource): Promise<Outcome<BackingRecording>> {
  const opened = await openAudio(source);
  if (!opened.ok) return opened;
  const line = await readWhole(opened.value, source.name);
  if (!line.ok) return line;
  const both = opened.value.channels > 1 ? await readChannels(source) : null;
  const [left, right] = both?.ok ? both.value.channels : [];
  return good({ ...line.value, side: left && right ? sideOf(left, right) : null });
}

function sideOf(left: Float32Array, right: Float32Array): Float32Array<ArrayBuffer> | null {
  const side = new Float32Array(left.length);
  let [whole, apart] = [0, 0];
  for (let i = 0; i < side.length; i++) {
    const half = (left[i]! - right[i]!) / 2;
    side[i] = half;
    apart += half * half;
    whole += ((left[i]! + right[i]!) / 2) ** 2;
  }
  return apart > LEAST_SIDE * (whole + apart) ? side : null;
}
