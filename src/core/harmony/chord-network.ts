/**
 * How likely each chord is, beat by beat: a small network with one hidden layer, which sees the tones of a beat and of those
 * around it from a root. The same weights serve all twelve roots, so that what was learned in one key holds in all.
 */
import { CHORDS, TYPES } from './chord-types.ts';
import type { BeatTones } from './beat-tones.ts';
import { FOLDED } from './settings.ts';

/** What is seen of a beat's surroundings, as beats from it. Bars further away made it worse: the model of the changes has them already. */
const SEEN = [-1, 0, 1] as const;
const INPUTS = SEEN.length * FOLDED;

export interface ChordWeights {
  /** A row of INPUTS numbers and a constant for each hidden unit. */
  readonly hidden: Float32Array;
  /** TYPES rows of a number for each hidden unit and a constant. */
  readonly output: Float32Array;
  /** For no chord: a constant, and weights of the beat's level in 10 dB and of its strongest pitch class. */
  readonly none: Float32Array;
}

/** What is seen about a beat, FOLDED numbers for each; beats outside the recording are its outermost ones. */
function surroundings(tones: BeatTones, beat: number, seen: Float32Array): void {
  SEEN.forEach((off, s) => {
    const from = Math.min(tones.beats - 1, Math.max(0, beat + off)) * FOLDED;
    seen.set(tones.folded.subarray(from, from + FOLDED), s * FOLDED);
  });
}

/** The same with its pitch classes counted from a root. */
function turnedTo(root: number, seen: Float32Array, inputs: Float32Array): void {
  for (let from = 0; from < INPUTS; from += 12)
    for (let step = 0; step < 12; step++) inputs[from + step] = seen[from + ((root + step) % 12)]!;
}

/** Between its strokes a band is so much softer than its loud beats; only less sound than that counts for a rest, in dB. */
const COMPING_DB = -18;

/** What counts for no chord, apart from a constant: how far the level lies under a band's, in 10 dB, and the strongest pitch class. */
export function noChordFacts(tones: BeatTones, beat: number): readonly [number, number] {
  const row = tones.folded.subarray(beat * FOLDED, (beat + 1) * FOLDED);
  return [
    Math.min(0, tones.levelsDb[beat]! - COMPING_DB) / 10,
    row.reduce((most, value) => Math.max(most, value), 0),
  ];
}

/**
 * Natural logarithms of the likelihood of each chord at each beat, CHORDS + 1 numbers a beat, each row summing to 1 in
 * probability.
 */
export function chordLikelihoods(tones: BeatTones, weights: ChordWeights): Float32Array {
  const size = CHORDS + 1;
  const out = new Float32Array(tones.beats * size);
  const seen = new Float32Array(INPUTS);
  const inputs = new Float32Array(INPUTS);
  const hidden = new Float32Array(weights.hidden.length / (INPUTS + 1));
  for (let beat = 0; beat < tones.beats; beat++) {
    const row = out.subarray(beat * size, (beat + 1) * size);
    surroundings(tones, beat, seen);
    for (let root = 0; root < 12; root++) {
      turnedTo(root, seen, inputs);
      typeScores(inputs, weights, hidden, row.subarray(root * TYPES, (root + 1) * TYPES));
    }
    const [level, strongest] = noChordFacts(tones, beat);
    row[CHORDS] = weights.none[0]! + weights.none[1]! * level + weights.none[2]! * strongest;
    toLogShares(row);
  }
  return out;
}

/** Scores of the types of chord on one root. `hidden` is written: it holds what the hidden layer gave. */
function typeScores(
  inputs: Float32Array,
  { hidden: first, output: second }: ChordWeights,
  hidden: Float32Array,
  scores: Float32Array,
): void {
  const units = hidden.length;
  for (let h = 0; h < units; h++) {
    const row = h * (INPUTS + 1);
    let sum = first[row + INPUTS]!;
    for (let i = 0; i < INPUTS; i++) sum += first[row + i]! * inputs[i]!;
    hidden[h] = Math.max(0, sum);
  }
  for (let type = 0; type < TYPES; type++) {
    const row = type * (units + 1);
    let sum = second[row + units]!;
    for (let h = 0; h < units; h++) sum += second[row + h]! * hidden[h]!;
    scores[type] = sum;
  }
}

/** Scores to natural logarithms of shares that sum to 1, in place. */
function toLogShares(scores: Float32Array): void {
  const most = scores.reduce((a, b) => Math.max(a, b), -Infinity);
  let sum = 0;
  for (const score of scores) sum += Math.exp(score - most);
  const off = most + Math.log(sum);
  for (let i = 0; i < scores.length; i++) scores[i]! -= off;
}
