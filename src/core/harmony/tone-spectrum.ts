/** Sound → how strongly each semitone sounds, frame by frame. */
import { RealFft } from '../base/real-fft.ts';
import { Resampler } from '../base/resample.ts';
import * as S from './settings.ts';

export interface ToneSpectrum {
  /** TONES numbers a frame, from LOWEST_MIDI up; 0 and more. */
  readonly tones: Float32Array;
  readonly frames: number;
  /** The middle of frame f lies at (f · HOP + WINDOW / 2) / HARMONY_HZ seconds. */
  readonly secondsPerFrame: number;
  readonly firstSeconds: number;
  /** How far the recording's semitones lie above those of A4 = 440 Hz, −0.5 to 0.5. */
  readonly tuningSemitones: number;
  /** Mean power of each frame, full scale 1. */
  readonly powers: Float32Array;
}

/** Most the spectrum's peaks that speak for the tuning are taken from these tones: C3 to C6. */
const TUNING_FROM = 48;
const TUNING_TO = 84;

/** Called now and then with the share that is done, 0 to 1; answers whether to go on. */
export type Progress = (share: number) => boolean;

/**
 * @param samples mono, full scale ±1
 * @returns null where `progress` asked to stop
 */
export function toneSpectrum(
  samples: Float32Array,
  sampleRate: number,
  progress: Progress = () => true,
): ToneSpectrum | null {
  const sound = toHarmonyRate(samples, sampleRate);
  const frames = Math.max(0, Math.floor((sound.length - S.WINDOW) / S.HOP) + 1);
  const bins = S.WINDOW / 2 + 1;
  const magnitudes = new Float32Array(frames * bins);
  const powers = new Float32Array(frames);
  const fft = new RealFft(S.WINDOW);
  const window = Float64Array.from(
    { length: S.WINDOW },
    (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / S.WINDOW),
  );
  const piece = new Float64Array(S.WINDOW);
  const spectrum = fft.spectrum();
  let [cos, sin] = [0, 0];
  for (let f = 0; f < frames; f++) {
    if (f % 256 === 0 && !progress(f / frames)) return null;
    let power = 0;
    for (let i = 0; i < S.WINDOW; i++) {
      const x = sound[f * S.HOP + i]!;
      power += x * x;
      piece[i] = x * window[i]!;
    }
    powers[f] = power / S.WINDOW;
    fft.forward(piece, spectrum);
    const row = magnitudes.subarray(f * bins, (f + 1) * bins);
    for (let k = 0; k < bins; k++) row[k] = Math.hypot(spectrum[2 * k]!, spectrum[2 * k + 1]!);
    const peaks = peakAngle(row);
    cos += peaks[0];
    sin += peaks[1];
  }
  const tuningSemitones = cos === 0 && sin === 0 ? 0 : Math.atan2(sin, cos) / (2 * Math.PI);
  return {
    tones: foldTones(magnitudes, frames, bins, tuningSemitones),
    frames,
    secondsPerFrame: S.HOP / S.HARMONY_HZ,
    firstSeconds: S.WINDOW / 2 / S.HARMONY_HZ,
    tuningSemitones,
    powers,
  };
}

function toHarmonyRate(samples: Float32Array, sampleRate: number): Float32Array {
  if (sampleRate === S.HARMONY_HZ) return samples;
  const resampler = new Resampler(sampleRate, S.HARMONY_HZ, S.PASS_HZ, S.STOP_HZ);
  const out = new Float32Array(
    Math.ceil((samples.length * S.HARMONY_HZ) / sampleRate) + resampler.largestInput,
  );
  let length = 0;
  for (let from = 0; from < samples.length; from += resampler.largestInput) {
    const to = Math.min(samples.length, from + resampler.largestInput);
    length += resampler.process(samples, from, to, out, length);
  }
  return out.subarray(0, length);
}

const hzOf = (midi: number): number => 440 * 2 ** ((midi - 69) / 12);
const midiOf = (hz: number): number => 69 + 12 * Math.log2(hz / 440);

/** Where a frame's peaks lie between the semitones, as a sum of unit vectors weighed by their height. */
function peakAngle(row: Float32Array): readonly [number, number] {
  const perBin = S.HARMONY_HZ / S.WINDOW;
  const from = Math.ceil(hzOf(TUNING_FROM) / perBin);
  const to = Math.floor(hzOf(TUNING_TO) / perBin);
  let [cos, sin] = [0, 0];
  for (let k = from; k <= to; k++) {
    const [a, b, c] = [row[k - 1]!, row[k]!, row[k + 1]!];
    if (b <= a || b < c) continue;
    const bend = a - 2 * b + c;
    const place = bend < 0 ? k + (a - c) / (2 * bend) : k;
    const angle = 2 * Math.PI * midiOf(place * perBin);
    const weight = Math.sqrt(b);
    cos += weight * Math.cos(angle);
    sin += weight * Math.sin(angle);
  }
  return [cos, sin];
}

/** Semitones: a bell about each, compressed, and the noise around taken off. */
function foldTones(magnitudes: Float32Array, frames: number, bins: number, tuning: number): Float32Array {
  const perBin = S.HARMONY_HZ / S.WINDOW;
  const bells = Array.from({ length: S.TONES }, (_, t) => bell(S.LOWEST_MIDI + t + tuning, perBin, bins));
  const tones = new Float32Array(frames * S.TONES);
  const raw = new Float64Array(S.TONES);
  for (let f = 0; f < frames; f++) {
    const row = magnitudes.subarray(f * bins, (f + 1) * bins);
    for (const [t, { first, weights }] of bells.entries()) {
      let sum = 0;
      for (let i = 0; i < weights.length; i++) sum += weights[i]! * row[first + i]!;
      raw[t] = sum ** S.COMPRESSION;
    }
    for (let t = 0; t < S.TONES; t++) {
      const low = Math.max(0, t - S.WHITENING_TONES);
      const high = Math.min(S.TONES - 1, t + S.WHITENING_TONES);
      let mean = 0;
      for (let i = low; i <= high; i++) mean += raw[i]!;
      tones[f * S.TONES + t] = Math.max(0, raw[t]! - mean / (high - low + 1));
    }
  }
  return tones;
}

/** A third of a semitone wide, and never narrower than three quarters of a bin. */
function bell(midi: number, perBin: number, bins: number): { first: number; weights: Float64Array } {
  const centre = hzOf(midi) / perBin;
  const width = Math.max(0.75, centre * (2 ** (0.33 / 12) - 1));
  const first = Math.max(0, Math.floor(centre - 3 * width));
  const last = Math.min(bins - 1, Math.ceil(centre + 3 * width));
  const weights = Float64Array.from({ length: last - first + 1 }, (_, i) =>
    Math.exp(-(((first + i - centre) / width) ** 2) / 2),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return { first, weights: weights.map((weight) => weight / sum) };
}
