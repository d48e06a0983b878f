/**
 * Takes a known backing out of a finished take, without a sweep: finds where it lies and how the clocks drift,
 * learns the path from the take itself, and goes over the take again with what it has learned.
 */
import { Resampler } from '../pitch/resample.ts';
import { align, type Alignment } from './align.ts';
import { BandFollower, LOOK_AHEAD } from './follow.ts';
import { interpolated } from './interpolate.ts';

/** The room works at the listener's own rate: above 5 kHz no pitch is looked for. */
export const ROOM_HZ = 12_000;
export const BLOCK_SIZE = 128;
/** Length of path that is modelled: an RT60 of 0.4 s has fallen by 60 dB there, one of 0.8 s by 30. */
const PATH_SECONDS = 0.42;
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
  /**
   * Echo return loss enhancement as ITU-T G.168 has it, level before over level after, in dB. It says something only
   * where the player rests: told is what nineteen in twenty stretches of a quarter second stay below.
   */
  readonly removedDb: number;
}

export const pathPartitions = (): number => Math.ceil((PATH_SECONDS * ROOM_HZ) / BLOCK_SIZE);

/** Mono samples at any rate, brought to ROOM_HZ. */
export function toRoomRate(samples: Float32Array, sampleRate: number): Float32Array {
  if (Math.round(sampleRate) === ROOM_HZ) return samples;
  const resampler = new Resampler(sampleRate, ROOM_HZ, 4800, 6600);
  const piece = resampler.largestInput;
  const out = new Float32Array(Math.ceil((samples.length * ROOM_HZ) / sampleRate) + 8);
  let written = 0;
  const tail = new Float32Array(Math.ceil(resampler.delaySamples) + 1);
  for (const source of [samples, tail]) {
    for (let from = 0; from < source.length; from += piece) {
      const to = Math.min(source.length, from + piece);
      const room = new Float32Array(Math.ceil(((to - from) * ROOM_HZ) / sampleRate) + 4);
      const count = resampler.process(source, from, to, room, 0);
      const fits = Math.min(count, out.length - written);
      out.set(room.subarray(0, fits), written);
      written += fits;
    }
  }
  return out.subarray(0, Math.min(written, Math.round((samples.length * ROOM_HZ) / sampleRate)));
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
  return {
    samples,
    alignment,
    path: path!,
    removedDb: returnLossEnhancement(microphone, samples),
  };
}

const follower = (path: Float32Array | null): BandFollower =>
  new BandFollower({
    blockSize: BLOCK_SIZE,
    partitions: pathPartitions(),
    path,
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
      follower.process(microphone.subarray(from, to), band.subarray(from, to), out.subarray(from, to));
    } else {
      const [a, b] = [new Float32Array(size), new Float32Array(size)];
      a.set(microphone.subarray(from));
      b.set(band.subarray(from, microphone.length));
      follower.process(a, b, last);
      out.set(last.subarray(0, microphone.length - from), from);
    }
  }
  return out;
}

function returnLossEnhancement(before: Float32Array, after: Float32Array): number {
  const stretch = ROOM_HZ / 4;
  const falls: number[] = [];
  for (let from = 0; from + stretch <= before.length; from += stretch) {
    const [loud, quiet] = [before, after].map((x) => energy(x.subarray(from, from + stretch))) as [
      number,
      number,
    ];
    if (loud > SILENT_POWER * stretch) falls.push(10 * Math.log10(loud / quiet));
  }
  falls.sort((a, b) => a - b);
  return falls[Math.floor(0.95 * falls.length)] ?? 0;
}

/** −80 dB of full scale. */
const SILENT_POWER = 1e-8;

function energy(samples: Float32Array): number {
  let sum = 1e-20;
  for (const x of samples) sum += x * x;
  return sum;
}
