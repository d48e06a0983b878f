/** A stretch of a take as two sounds of one length, line and band: what "hear it" plays and what a loop goes round. */
import { good, type Outcome } from '../../core/base/outcome.ts';
import type { PassageSound } from '../band/band-stretches.ts';
import type { Along, Stretch } from './along.ts';
import { wholeOf, type SlowLine } from './slow-line.ts';

export interface Passage extends Stretch {
  readonly loops: boolean;
  /** Sounds in place of what was played: begins where the passage begins, at the passage's speed. */
  readonly line?: { readonly samples: Float32Array<ArrayBuffer>; readonly sampleRate: number };
}

export interface ReadyPassage {
  readonly passage: Passage;
  readonly speed: number;
  readonly line: AudioBuffer;
  readonly band: AudioBuffer | null;
}

/** Of both ends, so that neither clicks. */
const EDGE_SECONDS = 0.006;

/** The same passage at the same speed: it need not be made again. */
export const isSamePassage = (ready: ReadyPassage | null, passage: Passage, speed: number): boolean =>
  ready !== null &&
  ready.speed === speed &&
  ready.passage.fromSeconds === passage.fromSeconds &&
  ready.passage.toSeconds === passage.toSeconds &&
  ready.passage.line === passage.line;

export interface TakeToCut {
  /** As it was played; null where that is made piece by piece. */
  readonly buffer: (() => AudioBuffer) | null;
  readonly slow: SlowLine;
  readonly along: Along | null;
}

/** Both sounds at once: the band is rendered while the line is slowed. */
export async function makePassage(
  context: BaseAudioContext,
  { buffer, slow, along }: TakeToCut,
  passage: Passage,
  speed: number,
): Promise<Outcome<ReadyPassage>> {
  const { fromSeconds, toSeconds } = passage;
  const [line, band] = await Promise.all([
    passage.line !== undefined
      ? good(passage.line)
      : speed === 1 && buffer !== null
        ? good(cut(buffer(), passage))
        : slowed(slow, passage, speed, context.sampleRate),
    along?.passage(passage, speed) ?? good(null),
  ]);
  if (!line.ok) return line;
  if (!band.ok) return band;
  const seconds = (toSeconds - fromSeconds) / speed;
  return good({
    passage,
    speed,
    line: bufferOf(context, [line.value.samples], line.value.sampleRate, seconds),
    band: band.value && bandBuffer(context, band.value, seconds),
  });
}

function cut(buffer: AudioBuffer, { fromSeconds, toSeconds }: Stretch) {
  const { sampleRate } = buffer;
  const samples = buffer
    .getChannelData(0)
    .slice(Math.round(fromSeconds * sampleRate), Math.round(toSeconds * sampleRate));
  return { samples, sampleRate };
}

async function slowed(
  slow: SlowLine,
  { fromSeconds, toSeconds }: Stretch,
  speed: number,
  sampleRate: number,
) {
  const samples = await wholeOf(slow.pieces(fromSeconds, toSeconds, speed));
  return samples.ok ? good({ samples: samples.value, sampleRate }) : samples;
}

const bandBuffer = (context: BaseAudioContext, { channels, sampleRate }: PassageSound, seconds: number) =>
  bufferOf(context, channels, sampleRate, seconds);

/** Exactly so many seconds, its ends faded: line and band go round together. */
function bufferOf(
  context: BaseAudioContext,
  channels: readonly Float32Array<ArrayBuffer>[],
  sampleRate: number,
  seconds: number,
): AudioBuffer {
  const frames = Math.max(1, Math.round(seconds * sampleRate));
  const buffer = context.createBuffer(channels.length, frames, sampleRate);
  const edge = Math.min(Math.round(EDGE_SECONDS * sampleRate), frames >> 1);
  channels.forEach((channel, c) => {
    const side = new Float32Array(frames);
    side.set(channel.subarray(0, frames));
    for (let i = 0; i < edge; i++) {
      side[i]! *= i / edge;
      side[frames - 1 - i]! *= i / edge;
    }
    buffer.copyToChannel(side, c);
  });
  return buffer;
}
