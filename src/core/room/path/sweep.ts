/**
 * The exponential sine sweep, and the impulse response of a room from it.
 *
 * Source: A. Farina, "Simultaneous measurement of impulse response and distortion with a swept-sine
 * technique", 108th AES Convention, 2000: x(t) = sin(ω₁T/L · (e^(tL/T) − 1)), L = ln(ω₂/ω₁). Reversed in
 * time and attenuated by 6 dB an octave it is its own inverse filter; harmonic distortion then lies before the direct
 * sound, separate from the room's response.
 */
import { powerOfTwoFrom, RealFft } from '../../base/real-fft.ts';

export interface SweepShape {
  readonly sampleRate: number;
  readonly seconds: number;
  readonly lowHz: number;
  readonly highHz: number;
  /** Fade at both ends, seconds: a sweep that starts abruptly clicks. */
  readonly fadeSeconds: number;
}

/** 1.5 s from 60 Hz to 0.45 of the sample rate: long enough to be 20 dB above the noise of a living room. */
export const sweepShape = (sampleRate: number): SweepShape => ({
  sampleRate,
  seconds: 1.5,
  lowHz: 60,
  highHz: Math.min(20_000, 0.45 * sampleRate),
  fadeSeconds: 0.02,
});

/** The sweep at full scale, `seconds × sampleRate` samples. The caller sets its level. */
export function sweep({ sampleRate, seconds, lowHz, highHz, fadeSeconds }: SweepShape): Float32Array {
  const length = Math.round(seconds * sampleRate);
  const octaves = Math.log(highHz / lowHz);
  const scale = (2 * Math.PI * lowHz * seconds) / octaves;
  const fade = fadeSeconds * sampleRate;
  return Float32Array.from({ length }, (_, n) => {
    const edge = Math.min(1, (n + 1) / fade, (length - n) / fade);
    const window = 0.5 - 0.5 * Math.cos(Math.PI * edge);
    return window * Math.sin(scale * (Math.exp((n / length) * octaves) - 1));
  });
}

/**
 * The impulse response between a played signal and its recording, by division of spectra with a floor (Wiener), so that
 * bins without energy in the played signal are not amplified.
 *
 * @param recorded the microphone's samples from the one at which `played` began
 * @returns `taps` taps at the same sample rate, index 0 at no delay
 */
export function deconvolve(recorded: Float32Array, played: Float32Array, taps: number): Float32Array {
  const fft = new RealFft(powerOfTwoFrom(recorded.length + played.length));
  const padded = new Float64Array(fft.size);
  const [top, bottom] = [recorded, played].map((signal) => {
    padded.fill(0);
    padded.set(signal);
    const spectrum = fft.spectrum();
    fft.forward(padded, spectrum);
    return spectrum;
  }) as [Float64Array, Float64Array];
  let loudest = 0;
  for (let k = 0; k < fft.bins; k++) {
    loudest = Math.max(loudest, bottom[2 * k]! ** 2 + bottom[2 * k + 1]! ** 2);
  }
  const floor = loudest * FLOOR;
  for (let k = 0; k < fft.bins; k++) {
    const [a, b] = [top[2 * k]!, top[2 * k + 1]!];
    const [c, d] = [bottom[2 * k]!, bottom[2 * k + 1]!];
    const power = c * c + d * d + floor;
    top[2 * k] = (a * c + b * d) / power;
    top[2 * k + 1] = (b * c - a * d) / power;
  }
  fft.inverse(top, padded);
  return Float32Array.from(padded.subarray(0, taps));
}

/** 60 dB under the loudest bin: an exponential sweep falls by 3 dB an octave, 25 dB in all over its range. */
const FLOOR = 1e-6;
