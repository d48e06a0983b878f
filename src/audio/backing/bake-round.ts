/** The part of a recording that goes round, as one buffer that can be looped without a click. */
import type { Stretching } from './stretch.ts';

export interface RoundOrder extends Stretching {
  /** In the recording, at its own pace. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

export interface BakedRound {
  /** One or two, each one round long. */
  readonly channels: readonly Float32Array<ArrayBuffer>[];
  readonly sampleRate: number;
  /** Seconds from the first sample to the first downbeat. */
  readonly leadSeconds: number;
}

/** The seam lies this long before the downbeat, so that it does not touch its attack, which may come a little early. */
export const LEAD_SECONDS = 0.03;
/** Length of the cross-fade at the seam: too short to be heard, too long to click. */
export const SEAM_SECONDS = 0.015;
/** Sound before the round that the stretching needs to settle. */
const RUN_UP_SECONDS = 0.3;

/**
 * Cuts the round out, stretches it, and cross-fades what lies before its beginning into its end, so that the last sample
 * continues in the first.
 * @param stretched slower and shifted, beginning with the given sound; lets a test leave it out
 */
export async function bakeRound(
  channels: readonly Float32Array<ArrayBuffer>[],
  sampleRate: number,
  order: RoundOrder,
  stretched: (
    channels: readonly Float32Array<ArrayBuffer>[],
  ) => Promise<readonly Float32Array<ArrayBuffer>[]>,
): Promise<BakedRound> {
  const { speed } = order;
  const seam = Math.round(SEAM_SECONDS * sampleRate);
  const lead = Math.round(LEAD_SECONDS * sampleRate);
  const length = Math.round(((order.toSeconds - order.fromSeconds) / speed) * sampleRate);
  // Of the recording: the run-up, then what lies under lead and seam, then the round.
  const runUp = Math.round(RUN_UP_SECONDS * sampleRate);
  const head = Math.round((lead + seam) * speed);
  const from = Math.round(order.fromSeconds * sampleRate) - head - runUp;
  const to = Math.round(order.toSeconds * sampleRate) + runUp;
  const sound = await stretched(channels.map((channel) => pieceOf(channel, from, to)));
  const first = Math.round((runUp + head) / speed) - lead - seam;
  return {
    channels: sound.map((side) => folded(side.subarray(first, first + length + seam), seam, length)),
    sampleRate,
    leadSeconds: lead / sampleRate,
  };
}

/** Silence where the recording has not begun or is over. */
function pieceOf(channel: Float32Array, from: number, to: number): Float32Array<ArrayBuffer> {
  const piece = new Float32Array(Math.max(0, to - from));
  const begin = Math.max(0, from);
  piece.set(channel.subarray(begin, Math.max(begin, to)), begin - from);
  return piece;
}

/** `sound` is a seam and a round; the end of the round is cross-faded into the seam at equal power. */
function folded(sound: Float32Array, seam: number, length: number): Float32Array<ArrayBuffer> {
  const round = new Float32Array(length);
  round.set(sound.subarray(seam, seam + length));
  for (let i = 0; i < seam; i++) {
    const angle = ((i + 0.5) / seam) * (Math.PI / 2);
    const at = length - seam + i;
    round[at] = round[at]! * Math.cos(angle) + (sound[i] ?? 0) * Math.sin(angle);
  }
  return round;
}
