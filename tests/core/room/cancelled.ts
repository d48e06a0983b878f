import type { BandFollower } from '../../../src/core/room/cancel/follow.ts';

/** Microphone without its band, block by block; the band is handed over `ahead` samples early. */
export function cancelled(
  follower: BandFollower,
  microphone: Float32Array,
  band: Float32Array,
  ahead: number,
): Float32Array {
  const size = follower.blockSize;
  const early = new Float32Array(microphone.length);
  early.set(band.subarray(ahead, microphone.length));
  const out = new Float32Array(microphone.length);
  for (let from = 0; from + size <= out.length; from += size) {
    const to = from + size;
    follower.process(microphone.subarray(from, to), [early.subarray(from, to)], out.subarray(from, to));
  }
  return out;
}
