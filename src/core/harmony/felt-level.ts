/**
 * How often a beat is felt, by the harmony: a pulse that was counted twice or half as fast has its chords change where a
 * bar has them seldom.
 */
import { atLevel } from '../beats/levels.ts';
import { bpmOf } from '../beats/intervals.ts';
import { beatTones, type BeatTones } from './beat-tones.ts';
import { chordLikelihoods, type ChordWeights } from './chord-network.ts';
import { findMeter, firstChord } from './find-form.ts';
import type { ToneSpectrum } from './tone-spectrum.ts';

/** Slower or faster than this nobody counts. */
const SLOWEST_BPM = 48;
const FASTEST_BPM = 260;
/** The middle of the tempos that are felt (Moelants 2002 has it near 120; from memory). */
const USUAL_BPM = 118;
/**
 * What speaks for a way of counting: the logarithm of the chords' likelihood for each beat that was found, the tempo in
 * octaves above the usual one and its square, and being the way that was found. Fitted as a choice among the ways (a
 * multinomial logit) over 191 rendered backings, each counted rightly, twice and half as fast.
 */
const LIKELIHOOD = 11.1;
const TEMPO = 3.7;
const TEMPO_SQUARED = -3;
const AS_FOUND = 2.7;

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

/**
 * Of the beats as they were found, every second of them, and twice as many, the ones that the chords speak for.
 * @param found at least eight beats, rising
 */
export function feltLevel(
  spectrum: ToneSpectrum,
  found: readonly number[],
  weights: ChordWeights,
  follow: Float64Array,
): CountedBeats {
  const ways = [found, atLevel(found, 'half', 0), atLevel(found, 'half', 1), atLevel(found, 'twice', 0)];
  let best: CountedBeats | null = null;
  let most = -Infinity;
  for (const beats of ways) {
    const bpm = bpmOf(beats);
    if (beats !== found && (bpm < SLOWEST_BPM || bpm > FASTEST_BPM)) continue;
    const counted = countedBeats(spectrum, beats, weights);
    const first = firstChord(counted.logs, counted.tones.beats);
    if (first < 0) continue;
    // The same sound, cut into more beats, says no more than cut into fewer.
    const share = found.length / beats.length;
    const { log } = findMeter(
      counted.logs.map((x) => x * share),
      counted.tones.beats,
      first,
      follow,
    );
    const octaves = Math.log2(bpm / USUAL_BPM);
    const score =
      (LIKELIHOOD * log) / found.length +
      TEMPO * octaves +
      TEMPO_SQUARED * octaves ** 2 +
      (beats === found ? AS_FOUND : 0);
    if (score <= most) continue;
    most = score;
    best = counted;
  }
  return best ?? countedBeats(spectrum, found, weights);
}
