import type { Span } from '../measure/measure.ts';
import type { HeardNote } from '../../take/note.ts';
import type { Track } from '../path/track.ts';

/**
 * How much a note looks like a syllable, in nepers of odds: a logistic regression (Cox 1958) on 1,900 notes heard in
 * tuning lines of twelve instruments in three banks, on 1,300 heard in made and synthesised speech, and on a singer, whose
 * notes weigh eleven times as much as one of an instrument: there is but one of them.
 * Played notes rest, are periodic, last, and lie on one grid of semitones; syllables do none of it for long.
 */
const ODDS = {
  always: 15.8,
  /** Natural logarithms of semitones (the stillest 48 ms; the median change within 24 ms), weighed by the length. */
  still: 0.26,
  step: 0.5,
  /** Share of frames within REST_SEMITONES of the median. */
  rest: -2.81,
  clarity: -6.41,
  /** Of LONG_ENOUGH frames. */
  length: 6.94,
  /** Natural logarithm of the frames, up to LONGEST. */
  frames: -3.22,
  grid: -5.63,
} as const;
const STILL_FRAMES = 6;
const STEP_FRAMES = 3;
const LEAST_SEMITONES = 0.02;
const REST_SEMITONES = 0.15;
const LONG_ENOUGH = 16;
const LONGEST = 50;
/** Fewer frames than this say nothing of themselves, and a little for speech: */
const LEAST_FRAMES = 4;
const TOO_SHORT = 0.5;

/** No note says more than this, either way; */
const MOST = 2.5;
/** what the notes before said fades by note and by time, and never promises more than this. */
const FADE = 0.9;
const FADE_SECONDS = 30;
const SUREST: readonly [number, number] = [-4, 6];
/** From here on it is speech, and only a note that is clearly one passes. */
const SPEECH = 0.3;
const CLEARLY_PLAYED = -1.4;

/** The grid of semitones is that of the last half dozen notes, each with up to this weight in seconds. */
const GRID_FADE = 0.85;
const GRID_MOST_SECONDS = 0.3;
/** Before anything is heard: a grid of this strength, with this weight. */
const GRID_BEFORE: readonly [number, number] = [0.1, 0.125];

/** Tells playing from speaking, by the notes heard so far: a sequential test (Wald 1945) that forgets. */
export class SpeechGuard {
  #odds = 0;
  #lastSeconds = 0;
  #gridX = 0;
  #gridY = 0;
  #gridWeight = 0;

  /** Is what sounds now speech, judged by the notes before? */
  get hearsSpeech(): boolean {
    return this.#odds >= SPEECH;
  }

  /** Takes the note in; true if it is one. One that other strings ring over (`covered`) says nothing of itself. */
  admits(track: Track, span: Span, note: HeardNote, covered: boolean): boolean {
    this.#toGrid(note.midi, note.offsetSeconds - note.onsetSeconds);
    const own = covered ? 0 : syllableOdds(track, span, this.#grid);
    this.#odds *= FADE * Math.exp((this.#lastSeconds - span.onsetSeconds) / FADE_SECONDS);
    this.#odds += Math.max(-MOST, Math.min(MOST, own));
    this.#odds = Math.max(SUREST[0], Math.min(SUREST[1], this.#odds));
    this.#lastSeconds = span.onsetSeconds;
    return !this.hearsSpeech || own < CLEARLY_PLAYED;
  }

  /** How well the notes so far lie on one grid of semitones, 0 to 1: the mean resultant length (Mardia 1972). */
  get #grid(): number {
    return (Math.hypot(this.#gridX, this.#gridY) + GRID_BEFORE[0]) / (this.#gridWeight + GRID_BEFORE[1]);
  }

  #toGrid(midi: number, seconds: number): void {
    const weight = Math.min(seconds, GRID_MOST_SECONDS);
    const angle = 2 * Math.PI * midi;
    this.#gridX = GRID_FADE * this.#gridX + weight * Math.cos(angle);
    this.#gridY = GRID_FADE * this.#gridY + weight * Math.sin(angle);
    this.#gridWeight = GRID_FADE * this.#gridWeight + weight;
  }
}

/** Logarithm of the odds that a note of these frames is a syllable. */
function syllableOdds(track: Track, span: Span, grid: number): number {
  const pitches: number[] = [];
  const clarities: number[] = [];
  for (let f = span.from; f <= span.last; f++) {
    const midi = track.midi(f);
    clarities.push(track.clarity(f));
    if (!Number.isNaN(midi)) pitches.push(midi);
  }
  const count = pitches.length;
  if (count < LEAST_FRAMES) return TOO_SHORT;
  const steps = pitches.slice(STEP_FRAMES).map((midi, i) => Math.abs(midi - pitches[i]!));
  const centre = median(pitches);
  const resting = pitches.filter((midi) => Math.abs(midi - centre) < REST_SEMITONES).length / count;
  const length = Math.min(count, LONG_ENOUGH) / LONG_ENOUGH;
  return (
    ODDS.always +
    length *
      (ODDS.still * Math.log(stillest(pitches) + LEAST_SEMITONES) +
        ODDS.step * Math.log(median(steps) + LEAST_SEMITONES) +
        ODDS.length) +
    ODDS.rest * resting +
    ODDS.clarity * median(clarities) +
    ODDS.frames * Math.log(Math.min(count, LONGEST)) +
    ODDS.grid * grid
  );
}

/** Span of the stillest STILL_FRAMES in a row, semitones. */
function stillest(pitches: readonly number[]): number {
  const length = Math.min(STILL_FRAMES, pitches.length);
  let least = Infinity;
  for (let i = 0; i + length <= pitches.length; i++) {
    const part = pitches.slice(i, i + length);
    least = Math.min(least, Math.max(...part) - Math.min(...part));
  }
  return least;
}

function median(values: readonly number[]): number {
  const sorted = values.slice().sort((a, b) => a - b);
  const half = sorted.length >> 1;
  if (sorted.length === 0) return 0;
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
