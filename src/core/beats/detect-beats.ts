// eslint-disable-next-line @typescript-eslint/triple-slash-reference -- every project that takes this file in needs it
/// <reference path="./music-tempo.d.ts" />
/**
 * The beats of a recording, by the onsets of its sound and agents that follow a pulse through them (Dixon, "Automatic
 * Extraction of Tempo and Beat from Expressive Performances", JNMR 2001; `music-tempo` is that method).
 */
import MusicTempo from 'music-tempo';
import { lastAtOrBefore } from '../chart/beat-maps.ts';
import { bad, good, type Outcome } from '../base/outcome.ts';
import { bpmOf, smoothed } from './intervals.ts';
import { feltBeats } from './levels.ts';
import {
  AGENT_CORRECTION,
  AGENT_MOST_CHANGE,
  BETWEEN_BEATS,
  BIAS_OF_WINDOW,
  HOP_SECONDS,
  LEAST_BEATS,
  LEAST_CONTRAST,
  LEAST_SECONDS,
  LEAST_SUPPORT,
  PLAIN_RATE,
  SILENT_PEAK,
  SUPPORT_SECONDS,
  WINDOW_SECONDS,
} from './settings.ts';

export interface DetectedBeats {
  /** Rising, in seconds from the first sample. */
  readonly beats: readonly number[];
  /** From the middle interval, in beats a minute. */
  readonly bpm: number;
  /** Attacks that were heard, in seconds: what taps can be drawn to. */
  readonly attacks: readonly number[];
}

/**
 * Finds the beats of a recording, drift included. How often a beat is felt is a matter of taste: the answer may be half
 * or double, or three times, what the player counts (`atLevel` changes that).
 *
 * Fails for a recording that is too short, silent, or without a steady beat.
 * @param samples mono
 * @example const found = detectBeats(samples, 44_100); // { ok: true, value: { beats: [0.79, 1.42, …], bpm: 96, … } }
 */
export function detectBeats(samples: Float32Array, sampleRate: number): Outcome<DetectedBeats> {
  if (samples.length < LEAST_SECONDS * sampleRate)
    return bad('beatFinder.tooShort', { seconds: LEAST_SECONDS });
  if (!samples.some((sample) => Math.abs(sample) > SILENT_PEAK)) return bad('beatFinder.silent');
  const factor = Math.max(1, Math.floor(sampleRate / PLAIN_RATE));
  const tracked = track(thinned(samples, factor), sampleRate / factor);
  const steady =
    tracked !== null &&
    tracked.found.beats.length >= LEAST_BEATS &&
    tracked.contrast >= LEAST_CONTRAST &&
    supported(tracked.found) >= LEAST_SUPPORT;
  return steady ? good(tracked.found) : bad('beatFinder.none');
}

/** The share of beats that have an attack of their own. */
function supported({ beats, attacks }: DetectedBeats): number {
  const near = beats.filter((beat) => {
    const at = lastAtOrBefore(attacks, beat + SUPPORT_SECONDS);
    return at >= 0 && beat - attacks[at]! <= SUPPORT_SECONDS;
  });
  return near.length / beats.length;
}

interface Tracked {
  readonly found: DetectedBeats;
  /** How far the flux at the beats stands above that between them, in deviations. */
  readonly contrast: number;
}

/** Means of so many samples each: less work, and attacks are found without the high frequencies that are lost. */
function thinned(samples: Float32Array, factor: number): number[] {
  const thin = new Array<number>(Math.floor(samples.length / factor));
  for (let i = 0; i < thin.length; i++) {
    let sum = 0;
    for (let k = 0; k < factor; k++) sum += samples[i * factor + k]!;
    thin[i] = sum / factor;
  }
  return thin;
}

/** null where the library finds no onsets, or nothing that recurs: it throws then. */
function track(samples: number[], sampleRate: number): Tracked | null {
  const hopSize = Math.round(HOP_SECONDS * sampleRate);
  const bufferSize = 2 ** Math.round(Math.log2(WINDOW_SECONDS * sampleRate));
  const timeStep = hopSize / sampleRate;
  try {
    const found = new MusicTempo(samples, {
      hopSize,
      bufferSize,
      timeStep,
      correctionFactor: AGENT_CORRECTION,
      maxChange: AGENT_MOST_CHANGE,
    });
    const bias = BIAS_OF_WINDOW * (bufferSize / sampleRate);
    const fine = finePeaks(found.peaks, found.spectralFlux);
    const secondsOf = (seconds: number) => {
      const peak = fine.get(Math.round(seconds / timeStep));
      return (peak === undefined ? seconds : peak * timeStep) - bias;
    };
    const strengths = found.beats.map((beat) => strengthAt(found.spectralFlux, Math.round(beat / timeStep)));
    const quick = rising(found.beats.map(secondsOf));
    const felt = feltBeats(quick, strengths, bpmOf(quick));
    const beats = rising(smoothed(felt.filter((seconds) => seconds >= 0)).map((beat) => Math.max(0, beat)));
    const fluxAt = (seconds: number) =>
      strengthAt(found.spectralFlux, Math.round((seconds + bias) / timeStep));
    const attacks = rising(found.events.map(secondsOf));
    return { found: { beats, bpm: bpmOf(beats), attacks }, contrast: contrastOf(beats, fluxAt) };
  } catch {
    return null;
  }
}

/** The flux at the beats, in the mean, over that between them. */
function contrastOf(beats: readonly number[], fluxAt: (seconds: number) => number): number {
  const between = BETWEEN_BEATS.flatMap((share) =>
    beats.slice(1).map((beat, i) => fluxAt(beats[i]! + share * (beat - beats[i]!))),
  );
  return mean(beats.map(fluxAt)) - mean(between);
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** The highest flux a hop or two around. */
const strengthAt = (flux: readonly number[], hop: number): number =>
  Math.max(...[-2, -1, 0, 1, 2].map((off) => flux[hop + off] ?? -Infinity));

/** Each peak's frame → where the parabola through its neighbours has its top, in frames. */
function finePeaks(peaks: readonly number[], flux: readonly number[]): ReadonlyMap<number, number> {
  return new Map(
    peaks.map((peak) => {
      const [before, at, after] = [flux[peak - 1] ?? 0, flux[peak]!, flux[peak + 1] ?? 0];
      const bend = before - 2 * at + after;
      return [peak, bend < 0 ? peak + (before - after) / (2 * bend) : peak];
    }),
  );
}

/** Rounding may bring two to one place: they stay in order, a millisecond apart at least. */
const rising = (times: readonly number[]): readonly number[] => {
  let before = -Infinity;
  return times.map((seconds) => (before = Math.max(seconds, before + 0.001)));
};
