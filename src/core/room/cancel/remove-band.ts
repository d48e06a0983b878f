/**
 * Removes a known backing from a finished take, without a sweep: finds its offset and the drift of the clocks, learns the
 * path from the take itself, and processes the take again with that path.
 */
import { align, type Alignment } from '../align/align.ts';
import { Enhancement } from './enhancement.ts';
import { DIRECT_REACH, directSound } from '../path/first-guess.ts';
import { BandFollower, LOOK_AHEAD, type FollowerSettings } from './follow.ts';
import type { MonoSamples } from '../../base/pcm16.ts';
import { interpolated } from '../../base/interpolate.ts';
import { BLOCK_SIZE, PARTITIONS, ROOM_HZ, toRoomRate } from '../align/room-rate.ts';

/**
 * The direct sound is placed this far into the path, so that an error of the alignment cannot make the path acausal.
 */
const LEAD_SECONDS = 0.01;
/**
 * The stretch where the band begins is processed several times before the final pass. Each time the path is known better:
 * less power is expected beyond it, and the player disturbs it less. Level of the band that is left, relative to the
 * player, tuning takes, first → last pass: a trio in a room −20.7 → −28.8 dB, a guitar under a guitar in rooms
 * −8.9 → −21.6 dB, mixed without a room −4.6 → −25.9 dB.
 */
const LEARNING_PASSES = [
  { caution: 1, beyond: 0.5, clockPpm: 1 },
  { caution: 1, beyond: 0.1, clockPpm: 1 },
  { caution: 1, beyond: 0.03, clockPpm: 3 },
  { caution: 2, beyond: 0.01, clockPpm: 5 },
] as const;
const LEARNING_SECONDS = 40;
/** Error of the measured drift over a long take. */
const DRIFT_DOUBT_PPM = 10;

/** A mono recording, or a stereo one as middle and side. */
export interface Recorded {
  /** Mono: the mean of the channels. */
  readonly samples: MonoSamples;
  /** (Left − right) / 2 of a stereo recording: two loudspeakers have two paths. */
  readonly side?: Float32Array | null;
  readonly sampleRate: number;
}

export interface BandRemoved {
  /** The take without the band, mono at ROOM_HZ. */
  readonly samples: Float32Array;
  readonly alignment: Alignment;
  /** The path that was learned, at ROOM_HZ; index 0 lies LEAD_SECONDS before the direct sound. */
  readonly path: Float32Array;
  /** By how much the level fell where the player rests, dB; see enhancement.ts. */
  readonly removedDb: number;
}

/**
 * @param take mono @param backing what was played, from its file
 * @returns null where the backing is not found in the take
 */
export function removeBand(take: Recorded, backing: Recorded): BandRemoved | null {
  const microphone = toRoomRate(take.samples, take.sampleRate);
  const sources = [backing.samples, backing.side]
    .filter((line) => line !== undefined && line !== null)
    .map((line) => toRoomRate(line, backing.sampleRate));
  const alignment = align(microphone, sources[0]!, ROOM_HZ);
  if (!alignment) return null;
  const { paths, refined } = learned(microphone, sources, alignment);
  const samples = run(
    follower(paths, { clockPpm: DRIFT_DOUBT_PPM }),
    microphone,
    sources.map((source) => laidOnTake(source, refined, microphone.length)),
  );
  const enhancement = new Enhancement(ROOM_HZ);
  enhancement.add(microphone, samples);
  return {
    samples,
    alignment: refined,
    path: paths[0]!,
    removedDb: enhancement.db,
  };
}

/** The paths, and the alignment corrected by the drift that was left. */
function learned(microphone: Float32Array, sources: readonly Float32Array[], found: Alignment) {
  const from = Math.max(
    0,
    Math.min(Math.round(found.offsetSeconds * ROOM_HZ), microphone.length - BLOCK_SIZE),
  );
  const stretch = microphone.subarray(from, from + LEARNING_SECONDS * ROOM_HZ);
  const lead = Math.round(LEAD_SECONDS * ROOM_HZ);
  let refined = found;
  let paths = sources.map(() => new Float32Array(PARTITIONS * BLOCK_SIZE));
  const laid = () =>
    sources.map((source) => laidOnTake(source, refined, from + stretch.length).subarray(from));
  let rest = stretch;
  for (const [channel, line] of laid().entries()) {
    const direct = directSound(rest, line, lead + LOOK_AHEAD);
    paths[channel]!.set(direct, lead - DIRECT_REACH);
    if (channel + 1 < paths.length) rest = without(rest, line, direct, lead + LOOK_AHEAD - DIRECT_REACH);
  }
  for (const pass of LEARNING_PASSES) {
    const learner = follower(paths, pass);
    run(learner, stretch, laid());
    paths = paths.map((_, channel) => new Float32Array(learner.path(channel)));
    refined = later(refined, learner.shiftSamples, stretch.length, from);
  }
  return { paths, refined };
}

/** A take without the direct sound of the loudspeakers; the band is earlier by `early` samples than the taps say. */
function without(take: Float32Array, band: Float32Array, taps: Float32Array, early: number): Float32Array {
  return take.map((x, n) => {
    let sum = x;
    const newest = n - early;
    for (let i = Math.max(0, newest - band.length + 1); i < taps.length && i <= newest; i++) {
      sum -= taps[i]! * band[newest - i]!;
    }
    return sum;
  });
}

/** The alignment with a drift that is larger by `shift` samples over the `length` samples after `from`. */
function later(alignment: Alignment, shift: number, length: number, from: number): Alignment {
  const rate = shift / Math.max(1, length);
  const speed = 1 + alignment.driftPpm / 1e6;
  const moved = (seconds: number) => (seconds * speed - (rate * from) / ROOM_HZ) / (speed - rate);
  return {
    ...alignment,
    offsetSeconds: moved(alignment.offsetSeconds),
    runs: alignment.runs.map(({ fromSeconds, offsetSeconds }) => ({
      fromSeconds,
      offsetSeconds: moved(offsetSeconds),
    })),
    driftPpm: alignment.driftPpm - rate * 1e6,
  };
}

const follower = (paths: readonly Float32Array[], learning: Partial<FollowerSettings>): BandFollower =>
  new BandFollower({
    blockSize: BLOCK_SIZE,
    partitions: PARTITIONS,
    path: paths,
    heldBackSamples: LOOK_AHEAD,
    ...learning,
  });

/** The backing on the clock of the take, earlier by LEAD_SECONDS and the LOOK_AHEAD of the follower. */
export function laidOnTake(source: Float32Array, alignment: Alignment, length: number): Float32Array {
  const speed = 1 + alignment.driftPpm / 1e6;
  const early = LEAD_SECONDS * ROOM_HZ + LOOK_AHEAD;
  const runs = alignment.runs.map(({ fromSeconds, offsetSeconds }) => ({
    begins: fromSeconds * ROOM_HZ - early,
    start: offsetSeconds * ROOM_HZ - early,
  }));
  const laid = new Float32Array(length);
  for (const [i, { begins, start }] of runs.entries()) {
    const from = i === 0 ? 0 : Math.max(0, Math.ceil(begins));
    const to = Math.min(length, Math.ceil(runs[i + 1]?.begins ?? start + source.length / speed + 8));
    for (let n = from; n < to; n++) laid[n] = interpolated(source, (n - start) * speed);
  }
  return laid;
}

function run(follower: BandFollower, microphone: Float32Array, band: readonly Float32Array[]): Float32Array {
  const size = follower.blockSize;
  const out = new Float32Array(microphone.length);
  // The last block is filled up with silence; a whole signal that is filled up would be a second copy of it.
  const last = new Float32Array(size);
  const blockOf = (signal: Float32Array, from: number) => {
    const block = signal.subarray(from, from + size);
    if (block.length === size) return block;
    const filled = new Float32Array(size);
    filled.set(block);
    return filled;
  };
  for (let from = 0; from < out.length; from += size) {
    const whole = from + size <= out.length;
    const rest = whole ? out.subarray(from, from + size) : last;
    follower.process(
      blockOf(microphone, from),
      band.map((line) => blockOf(line, from)),
      rest,
    );
    if (!whole) out.set(last.subarray(0, out.length - from), from);
  }
  return out;
}
