import * as S from '../tuning/path.ts';
import type { Track } from './track.ts';

/** The plateau that an open note stands on. */
export interface Plateau {
  readonly onsetSeconds: number;
  /** First frame of the note, and of the plateau. */
  readonly from: number;
  readonly plateauFrom: number;
  /** Fractional MIDI number. */
  readonly pitch: number;
}

/** How the pitch came from one plateau to the next. */
export interface Move {
  /** Semitones from the old plateau to the new one, upwards positive. */
  readonly step: number;
  /** Last frame on the old plateau, first on the new one, and the moment between. */
  readonly left: number;
  readonly there: number;
  readonly seconds: number;
  /** The part of the whole way that the fastest 24 ms make. */
  readonly fastestShare: number;
  /** Highest minus lowest pitch on the way, semitones. */
  readonly whole: number;
  /** Highest minus lowest pitch of the old plateau in the 64 ms before, semitones. */
  readonly unevenness: number;
  /** How long the old plateau stood, seconds. */
  readonly stoodSeconds: number;
}

/** Measures how the pitch came from the open note's plateau to the one at `frame`. */
export function moveInto(track: Track, open: Plateau, frame: number, pitch: number): Move {
  const step = pitch - open.pitch;
  const near = Math.max(S.TRAVEL_EDGE_LEAST, S.TRAVEL_EDGE * Math.abs(step));
  let there = frame;
  while (there < frame + S.PLATEAU_FRAMES && !(Math.abs(track.midi(there) - pitch) < near)) there++;
  while (there > open.from + 1 && Math.abs(track.midi(there - 1) - pitch) < near) there--;
  let left = there - 1;
  while (left > open.from && !(Math.abs(track.midi(left) - open.pitch) < near)) left--;
  const since = open.plateauFrom === open.from ? open.onsetSeconds : track.seconds(open.plateauFrom);
  const reached = extremes(track, left - S.WHOLE_BEFORE, there + S.WHOLE_AFTER);
  const whole = Math.min(reached, Math.abs(step) + S.WHOLE_OVERSHOOT);
  let half = there;
  while (half > left + 1 && Math.abs(track.midi(half - 1) - pitch) < S.ARRIVED_REACH) half--;
  let gap = half - 1;
  while (gap > left && Number.isNaN(track.midi(gap))) gap--;
  return {
    step,
    left,
    there,
    seconds: (track.seconds(half) + track.seconds(gap)) / 2,
    fastestShare: fastest(track, left - S.FASTEST_FRAMES, there) / whole,
    whole,
    unevenness: extremes(track, Math.max(open.from, left - S.FLAT_FRAMES), left - 1),
    stoodSeconds: track.seconds(left) - since,
  };
}

/** Largest change of pitch within FASTEST_FRAMES, or over a gap without pitch, that starts in [from, to]. */
export function fastest(track: Track, from: number, to: number): number {
  let fastest = 0;
  for (let f = from; f <= to; f++) {
    let g = f + S.FASTEST_FRAMES;
    while (g < f + S.FASTEST_GAP_FRAMES && Number.isNaN(track.midi(g))) g++;
    const change = Math.abs(track.midi(g) - track.midi(f));
    if (change > fastest) fastest = change;
  }
  return fastest;
}

/** Highest minus lowest pitch of the voiced frames [from, to). */
export function extremes(track: Track, from: number, to: number): number {
  let low = Infinity;
  let high = -Infinity;
  for (let f = from; f < to; f++) {
    const midi = track.midi(f);
    if (midi < low) low = midi;
    if (midi > high) high = midi;
  }
  return Math.max(0, high - low);
}

/** First frame at or after `seconds`, sought from `frame`. */
export function frameAt(track: Track, seconds: number, frame: number): number {
  let f = Math.max(0, frame - S.FRAME_AT_BACK);
  while (f < track.count - 1 && track.seconds(f) < seconds) f++;
  return f;
}

/** The pitch that most frames of [from, to) agree on within half a semitone, NaN when fewer than two do. */
export function standing(track: Track, from: number, to: number): number {
  let best = S.AGREE_LEAST - 1;
  let pitch = NaN;
  for (let f = from; f < to; f++) {
    const midi = track.midi(f);
    let agree = 0;
    let sum = 0;
    for (let g = from; g < to; g++) {
      const other = track.midi(g);
      if (Math.abs(other - midi) < S.AGREE_REACH) {
        agree++;
        sum += other;
      }
    }
    if (agree > best) {
      best = agree;
      pitch = sum / agree;
    }
  }
  return pitch;
}

/** The pitch that stands from `frame` for `count` frames within `width` semitones, else NaN. */
export function plateau(track: Track, frame: number, count: number, width: number): number {
  let sum = 0;
  let voiced = 0;
  let low = Infinity;
  let high = -Infinity;
  for (let f = frame; f < frame + count; f++) {
    const midi = track.midi(f);
    if (Number.isNaN(midi)) continue;
    sum += midi;
    voiced++;
    low = Math.min(low, midi);
    high = Math.max(high, midi);
  }
  return voiced >= Math.min(count, S.PLATEAU_FRAMES) - 1 && high - low < width ? sum / voiced : NaN;
}

/** Highest clarity of the voiced frames [from, to), 0 without. */
export function clearest(track: Track, from: number, to: number): number {
  let best = 0;
  for (let f = from; f < to; f++) if (!Number.isNaN(track.midi(f))) best = Math.max(best, track.clarity(f));
  return best;
}

/** Two, three, four, five or six times the frequency, or that part of it. */
export function isHarmonic(semitones: number): boolean {
  return S.HARMONIC_SEMITONES.some((harmonic) => Math.abs(semitones - harmonic) < S.HARMONIC_REACH);
}
