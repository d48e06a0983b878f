/**
 * Whether beats that were found are counted as a player counts them. A quick band is often found at half its tempo, a slow one
 * at twice: which of the three explains the chords best, when a chord changes on the first beat of a bar mostly, on its
 * middle at times, between beats hardly ever.
 */
import { bpmOf } from '../beats/intervals.ts';
import { atLevel } from '../beats/levels.ts';
import { beatTones } from './beat-tones.ts';
import { changeChance, followLogs, stepLog } from './changes-model.ts';
import { chordLikelihoods, type ChordWeights } from './chord-network.ts';
import { STATES } from './decode.ts';
import type { ToneSpectrum } from './tone-spectrum.ts';

/** The chords are looked at in halves of the beats that were found; these are so much alike that each counts for less. */
const TRUST_IN_HALVES = 0.35;
/** So many halves are enough to tell. */
const MOST_HALVES = 320;
const CHANGE_BETWEEN_BEATS = 0.002;
const METERS = [4, 3] as const;
/** A chord that is this much less likely than the best, in nepers, is not followed on. */
const LEFT_BEHIND = 25;

/**
 * Only beats this slow, or this quick, are counted anew, in beats a minute: the beat finder begins at 200 at the most, and
 * what it halves lies here. By so many nepers the chords may, or must, speak for the other level. The folder's README says
 * how often each is right.
 */
const TWICE = { from: 80, to: 104, atLeast: -15 } as const;
const HALF = { from: 125, to: 210, atLeast: 15 } as const;

/** The beats on the level that explains the chords best. @param beats at least two, rising, in seconds */
export function onChordsLevel(
  spectrum: ToneSpectrum,
  beats: readonly number[],
  weights: ChordWeights,
): readonly number[] {
  const bpm = bpmOf(beats);
  const isSlow = bpm >= TWICE.from && bpm <= TWICE.to;
  if (!isSlow && !(bpm >= HALF.from && bpm <= HALF.to)) return beats;
  const tones = beatTones(spectrum, atLevel([...beats, 2 * beats.at(-1)! - beats.at(-2)!], 'twice', 0));
  const logs = chordLikelihoods(tones, weights).subarray(0, MOST_HALVES * STATES);
  const follow = followLogs();
  const asFound = likeliest(logs, follow, 2, 1);
  if (isSlow) {
    const twice = likeliest(logs, follow, 1, 1);
    return twice.log - asFound.log >= TWICE.atLeast ? atLevel(beats, 'twice', 0) : beats;
  }
  const half = likeliest(logs, follow, 4, 2);
  return half.log - asFound.log >= HALF.atLeast ? atLevel(beats, 'half', half.first >> 1) : beats;
}

/**
 * The best of both meters and all first beats.
 * @param halves of the beats found in each beat that is counted
 * @param every only each so many halves may be the first of a bar
 */
function likeliest(
  logs: Float32Array,
  follow: Float64Array,
  halves: number,
  every: number,
): { readonly log: number; readonly first: number } {
  let best = { log: -Infinity, first: 0 };
  for (const beatsPerBar of METERS)
    for (let first = 0; first < beatsPerBar * halves; first += every) {
      const log = likelihood(logs, follow, (at) => {
        const place =
          (((at - first) % (beatsPerBar * halves)) + beatsPerBar * halves) % (beatsPerBar * halves);
        return place % halves === 0 ? changeChance(place / halves, beatsPerBar) : CHANGE_BETWEEN_BEATS;
      });
      if (log > best.log) best = { log, first };
    }
  return best;
}

/** Natural logarithm of the likelihood of the likeliest run of chords (Viterbi). */
function likelihood(logs: Float32Array, follow: Float64Array, changeAt: (half: number) => number): number {
  let best = Float64Array.from({ length: STATES }, (_, s) => TRUST_IN_HALVES * logs[s]!);
  let next = new Float64Array(STATES);
  for (let half = 1; half < logs.length / STATES; half++) {
    const matrix = stepsFor(follow, changeAt(half));
    const least = best.reduce((most, log) => Math.max(most, log), -Infinity) - LEFT_BEHIND;
    next.fill(-Infinity);
    for (let from = 0; from < STATES; from++) {
      const log = best[from]!;
      if (log < least) continue;
      for (let to = 0, at = from * STATES; to < STATES; to++, at++)
        next[to] = Math.max(next[to]!, log + matrix[at]!);
    }
    for (let s = 0; s < STATES; s++) next[s]! += TRUST_IN_HALVES * logs[half * STATES + s]!;
    [best, next] = [next, best];
  }
  return best.reduce((most, log) => Math.max(most, log), -Infinity);
}

const made = new Map<number, Float64Array>();

/** The matrix of steps where a chord changes with such a chance, from row to column; made once. */
function stepsFor(follow: Float64Array, change: number): Float64Array {
  let steps = made.get(change);
  if (steps === undefined) {
    steps = Float64Array.from({ length: STATES * STATES }, (_, i) =>
      stepLog(follow, Math.floor(i / STATES), i % STATES, change),
    );
    made.set(change, steps);
  }
  return steps;
}
