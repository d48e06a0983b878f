/**
 * Takes a known backing out of a finished take, without a sweep: finds where it lies and how the clocks drift,
 * learns the path from the take itself, and goes over the take again with what it has learned.
 */
import { align, type Alignment } from './align.ts';
import { Enhancement } from './enhancement.ts';
import { directGain } from './first-guess.ts';
import { BandFollower, LOOK_AHEAD, type FollowerSettings } from './follow.ts';
import { interpolated } from './interpolate.ts';
import { BLOCK_SIZE, PARTITIONS, ROOM_HZ, toRoomRate } from './room-rate.ts';

/** The direct sound is put this far into the path, so that an error of the alignment stays causal. */
const LEAD_SECONDS = 0.01;
/**
 * The stretch where the band begins is gone over again and again before the pass that counts. Each time the path is
 * known better: less may be beyond it, and the player is kept out more. Band left against the player, tuning takes:
 * trio in a room −20.7 → −28.8 dB, a guitar under a guitar in rooms −8.9 → −21.6 dB, mixed without a room −4.6 → −25.9.
 */
const LEARNING_PASSES = [
  { caution: 1, beyond: 0.5, clockPpm: 1 },
  { caution: 1, beyond: 0.1, clockPpm: 1 },
  { caution: 1, beyond: 0.03, clockPpm: 3 },
  { caution: 2, beyond: 0.01, clockPpm: 5 },
] as const;
const LEARNING_SECONDS = 40;
/** How far the drift that was found may be off over a long take. */
const DRIFT_DOUBT_PPM = 10;

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
  const { path, refined } = learned(microphone, source, alignment);
  const samples = run(
    follower(path, { clockPpm: DRIFT_DOUBT_PPM }),
    microphone,
    laidOnTake(source, refined, microphone.length),
  );
  const enhancement = new Enhancement(ROOM_HZ);
  enhancement.add(microphone, samples);
  return {
    samples,
    alignment: refined,
    path,
    removedDb: enhancement.db,
  };
}

/** The path, and the alignment with what was left of its drift. */
function learned(microphone: Float32Array, source: Float32Array, found: Alignment) {
  const from = Math.max(
    0,
    Math.min(Math.round(found.offsetSeconds * ROOM_HZ), microphone.length - BLOCK_SIZE),
  );
  const stretch = microphone.subarray(from, from + LEARNING_SECONDS * ROOM_HZ);
  const lead = Math.round(LEAD_SECONDS * ROOM_HZ);
  let refined = found;
  let path: Float32Array = new Float32Array(PARTITIONS * BLOCK_SIZE);
  const laid = () => laidOnTake(source, refined, from + stretch.length).subarray(from);
  path[lead] = directGain(stretch, laid(), lead + LOOK_AHEAD);
  for (const pass of LEARNING_PASSES) {
    const learner = follower(path, pass);
    run(learner, stretch, laid());
    path = learner.path();
    refined = later(refined, learner.shiftSamples, stretch.length, from);
  }
  return { path, refined };
}

/** An alignment by which the backing falls behind by `shift` samples more over the `length` samples after `from`. */
function later(alignment: Alignment, shift: number, length: number, from: number): Alignment {
  const rate = shift / Math.max(1, length);
  const speed = 1 + alignment.driftPpm / 1e6;
  const offsetSeconds = (alignment.offsetSeconds * speed - (rate * from) / ROOM_HZ) / (speed - rate);
  return { ...alignment, offsetSeconds, driftPpm: alignment.driftPpm - rate * 1e6 };
}

const follower = (path: Float32Array, learning: Partial<FollowerSettings> = {}): BandFollower =>
  new BandFollower({
    blockSize: BLOCK_SIZE,
    partitions: PARTITIONS,
    path: [path],
    heldBackSamples: LOOK_AHEAD,
    ...learning,
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
