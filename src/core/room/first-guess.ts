/**
 * How loudly the band's direct sound lies in a take, before anything of the room is known: one number, that a few
 * seconds tell for certain. From it the path is learned; from nothing, held chords look alike to all its partitions, and
 * two guitars on the same chord were parted by 5 dB only.
 */
import { RealFft } from './real-fft.ts';

const WINDOW = 1024;
/** The player's own notes are told by not fitting, and count the less the less they fit. */
const ROUNDS = 20;
/** What fits to within 20 dB counts alike: the room's answer is in the way. */
const FIT = 1e-2;
const TINY = 1e-6;

/**
 * @param microphone the take @param band laid on the take, both at one rate
 * @param lead samples by which the band is early
 * @returns factor from the band to its direct sound in the take; 0 where there is none
 */
export function directGain(microphone: Float32Array, band: Float32Array, lead: number): number {
  const fft = new RealFft(WINDOW);
  const windows = Math.floor((2 * (microphone.length - WINDOW)) / WINDOW) + 1;
  const pairs = Array.from({ length: Math.max(0, windows) }, (_, i) => {
    const from = (i * WINDOW) / 2;
    return { heard: spectrum(fft, microphone, from), played: spectrum(fft, band, from - lead) };
  });
  let gain = fitted(pairs, () => 1);
  for (let round = 0; round < ROUNDS; round++) {
    const now = gain;
    gain = fitted(pairs, (left, played) => 1 / (left(now) + FIT * now * now * played + TINY));
  }
  return gain;
}

interface Pair {
  readonly heard: Float64Array;
  readonly played: Float64Array;
}

/** Weighted least squares; the weight of a bin goes by what a gain would leave there and by the band's power. */
function fitted(
  pairs: readonly Pair[],
  weightOf: (left: (gain: number) => number, played: number) => number,
): number {
  let product = 0;
  let power = 0;
  for (const { heard, played } of pairs) {
    for (let i = 2; i < heard.length; i += 2) {
      const [hr, hi, pr, pi] = [heard[i]!, heard[i + 1]!, played[i]!, played[i + 1]!];
      const size = pr * pr + pi * pi;
      if (size === 0) continue;
      const weight = weightOf((gain) => (hr - gain * pr) ** 2 + (hi - gain * pi) ** 2, size);
      product += weight * (hr * pr + hi * pi);
      power += weight * size;
    }
  }
  return power === 0 ? 0 : product / power;
}

/** Under a Hann window. */
function spectrum(fft: RealFft, signal: Float32Array, from: number): Float64Array {
  const windowed = Float64Array.from(
    { length: WINDOW },
    (_, i) => (signal[from + i] ?? 0) * (0.5 - 0.5 * Math.cos((2 * Math.PI * i) / WINDOW)),
  );
  const out = fft.spectrum();
  fft.forward(windowed, out);
  return out;
}
