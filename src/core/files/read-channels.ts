/** A recording that is to be played, not heard: its first two channels as they are, held in memory. */
import { bad, good, type Outcome } from '../base/outcome.ts';
import type { Notice } from '../words/problem.ts';
import { openPcm } from './audio.ts';
import type { ByteSource } from './bytes/bytes.ts';

export interface Channels {
  /** One or two, of one length, at full scale ±1. */
  readonly channels: readonly Float32Array<ArrayBuffer>[];
  readonly sampleRate: number;
  /** What was odd and mended. */
  readonly warnings: readonly Notice[];
}

/** Twenty minutes in stereo are 460 MB at 48 kHz: the longest that is held. */
export const LONGEST_SECONDS = 20 * 60;
const MOST_CHANNELS = 2;
const FIRST_FRAMES = 1 << 20;

/** Reads it whole. Fails for what is no recording, and for one that is too long. */
export async function readChannels(source: ByteSource): Promise<Outcome<Channels>> {
  const opened = await openPcm(source);
  if (!opened.ok) return opened;
  const { sampleRate, channels: count, expectedFrames } = opened.value;
  const limit = LONGEST_SECONDS * sampleRate;
  const warnings: Notice[] = [];
  const size = Math.max(1, Math.min(expectedFrames ?? FIRST_FRAMES, limit));
  let held = Array.from({ length: Math.min(count, MOST_CHANNELS) }, () => new Float32Array(size));
  let frames = 0;
  for await (const block of opened.value.blocks((warning) => warnings.push(warning))) {
    const fresh = block[0]?.length ?? 0;
    if (frames + fresh > limit)
      return bad('file.tooLongToPlay', { name: source.name, minutes: LONGEST_SECONDS / 60 });
    held = held.map((channel, i) => {
      const room = channel.length >= frames + fresh ? channel : grown(channel, frames + fresh);
      const from = block[i]!;
      // What is no number would silence everything that is mixed with it.
      for (let k = 0; k < fresh; k++) room[frames + k] = Math.abs(from[k]!) <= 1e3 ? from[k]! : 0;
      return room;
    });
    frames += fresh;
  }
  return good({ channels: held.map((channel) => channel.slice(0, frames)), sampleRate, warnings });
}

function grown(channel: Float32Array, atLeast: number): Float32Array<ArrayBuffer> {
  const larger = new Float32Array(Math.max(2 * channel.length, atLeast));
  larger.set(channel);
  return larger;
}
