import type { HeardNote } from '../../take/note.ts';
import { wasRising } from './octave.ts';
import type { Track } from '../path/track.ts';
import { FRAMES_A_SECOND } from '../tuning/frames.ts';
import * as S from '../tuning/measure.ts';

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

/**
 * Frames of the span → the note: pitch where it rests (median), or its centre under vibrato; bend; vibrato.
 * @param reach frames further than this from the span's pitch, in semitones, are another string's
 */
export function measure(track: Track, span: Span, offsetSeconds: number, reach: number): HeardNote {
  const settled = Math.min(span.plateauFrom + S.SETTLE_FRAMES, span.last);
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
  const centre = vibrato
    ? (quantile(sorted, S.CENTRE_QUANTILE) + quantile(sorted, 1 - S.CENTRE_QUANTILE)) / 2
    : median;
  const bend = vibrato && span.plateauFrom === span.from ? 0 : median - startOf(track, span, median);
  return {
    onsetSeconds: span.onsetSeconds,
    offsetSeconds: Math.max(offsetSeconds, span.onsetSeconds),
    midi: centre + (wasRising(track, span) ? 12 : 0),
    confidence: Math.max(0, Math.min(1, clarity / Math.max(1, values.length))),
    levelDb: span.peakDb,
    attack: span.attack,
    bendSemitones: Math.abs(bend) < S.LEAST_BEND ? 0 : bend,
    vibrato,
    second: null,
  };
}

/** Where the pitch began: the median of its first frames, or where it arrives when they are of another octave. */
function startOf(track: Track, span: Span, arrival: number): number {
  const first: number[] = [];
  for (let f = span.from; f <= span.last && first.length < S.START_FRAMES; f++) {
    const midi = track.midi(f);
    if (Math.abs(midi - arrival) < S.WIDEST_BEND) first.push(midi);
  }
  first.sort((a, b) => a - b);
  return first.length === S.START_FRAMES ? first[S.START_FRAMES >> 1]! : arrival;
}

/** Counts swings past the centre, with a dead zone of a third of the half width about it. */
function vibratoOf(
  values: readonly number[],
  sorted: readonly number[],
  centre: number,
): HeardNote['vibrato'] {
  const half = (quantile(sorted, 1 - S.WIDTH_QUANTILE) - quantile(sorted, S.WIDTH_QUANTILE)) / 2;
  const depthCents = 100 * half;
  if (depthCents < S.VIBRATO_NARROWEST_CENTS || depthCents > S.VIBRATO_WIDEST_CENTS) return null;
  const edge = half * S.SWING_SHARE;
  let side = 0;
  let swings = 0;
  let first = 0;
  let last = 0;
  let longest = 0;
  for (let i = 0; i < values.length; i++) {
    const away = values[i]! - centre;
    const now = away > edge ? 1 : away < -edge ? -1 : 0;
    if (now === 0 || now === side) continue;
    if (side === 0) first = i;
    else {
      swings++;
      longest = Math.max(longest, i - last);
    }
    side = now;
    last = i;
  }
  if (swings < S.HALF_SWINGS) return null;
  const rateHz = (swings / 2 / (last - first)) * FRAMES_A_SECOND;
  // Even swings only: a wandering pitch is no vibrato.
  if (longest > (S.UNEVEN_SWINGS * (last - first)) / swings) return null;
  return rateHz >= S.VIBRATO_SLOWEST_HZ && rateHz <= S.VIBRATO_FASTEST_HZ ? { rateHz, depthCents } : null;
}

function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.round(share * (sorted.length - 1))] ?? NaN;
}
