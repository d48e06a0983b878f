/** A player's line → mono samples: the same kit; bends and slides are made with the pitch wheel. */
import { largest } from '../base/extremes.ts';
import type { Move, Stroke } from '../band/line.ts';
import { bendRange, type Synth } from './synth.ts';
import type { Stereo } from './stereo.ts';

/** How long the finger takes, in seconds. Common practice: a bend is slow, a hammer-on is a jump. */
const moveSeconds = { bend: 0.13, release: 0.11, slide: 0.09, hammer: 0.008, pull: 0.008 } as const;
const vibrato = {
  rateHz: 5.4,
  halfWidthSemitones: 0.22,
  startsAfterSeconds: 0.25,
  growsSeconds: 0.3,
} as const;
/** Frames between two moves of the pitch wheel: 2.7 ms at 48 kHz, too short for a step to be heard. */
const wheelFrames = 128;
const tailSeconds = 1.5;
const channel = 0;
/** Gain that brings a firmly struck note near half of full scale, as a player sets a recording level. */
const lineGain = 3.5;

/**
 * Renders a line; sample 0 is `startBeat`. One string sounds at a time: a new stroke ends the one before.
 * @throws RangeError when a move leaves the pitch wheel's range (an octave).
 */
export function renderLine(
  synth: Synth,
  strokes: readonly Stroke[],
  program: number,
  { bpm, startBeat }: { readonly bpm: number; readonly startBeat: number },
): Float32Array<ArrayBuffer> {
  const framesPerBeat = (60 / bpm) * synth.sampleRate;
  const frameOf = (beat: number) => Math.round((beat - startBeat) * framesPerBeat);
  const sorted = strokes.toSorted((a, b) => a.beat - b.beat);
  const lastFrame = largest(
    sorted.map((stroke) => frameOf(stroke.beat + stroke.durationBeats)),
    0,
  );
  const length = lastFrame + Math.ceil(tailSeconds * synth.sampleRate);
  const sound: Stereo = [new Float32Array(length), new Float32Array(length)];
  synth.reset();
  synth.program(channel, program);
  let at = 0;
  sorted.forEach((stroke, i) => {
    const start = frameOf(stroke.beat);
    const nextStart = sorted[i + 1] ? frameOf(sorted[i + 1]!.beat) : Infinity;
    const end = Math.min(frameOf(stroke.beat + stroke.durationBeats), nextStart);
    synth.render([sound], at, start);
    synth.bend(channel, 0);
    synth.strike(channel, stroke.midi, stroke.velocity);
    let wheel = 0;
    for (at = start; at < end;) {
      const semitones = bendAt(stroke, (at - start) / synth.sampleRate, 60 / bpm);
      if (semitones !== wheel) synth.bend(channel, semitones);
      wheel = semitones;
      const next = Math.min(end, at + wheelFrames);
      synth.render([sound], at, next);
      at = next;
    }
    synth.release(channel, stroke.midi);
  });
  synth.render([sound], at, length);
  return Float32Array.from(sound[0], (left, i) => (lineGain * (left + sound[1][i]!)) / 2);
}

/** Semitones from the struck key, `seconds` after the stroke. */
export function bendAt(stroke: Stroke, seconds: number, beatSeconds: number): number {
  let semitones = 0;
  let settled = 0;
  for (const move of stroke.moves ?? []) {
    const target = move.midi - stroke.midi;
    if (Math.abs(target) > bendRange)
      throw new RangeError(`a move reaches at most ${bendRange} semitones, not ${target}`);
    const since = seconds - move.afterBeats * beatSeconds;
    if (since < 0) break;
    semitones +=
      (target - semitones) * progress(move, Math.min(1, since / moveSeconds[move.kind]), target - semitones);
    settled = move.afterBeats * beatSeconds + moveSeconds[move.kind];
  }
  if (!stroke.vibrato) return semitones;
  const since = seconds - settled - vibrato.startsAfterSeconds;
  if (since <= 0) return semitones;
  const depth = vibrato.halfWidthSemitones * Math.min(1, since / vibrato.growsSeconds);
  return semitones + depth * Math.sin(2 * Math.PI * vibrato.rateHz * since);
}

/** Share of a move that is done: a slide goes fret by fret, a finger on one fret bends smoothly. */
function progress(move: Move, done: number, semitones: number): number {
  if (move.kind !== 'slide') return (1 - Math.cos(Math.PI * done)) / 2;
  const frets = Math.max(1, Math.abs(Math.round(semitones)));
  return Math.min(1, Math.floor(done * frets + 1e-9) / frets + (done >= 1 ? 1 : 0));
}
