/** The beats of a recording with what sounds at each. */
import { bpmOf } from '../beats/intervals.ts';
import { beatTones, type BeatTones } from './beat-tones.ts';
import { chordLikelihoods, type ChordWeights } from './chord-network.ts';
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
  return { beats, tones, logs: chordLikelihoods(tones, weights) };
}

/** A beat that would begin this much before the recording began with it. */
const CUT_SECONDS = 0.06;

function withLead(beats: readonly number[]): readonly number[] {
  const step = 60 / bpmOf(beats.slice(0, 9));
  const lead: number[] = [];
  for (let at = beats[0]! - step; at > -CUT_SECONDS; at -= step) lead.unshift(Math.max(0, at));
  return [...lead, ...beats];
}
