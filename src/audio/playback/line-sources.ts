/** The three ways in which a line sounds on the audio clock: as it was recorded, slower, or a stretch of it. */
import { rampTo } from '../base/level.ts';
import type { NextPiece } from './slow-line.ts';

/** A line that sounds. */
export interface SoundingLine {
  stop(fadeSeconds: number): void;
}

/** Context time of the first sample. */
export interface Start {
  readonly atContextSeconds: number;
  onended(): void;
}

/** From a place of the buffer to its end, or, where it loops, round and round. */
export function playBuffer(
  context: AudioContext,
  into: AudioNode,
  buffer: AudioBuffer,
  { atContextSeconds, fromSeconds, loops, onended }: Start & { fromSeconds: number; loops: boolean },
): SoundingLine {
  const source = new AudioBufferSourceNode(context, { buffer, loop: loops });
  const fade = context.createGain();
  source.connect(fade).connect(into);
  source.start(atContextSeconds, fromSeconds);
  let stopped = false;
  source.onended = () => {
    fade.disconnect();
    if (!stopped) onended();
  };
  return {
    stop: (fadeSeconds) => {
      stopped = true;
      rampTo(fade.gain, 0, context.currentTime, fadeSeconds);
      source.stop(context.currentTime + fadeSeconds);
    },
  };
}

/** Pieces are asked for while less than this is still to sound. */
const AHEAD_SECONDS = 8;
const LOOK_EVERY_MS = 250;

/**
 * Pieces back to back, asked for as they are needed. Where a piece is late, those after it are late by as much.
 * @param first the piece that sounds first, or null where there is none
 */
export function playPieces(
  context: AudioContext,
  into: AudioNode,
  first: Float32Array<ArrayBuffer> | null,
  next: NextPiece,
  { atContextSeconds, onended }: Start,
): SoundingLine {
  const fade = context.createGain();
  fade.connect(into);
  const sources = new Set<AudioBufferSourceNode>();
  let at = atContextSeconds;
  let over = first === null;
  let asking = false;
  let timer: ReturnType<typeof setInterval> | undefined = undefined;

  const finish = () => {
    clearInterval(timer);
    fade.disconnect();
  };
  const schedule = (samples: Float32Array<ArrayBuffer>) => {
    const buffer = context.createBuffer(1, samples.length, context.sampleRate);
    buffer.copyToChannel(samples, 0);
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(fade);
    const when = Math.max(at, context.currentTime);
    source.start(when);
    at = when + samples.length / context.sampleRate;
    sources.add(source);
    source.onended = () => {
      source.disconnect();
      sources.delete(source);
      if (!over || sources.size > 0) return;
      finish();
      onended();
    };
  };
  const look = async () => {
    if (over || asking || at > context.currentTime + AHEAD_SECONDS) return;
    asking = true;
    const piece = await next();
    asking = false;
    if (over) return;
    if (piece.ok && piece.value !== null) schedule(piece.value);
    else over = true;
  };
  if (first !== null) schedule(first);
  timer = setInterval(() => void look(), LOOK_EVERY_MS);
  void look();
  return {
    stop: (fadeSeconds) => {
      over = true;
      clearInterval(timer);
      rampTo(fade.gain, 0, context.currentTime, fadeSeconds);
      for (const source of sources) {
        source.stop(context.currentTime + fadeSeconds);
        source.onended = finish;
      }
    },
  };
}
