/** The beats of a recording with what sounds at each. */
import { bpmOf } from '../beats/intervals.ts';
import { beatTones, type BeatTones } from './beat-tones.ts';
import { chordLikelihoods, type ChordWeights } from './chord-network.ts';
import { NO_CHORD } from './chord-types.ts';
import { STATES } from './decode.ts';
import type { ToneSpectrum } from './tone-spectrum.ts';

export interface CountedBeats {
  /** Rising, in seconds. */
  readonly beats: readonly number[];
  readonly tones: BeatTones;
  /** STATES natural logarithms a beat. */
  readonly logs: Float32Array;
}

/**
 * The beats with the tones and the chords of each. Beats go back to the recording's begin, so that a bar whose first beat
 * was not found can begin.
 * @param beats at least two
 */
export function countedBeats(
  spectrum: ToneSpectrum,
  known: readonly number[],
  weights: ChordWeights,
): CountedBeats {
  const beats = withLead(known);
  const last = beats.at(-1)!;
  const tones = beatTones(spectrum, [...beats, last + (last - beats.at(-2)!)]);
  return { beats, tones, logs: withCountIn(chordLikelihoods(tones, weights), tones.levelsDb) };
}

/** So much softer than the loud beats of a recording are the clicks of a count-in: by 15 to 17 dB in our own bands. */
const COUNT_IN_DB = -12;
/** Two bars of four. */
const MOST_COUNT_IN_BEATS = 8;
/** Of a chord, as a natural logarithm. */
const CERTAINLY_NOT = -10;

/** Clicks before the band begins hold no chord, whatever pitch they have. */
function withCountIn(logs: Float32Array, levelsDb: Float32Array): Float32Array {
  const begins = levelsDb.findIndex((level) => level > COUNT_IN_DB);
  if (begins < 0 || begins > MOST_COUNT_IN_BEATS) return logs;
  for (let b = 0; b < begins; b++) {
    logs.fill(CERTAINLY_NOT, b * STATES, (b + 1) * STATES);
    logs[b * STATES + NO_CHORD] = 0;
  }
  return logs;
}

/** A beat that would begin this much before the recording began with it. */
const CUT_SECONDS = 0.06;

function withLead(beats: readonly number[]): readonly number[] {
  const step = 60 / bpmOf(beats.slice(0, 9));
  const lead: number[] = [];
  for (let at = beats[0]! - step; at > -CUT_SECONDS; at -= step) lead.unshift(Math.max(0, at));
  return [...lead, ...beats];
}
