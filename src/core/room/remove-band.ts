/**
 * Takes a known backing out of a finished take, without a sweep: finds where it lies and how the clocks drift,
 * learns the path from the take itself, and goes over the take again with what it has learned.
 */
import { align, type Alignment } from './align.ts';
import { Enhancement } from './enhancement.ts';
import { BandFollower, LOOK_AHEAD } from './follow.ts';
import { interpolated } from './interpolate.ts';
import { BLOCK_SIZE, PARTITIONS, ROOM_HZ, toRoomRate } from './room-rate.ts';

/** The direct sound is put this far into the path, so that an error of the alignment stays causal. */
const LEAD_SECONDS = 0.01;
/** The take's beginning is gone over so often before the pass that counts: once keeps 1.6 dB more of the band. */
const LEARNING_PASSES = 2;
const LEARNING_SECONDS = 30;

export interface BandRemoved {
  /** The take without the band, mono at ROOM_HZ. */
  readonly samples: Float32Array;
  readonly alignment: Alignment;
  /** The path that was learned, ROOM_HZ, index 0 at LEAD_SECONDS before the direct sound. */
  readonly path: Float32Array;
  /** How far the level fell where the player rests; see enhancement.ts. */
  readonly removedDb: number;
}

/**
 * @param take mono @param backing mono, what was played, from its file
 * @returns null where the backing is not to be found in the take
 */
export function removeBand(
  take: { readonly samples: Float32Array; readonly sampleRate: number },
  backing: { readonly samples: Float32Array; readonly sampleRate: number },
): BandRemoved | null {
  const microphone = toRoomRate(take.samples, take.sampleRate);
  const source = toRoomRate(backing.samples, backing.sampleRate);
  const alignment = align(microphone, source, ROOM_HZ);
  if (!alignment) return null;
  const band = laidOnTake(source, alignment, microphone.length);
  const beginning = Math.min(microphone.length, LEARNING_SECONDS * ROOM_HZ);
  let path: Float32Array | null = null;
  for (let pass = 0; pass < LEARNING_PASSES; pass++) {
    const learner: BandFollower = follower(path);
    run(learner, microphone.subarray(0, beginning), band);
    path = learner.path();
  }
  const samples = run(follower(path), microphone, band);
  const enhancement = new Enhancement(ROOM_HZ);
  enhancement.add(microphone, samples);
  return {
    samples,
    alignment,
    path: path!,
    removedDb: enhancement.db,
  };
}

const follower = (path: Float32Array | null): BandFollower =>
  new BandFollower({
    blockSize: BLOCK_SIZE,
    partitions: PARTITIONS,
    path: [path],
    heldBackSamples: LOOK_AHEAD,
  });

/** The backing as it ran on the take's clock, early by LEAD_SECONDS and the LOOK_AHEAD of the follower. */
export function laidOnTake(source: Float32Array, alignment: Alignment, length: number): Float32Array {
  const start = (alignment.offsetSeconds - LEAD_SECONDS) * ROOM_HZ - LOOK_AHEAD;
  const speed = 1 + alignment.driftPpm / 1e6;
  return Float32Array.from({ length }, (_, n) => interpolated(source, (n - start) * speed));
}

function run(follower: BandFollower, microphone: Float32Array, band: Float32Array): Float32Array {
  const size = follower.blockSize;
  const out = new Float32Array(microphone.length);
  const last = new Float32Array(size);
  for (let from = 0; from < microphone.length; from += size) {
    const to = from + size;
    if (to <= microphone.length) {
      follower.process(microphone.subarray(from, to), [band.subarray(from, to)], out.subarray(from, to));
    } else {
      const [a, b] = [new Float32Array(size), new Float32Array(size)];
      a.set(microphone.subarray(from));
      b.set(band.subarray(from, microphone.length));
      follower.process(a, [b], last);
      out.set(last.subarray(0, microphone.length - from), from);
    }
  }
  return out;
}
