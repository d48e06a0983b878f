/**
 * What every audio decoder of this folder gives: channels in blocks, in order. A decoder only decodes; mixing
 * down and cleaning are `mix.ts`.
 */

import { problem, type Notice, type Problem } from '../../words/problem.ts';

/** One array a channel, all of one length, full scale ±1. Valid until the next block is asked for. */
export type ChannelBlock = readonly Float32Array[];

/** Receives what was wrong in the file and was repaired. */
export type Warn = (warning: Notice) => void;

export interface PcmStream {
  readonly sampleRate: number;
  readonly channels: number;
  /** Frames (one sample a channel) that the file says it holds, or null where only reading tells. */
  readonly expectedFrames: number | null;
  /** Reads from the beginning, each time it is called. */
  blocks(warn: Warn): AsyncGenerator<ChannelBlock>;
}

/** Frames a block: a third of a second at 48 kHz, small against memory and large against the overhead. */
export const BLOCK_FRAMES = 16_384;

export const LOWEST_SAMPLE_RATE = 8000;
export const HIGHEST_SAMPLE_RATE = 192_000;

/** The problem where the rate or the channels are out of what can be graded, else null. */
export function unusable(name: string, sampleRate: number, channels: number): Problem | null {
  if (channels < 1) return problem('sound.noChannel', { name });
  if (!(sampleRate >= LOWEST_SAMPLE_RATE && sampleRate <= HIGHEST_SAMPLE_RATE))
    return problem('sound.sampleRate', {
      name,
      hz: sampleRate,
      lowest: LOWEST_SAMPLE_RATE,
      highest: HIGHEST_SAMPLE_RATE,
    });
  return null;
}
