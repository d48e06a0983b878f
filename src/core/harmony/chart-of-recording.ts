/** From the sound of a backing to the chart that is proposed for it: beats, then chords, then the form. */
import { bad, good, type Outcome } from '../base/outcome.ts';
import { detectBeats } from '../beats/detect-beats.ts';
import { bpmOf } from '../beats/intervals.ts';
import { onChordsLevel } from './beat-level.ts';
import { countedBeats, type CountedBeats } from './counted-beats.ts';
import { hasBand } from './has-band.ts';
import { followLogs } from './changes-model.ts';
import { findForm } from './find-form.ts';
import type { ChartProposal, ProposedBar } from './proposal.ts';
import { proposeChart, type HeardHarmony } from './propose.ts';
import { SURE } from './settings.ts';
import { toneSpectrum, type Progress, type ToneSpectrum } from './tone-spectrum.ts';
import { chordWeights } from './weights.ts';

export interface FoundChart {
  readonly proposal: ChartProposal;
  /** What was heard: the chart is decoded again from it when the player sets a bar. */
  readonly heard: HeardHarmony;
  /** Rising, in seconds from the first sample. */
  readonly beats: readonly number[];
  /** Beats a minute, of the middle interval. */
  readonly bpm: number;
  /** Attacks that were heard, in seconds; none where the beats were given. */
  readonly attacks: readonly number[];
  /** Whether somebody accompanies; false where one line sounds alone, whose chords are a guess. */
  readonly hasBand: boolean;
}

/** The shares of the work, by the time that each takes: the beats, then the spectrum; the rest is the chords. */
const BEATS_TAKE = 0.45;
const SPECTRUM_TAKES = 0.35;

/**
 * Finds beats, meter, form and chords of a recording.
 * @param samples mono
 * @param progress called with the share done, 0 to 1; answers whether to go on
 * @returns null where `progress` asked to stop; a problem where there is no steady beat, or no chord
 */
export function chartOfRecording(
  samples: Float32Array,
  sampleRate: number,
  progress: Progress = () => true,
): Outcome<FoundChart> | null {
  if (!progress(0)) return null;
  const found = detectBeats(samples, sampleRate);
  if (!found.ok) return found;
  const spectrum = spectrumOf(samples, sampleRate, BEATS_TAKE, progress);
  if (spectrum === null) return null;
  const weights = chordWeights();
  const beats = onChordsLevel(spectrum, found.value.beats, weights);
  return chartOf(spectrum, countedBeats(spectrum, beats, weights), found.value.attacks);
}

/**
 * The same over beats that are known, as the player has set them.
 * @param beats seconds from the first sample, rising; two at least
 */
export function chartOverBeats(
  samples: Float32Array,
  sampleRate: number,
  beats: readonly number[],
  progress: Progress = () => true,
): Outcome<FoundChart> | null {
  const spectrum = spectrumOf(samples, sampleRate, 0, progress);
  return spectrum === null ? null : chartOf(spectrum, countedBeats(spectrum, beats, chordWeights()), []);
}

const spectrumOf = (samples: Float32Array, sampleRate: number, done: number, progress: Progress) =>
  toneSpectrum(samples, sampleRate, (share) => progress(done + SPECTRUM_TAKES * share));

function chartOf(
  { tuningSemitones }: ToneSpectrum,
  { beats, tones, logs }: CountedBeats,
  attacks: readonly number[],
): Outcome<FoundChart> {
  const form = findForm(logs, tones.beats, followLogs());
  const heard = { logs, beats: tones.beats, tuningCents: 100 * tuningSemitones, ...(form && { form }) };
  const proposal = form && proposeChart(heard);
  return proposal === null
    ? bad('harmony.noChords')
    : good({ proposal, heard, beats, bpm: bpmOf(beats), attacks, hasBand: hasBand(tones, proposal) });
}

/** The first beat of bar 1, in seconds. */
export const firstBeatSeconds = ({ proposal, beats }: FoundChart): number => beats[proposal.downbeat]!;

/** Whether a bar is shown as sure. */
export const isBarSure = ({ sure }: Pick<ProposedBar, 'sure'>): boolean => sure >= SURE;
