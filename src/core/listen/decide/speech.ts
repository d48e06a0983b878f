import { median } from '../../base/statistics.ts';
import type { Span } from '../measure/measure.ts';
import type { HeardNote } from '../../take/note.ts';
import type { Track } from '../path/track.ts';
import * as S from '../tuning/speech.ts';
import { SemitoneGrid } from './semitone-grid.ts';
import fitted from '../weights/speech.json' with { type: 'json' };

/**
 * What speaks for a note being a syllable. Played notes rest, are periodic, last, and lie on one grid of semitones; syllables
 * do none of it for long. The weight of each is in ../weights/speech.json, in nepers of odds.
 */
export interface SyllableFeatures {
  /** Always 1: the weight is the odds of a note of which all else is 0. */
  readonly always: number;
  /** Natural logarithm of the stillest 48 ms in semitones, in proportion to `length`. */
  readonly still: number;
  /** Natural logarithm of the median change within 24 ms in semitones, in proportion to `length`. */
  readonly step: number;
  /** Share of frames within REST_SEMITONES of the median. */
  readonly rest: number;
  /** Median clarity, 0 to 1. */
  readonly clarity: number;
  /** Share of LONG_ENOUGH frames, up to 1. */
  readonly length: number;
  /** Natural logarithm of the number of frames, up to LONGEST. */
  readonly frames: number;
  /** How well the notes so far lie on one grid of semitones, 0 to 1. */
  readonly grid: number;
}

const WEIGHTS: Readonly<Record<keyof SyllableFeatures, number>> = fitted.weights;

/** The odds that what sounds is speech, from note to note: a sequential test (Wald 1945) that forgets. */
export class SpeechOdds {
  #odds = 0;
  #lastSeconds = 0;

  /** Is what sounds now speech, judged by the notes before? */
  get hearsSpeech(): boolean {
    return this.#odds >= S.SPEECH;
  }

  /** Takes the odds of the next note itself, in nepers, and its onset; true if the note is played. */
  take(own: number, onsetSeconds: number): boolean {
    this.#odds *= S.FADE * Math.exp((this.#lastSeconds - onsetSeconds) / S.FADE_SECONDS);
    this.#odds += Math.max(-S.MOST, Math.min(S.MOST, own));
    this.#odds = Math.max(S.SUREST_PLAYING, Math.min(S.SUREST_SPEECH, this.#odds));
    this.#lastSeconds = onsetSeconds;
    return !this.hearsSpeech || own < S.CLEARLY_PLAYED;
  }
}

/** Tells playing from speaking, by the notes heard so far. */
export class SpeechGuard {
  readonly #odds = new SpeechOdds();
  readonly #grid = new SemitoneGrid();

  /** Is what sounds now speech, judged by the notes before? */
  get hearsSpeech(): boolean {
    return this.#odds.hearsSpeech;
  }

  /** Takes the note in; true if it is played. One that other strings ring over (`covered`) says nothing of itself. */
  admits(track: Track, span: Span, note: HeardNote, covered: boolean): boolean {
    this.#grid.take(note.midi, note.offsetSeconds - note.onsetSeconds);
    const own = covered ? 0 : syllableOdds(track, span, this.#grid.strength);
    return this.#odds.take(own, span.onsetSeconds);
  }
}

/** Logarithm of the odds that a note of these frames is a syllable: a logistic regression (Cox 1958). */
function syllableOdds(track: Track, span: Span, grid: number): number {
  const features = syllableFeatures(track, span, grid);
  return features === null ? S.TOO_SHORT : weigh(features);
}

/** What speaks for a note of these frames being a syllable; null where it is too short to say. */
export function syllableFeatures(
  track: Track,
  span: Pick<Span, 'from' | 'last'>,
  grid: number,
): SyllableFeatures | null {
  const pitches: number[] = [];
  const clarities: number[] = [];
  for (let f = span.from; f <= span.last; f++) {
    const midi = track.midi(f);
    clarities.push(track.clarity(f));
    if (!Number.isNaN(midi)) pitches.push(midi);
  }
  const count = pitches.length;
  if (count < S.LEAST_FRAMES) return null;
  const steps = pitches.slice(S.STEP_FRAMES).map((midi, i) => Math.abs(midi - pitches[i]!));
  const centre = median(pitches) ?? 0;
  const length = Math.min(count, S.LONG_ENOUGH) / S.LONG_ENOUGH;
  return {
    always: 1,
    still: length * Math.log(stillest(pitches) + S.LEAST_SEMITONES),
    step: length * Math.log((median(steps) ?? 0) + S.LEAST_SEMITONES),
    rest: pitches.filter((midi) => Math.abs(midi - centre) < S.REST_SEMITONES).length / count,
    clarity: median(clarities) ?? 0,
    length,
    frames: Math.log(Math.min(count, S.LONGEST)),
    grid,
  };
}

function weigh(features: SyllableFeatures): number {
  let odds = 0;
  for (const name of Object.keys(WEIGHTS) as (keyof SyllableFeatures)[])
    odds += WEIGHTS[name] * features[name];
  return odds;
}

/** Span of the stillest STILL_FRAMES in a row, semitones. */
function stillest(pitches: readonly number[]): number {
  const length = Math.min(S.STILL_FRAMES, pitches.length);
  let least = Infinity;
  for (let i = 0; i + length <= pitches.length; i++) {
    const part = pitches.slice(i, i + length);
    least = Math.min(least, Math.max(...part) - Math.min(...part));
  }
  return least;
}
