// eslint-disable-next-line @typescript-eslint/triple-slash-reference -- every project that takes this file in needs it
/// <reference path="./signalsmith-stretch.d.ts" />
/**
 * Slower without a change of pitch, and shifted by cents without a change of tempo, by `signalsmith-stretch`. The
 * package is made for an audio worklet that runs in real time; here its engine is called directly, in a worker, forty
 * times as fast.
 */

import { Resampler } from '../../core/base/resample.ts';

/** How the recording is to sound. */
export interface Stretching {
  /** 1 as recorded, 0.5 half as fast. */
  readonly speed: number;
  /** Above 0 higher. */
  readonly cents: number;
}

/** The functions of the engine, as the package's processor calls them. */
interface Engine {
  readonly HEAP8?: Int8Array;
  readonly exports?: { readonly memory: WebAssembly.Memory };
  _presetDefault(channels: number, sampleRate: number): void;
  _reset(): void;
  _setTransposeSemitones(semitones: number, tonalityLimit: number): void;
  /** Returns the address of the input buffers, one a channel; the output buffers follow them. */
  _setBuffers(channels: number, frames: number): number;
  _process(inputFrames: number, outputFrames: number): void;
  _inputLatency(): number;
  _outputLatency(): number;
}

interface Processor {
  readonly wasmReady: boolean;
  readonly wasmModule: Engine | null;
}

/** Frames that are put in at a time; slowed to half, twice as many come out. */
const PIECE_FRAMES = 2048;
const BUFFER_FRAMES = 3 * PIECE_FRAMES;
/** As in the package. */
const TONALITY_HZ = 8000;
/** The highest partials that are kept when a sound is read faster, as a share of the sample rate. */
const PASS_OF_RATE = 0.43;
const PIECES_A_WORD = 64;
const ENGINE_WAIT_MS = 10_000;

/** The rendering was cancelled, because another one was requested. */
export class CalledOff extends Error {}

let engine: Promise<Engine> | null = null;

/**
 * The same sound, slower and shifted. It begins where the given sound begins, and lasts its length over the speed, to
 * the frame. The engine's own transposition is off by up to 13 cents under 500 Hz (measured), its stretching by nothing:
 * so the sound is stretched alone, and then read faster or slower.
 * @param progress called with the share done; false cancels the work
 * @throws CalledOff where `progress` did so
 * @example await stretch([left, right], 44_100, { speed: 0.75, cents: -20 })
 */
export async function stretch(
  channels: readonly Float32Array<ArrayBuffer>[],
  sampleRate: number,
  { speed, cents }: Stretching,
  progress: (share: number) => boolean = () => true,
): Promise<readonly Float32Array<ArrayBuffer>[]> {
  if (speed === 1 && cents === 0) return channels;
  const faster = 2 ** (cents / 1200);
  const slowed = await lengthen(
    await (engine ??= loadEngine(sampleRate)),
    channels,
    sampleRate,
    speed / faster,
    progress,
  );
  if (cents === 0) return slowed;
  const frames = Math.round((channels[0]?.length ?? 0) / speed);
  // As with a tape, pitch and tempo rise together.
  return slowed.map((side) => atRate(side, sampleRate * faster, sampleRate, frames));
}

async function lengthen(
  at: Engine,
  channels: readonly Float32Array<ArrayBuffer>[],
  sampleRate: number,
  speed: number,
  progress: (share: number) => boolean,
): Promise<readonly Float32Array<ArrayBuffer>[]> {
  const out = channels.map(() => new Float32Array(Math.round((channels[0]?.length ?? 0) / speed)));
  let given = 0;
  let pieces = 0;
  for (const piece of slowedPieces(at, channels, sampleRate, speed)) {
    out.forEach((side, c) => side.set(piece[c]!, given));
    given += piece[0]?.length ?? 0;
    if (pieces++ % PIECES_A_WORD > 0) continue;
    // Other tasks run here. There is only one engine, so that a rendering that was cancelled meanwhile must not use it.
    await new Promise((resolve) => setTimeout(resolve, 0));
    if (!progress(Math.min(1, given / (out[0]?.length || 1)))) throw new CalledOff();
  }
  return out;
}

/**
 * Slower at the same pitch, piece by piece: played back to back they are the whole. There is one engine: a second call
 * makes the first one's further pieces meaningless.
 * @param speed 1 as recorded, 0.5 half as fast
 */
export async function stretchInPieces(
  channels: readonly Float32Array[],
  sampleRate: number,
  speed: number,
): Promise<Generator<readonly Float32Array<ArrayBuffer>[]>> {
  return slowedPieces(await (engine ??= loadEngine(sampleRate)), channels, sampleRate, speed);
}

function* slowedPieces(
  at: Engine,
  channels: readonly Float32Array[],
  sampleRate: number,
  speed: number,
): Generator<readonly Float32Array<ArrayBuffer>[]> {
  at._presetDefault(channels.length, sampleRate);
  at._reset();
  at._setTransposeSemitones(0, TONALITY_HZ / sampleRate);
  const address = at._setBuffers(channels.length, BUFFER_FRAMES);
  const bufferOf = (number: number, frames: number) =>
    new Float32Array(memoryOf(at), address + 4 * BUFFER_FRAMES * number, frames);

  const frames = channels[0]?.length ?? 0;
  const wanted = Math.round(frames / speed);
  // What goes in comes out later by both latencies; that much comes out first and is left out.
  const late = Math.round(at._outputLatency() + at._inputLatency() / speed);
  let taken = 0;
  let given = 0;
  while (given < wanted + late) {
    channels.forEach((channel, c) => {
      const piece = bufferOf(c, PIECE_FRAMES);
      piece.fill(0);
      piece.set(channel.subarray(taken, taken + PIECE_FRAMES));
    });
    taken += PIECE_FRAMES;
    const fresh = Math.round(taken / speed) - given;
    at._process(PIECE_FRAMES, fresh);
    const from = Math.max(0, late - given);
    const to = Math.min(fresh, wanted + late - given);
    given += fresh;
    if (from < to) yield channels.map((_, c) => bufferOf(channels.length + c, fresh).slice(from, to));
  }
}

/** The samples at another rate, in Hz. @param frames how many of them are wanted */
export function atRate(
  samples: Float32Array,
  fromRate: number,
  toRate: number,
  frames = Math.round((samples.length * toRate) / fromRate),
): Float32Array<ArrayBuffer> {
  const resampler = new Resampler(fromRate, toRate, PASS_OF_RATE * toRate, toRate / 2);
  const out = new Float32Array(frames);
  // The filter looks ahead: at the end it is fed with silence.
  const ahead = Math.ceil(resampler.delaySamples) + 1;
  const silence = new Float32Array(ahead);
  const block = new Float32Array(resampler.largestInput * 2 + 8);
  let written = 0;
  const feed = (input: Float32Array) => {
    for (let from = 0; from < input.length; from += resampler.largestInput) {
      const to = Math.min(input.length, from + resampler.largestInput);
      const fresh = resampler.process(input, from, to, block, 0);
      out.set(block.subarray(0, Math.max(0, Math.min(fresh, frames - written))), written);
      written = Math.min(frames, written + fresh);
    }
  };
  feed(samples);
  feed(silence);
  return out;
}

const memoryOf = (at: Engine): ArrayBuffer => (at.exports?.memory.buffer ?? at.HEAP8?.buffer) as ArrayBuffer;

/**
 * When it is loaded, the package looks for two global names of an audio worklet and registers its processor there. The
 * names are defined for that moment, and the engine is taken from the processor.
 */
async function loadEngine(sampleRate: number): Promise<Engine> {
  let registered: (new (options: object) => Processor) | null = null;
  const lent = {
    AudioWorkletProcessor: class {
      readonly port = { postMessage: () => undefined, onmessage: null };
    },
    registerProcessor: (_name: string, made: new (options: object) => Processor) => (registered = made),
    sampleRate,
  };
  Object.assign(globalThis, lent);
  await import('signalsmith-stretch');
  const Made = registered as (new (options: object) => Processor) | null;
  if (Made === null) throw new Error('the stretching did not register');
  const processor = new Made({ numberOfOutputs: 1, outputChannelCount: [2] });
  const began = Date.now();
  while (!processor.wasmReady) {
    if (Date.now() - began > ENGINE_WAIT_MS) throw new Error('the stretching did not start');
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  return processor.wasmModule!;
}
