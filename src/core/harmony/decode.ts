/** The likeliest run of chords over beats, and how sure each is: a hidden Markov model (Rabiner, Proc. IEEE 77, 1989). */
import { changeChance, stepLog } from './changes-model.ts';
import { CHORDS } from './chord-types.ts';

export const STATES = CHORDS + 1;
/**
 * The network looks at each beat by itself, and neighbouring beats hold much the same sound: what it says counts for less
 * than as many independent looks would. Measured on rendered bands and strummed guitars.
 */
export const TRUST = 0.6;

export interface DecodeOrder {
  /** STATES natural logarithms a beat. */
  readonly logs: Float32Array;
  readonly beats: number;
  readonly beatsPerBar: number;
  /** Which beat of the bar the first beat is, from 0. */
  readonly firstBeatOfBar: number;
  /** `followLogs()`. */
  readonly follow: Float64Array;
}

export interface Decoded {
  /** A chord's number each beat. */
  readonly chords: Int16Array;
  /** Natural logarithm of the likelihood of the whole run. */
  readonly log: number;
}

/** The matrix of steps for each place in the bar, from row to column. */
function stepsOf({ beatsPerBar, follow }: DecodeOrder): readonly Float64Array[] {
  const made = new Map<number, Float64Array>();
  return Array.from({ length: beatsPerBar }, (_, place) => {
    const change = changeChance(place, beatsPerBar);
    const known = made.get(change);
    if (known) return known;
    const steps = new Float64Array(STATES * STATES);
    for (let from = 0; from < STATES; from++)
      for (let to = 0; to < STATES; to++) steps[from * STATES + to] = stepLog(follow, from, to, change);
    made.set(change, steps);
    return steps;
  });
}

const START_LOG = -Math.log(STATES);

/** The likeliest run of chords (Viterbi). */
export function decodeChords(order: DecodeOrder): Decoded {
  const { logs, beats, beatsPerBar, firstBeatOfBar } = order;
  const steps = stepsOf(order);
  const chords = new Int16Array(beats);
  if (beats === 0) return { chords, log: 0 };
  const back = new Int16Array(beats * STATES);
  let best = Float64Array.from({ length: STATES }, (_, s) => START_LOG + TRUST * logs[s]!);
  for (let b = 1; b < beats; b++) {
    const matrix = steps[(firstBeatOfBar + b) % beatsPerBar]!;
    const next = new Float64Array(STATES).fill(-Infinity);
    for (let from = 0; from < STATES; from++) {
      const start = best[from]!;
      const row = from * STATES;
      for (let to = 0; to < STATES; to++) {
        const log = start + matrix[row + to]!;
        if (log > next[to]!) {
          next[to] = log;
          back[b * STATES + to] = from;
        }
      }
    }
    for (let s = 0; s < STATES; s++) next[s]! += TRUST * logs[b * STATES + s]!;
    best = next;
  }
  let state = 0;
  for (let s = 1; s < STATES; s++) if (best[s]! > best[state]!) state = s;
  const log = best[state]!;
  for (let b = beats - 1; b >= 0; b--) {
    chords[b] = state;
    state = back[b * STATES + state]!;
  }
  return { chords, log };
}

/** The probability of each chord at each beat, given all beats (forward and backward): STATES numbers a beat. */
export function chordShares(order: DecodeOrder): Float32Array {
  const { logs, beats, beatsPerBar, firstBeatOfBar } = order;
  const steps = stepsOf(order).map((matrix) => matrix.map(Math.exp));
  const seen = new Float64Array(beats * STATES);
  for (let i = 0; i < seen.length; i++) seen[i] = Math.exp(TRUST * logs[i]!);
  const forward = new Float64Array(beats * STATES);
  const shares = new Float32Array(beats * STATES);
  for (let b = 0; b < beats; b++) {
    const row = forward.subarray(b * STATES, (b + 1) * STATES);
    if (b === 0) row.fill(1 / STATES);
    else {
      const matrix = steps[(firstBeatOfBar + b) % beatsPerBar]!;
      for (let from = 0; from < STATES; from++) {
        const weight = forward[(b - 1) * STATES + from]!;
        if (weight < 1e-12) continue;
        for (let to = 0; to < STATES; to++) row[to]! += weight * matrix[from * STATES + to]!;
      }
    }
    for (let s = 0; s < STATES; s++) row[s]! *= seen[b * STATES + s]!;
    scale(row);
  }
  let behind = new Float64Array(STATES).fill(1);
  for (let b = beats - 1; b >= 0; b--) {
    const row = shares.subarray(b * STATES, (b + 1) * STATES);
    let sum = 0;
    for (let s = 0; s < STATES; s++) sum += row[s] = forward[b * STATES + s]! * behind[s]!;
    for (let s = 0; s < STATES; s++) row[s]! /= sum;
    if (b === 0) break;
    const matrix = steps[(firstBeatOfBar + b) % beatsPerBar]!;
    const before = new Float64Array(STATES);
    for (let to = 0; to < STATES; to++) {
      const weight = behind[to]! * seen[b * STATES + to]!;
      if (weight < 1e-14) continue;
      for (let from = 0; from < STATES; from++) before[from]! += weight * matrix[from * STATES + to]!;
    }
    scale(before);
    behind = before;
  }
  return shares;
}

function scale(row: Float64Array): void {
  let sum = 0;
  for (const value of row) sum += value;
  if (sum > 0) for (let i = 0; i < row.length; i++) row[i]! /= sum;
}
