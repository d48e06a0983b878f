import type { HeardNote } from '../../take/note.ts';
import { wasRising } from './octave.ts';
import type { Track } from '../path/track.ts';

/** The span of a note whose pitch is to be measured. */
export interface Span {
  readonly onsetSeconds: number;
  readonly attack: 'struck' | 'legato';
  readonly from: number;
  /** Last frame with its pitch. */
  readonly last: number;
  readonly peakDb: number;
  /** First frame of the plateau where it came to rest, and that plateau's pitch. */
  readonly plateauFrom: number;
  readonly pitch: number;
}

/** Smaller travels than this are intonation, not a bend (semitones). */
const LEAST_BEND = 0.2;
/** A string is bent by two tones at most. */
const WIDEST_BEND = 4.5;
/** Frames left out at the start of a plateau: the attack still sounds in their windows. */
const SETTLE_FRAMES = 2;
/** Vibrato: rate in Hz, half the width in cents, and the half swings it takes to be one. */
const VIBRATO_HZ: readonly [number, number] = [3, 9];
const VIBRATO_CENTS: readonly [number, number] = [7, 150];
const HALF_SWINGS = 4;
const FRAMES_A_SECOND = 125;

/**
 * Frames of the span → the note: pitch where it rests (median), or its centre under vibrato; bend; vibrato.
 * @param reach frames further than this from the span's pitch, in semitones, are another string's
 */
export function measure(track: Track, span: Span, offsetSeconds: number, reach: number): HeardNote {
  const settled = Math.min(span.plateauFrom + SETTLE_FRAMES, span.last);
  const values: number[] = [];
  let clarity = 0;
  for (let f = settled; f <= span.last; f++) {
    const midi = track.midi(f);
    if (!(Math.abs(midi - span.pitch) < reach)) continue;
    values.push(midi);
    clarity += track.clarity(f);
  }
  const sorted = values.slice().sort((a, b) => a - b);
  const median = sorted[sorted.length >> 1] ?? span.pitch;
  const vibrato = vibratoOf(values, sorted, median);
  const centre = vibrato ? (quantile(sorted, 0.05) + quantile(sorted, 0.95)) / 2 : median;
  const bend = vibrato && span.plateauFrom === span.from ? 0 : median - startOf(track, span, median);
  return {
    onsetSeconds: span.onsetSeconds,
    offsetSeconds: Math.max(offsetSeconds, span.onsetSeconds),
    midi: centre + (wasRising(track, span) ? 12 : 0),
    confidence: Math.max(0, Math.min(1, clarity / Math.max(1, values.length))),
    levelDb: span.peakDb,
    attack: span.attack,
    bendSemitones: Math.abs(bend) < LEAST_BEND ? 0 : bend,
    vibrato,
    second: null,
  };
}

/** Where the pitch began: the median of the first three frames, or where it arrives when they are of another octave. */
function startOf(track: Track, span: Span, arrival: number): number {
  const first: number[] = [];
  for (let f = span.from; f <= span.last && first.length < 3; f++) {
    const midi = track.midi(f);
    if (Math.abs(midi - arrival) < WIDEST_BEND) first.push(midi);
  }
  first.sort((a, b) => a - b);
  return first.length === 3 ? first[1]! : arrival;
}

/** Counts swings past the centre, with a dead zone of a third of the half width about it. */
function vibratoOf(
  values: readonly number[],
  sorted: readonly number[],
  centre: number,
): HeardNote['vibrato'] {
  const half = (quantile(sorted, 0.92) - quantile(sorted, 0.08)) / 2;
  const depthCents = 100 * half;
  if (depthCents < VIBRATO_CENTS[0] || depthCents > VIBRATO_CENTS[1]) return null;
  let side = 0;
  let swings = 0;
  let first = 0;
  let last = 0;
  let longest = 0;
  for (let i = 0; i < values.length; i++) {
    const away = values[i]! - centre;
    const now = away > half / 3 ? 1 : away < -half / 3 ? -1 : 0;
    if (now === 0 || now === side) continue;
    if (side === 0) first = i;
    else {
      swings++;
      longest = Math.max(longest, i - last);
    }
    side = now;
    last = i;
  }
  if (swings < HALF_SWINGS) return null;
  const rateHz = (swings / 2 / (last - first)) * FRAMES_A_SECOND;
  // Even swings only: a wandering pitch is no vibrato.
  if (longest > (2.2 * (last - first)) / swings) return null;
  return rateHz >= VIBRATO_HZ[0] && rateHz <= VIBRATO_HZ[1] ? { rateHz, depthCents } : null;
}

function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.round(share * (sorted.length - 1))] ?? NaN;
}
