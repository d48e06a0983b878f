/**
 * The gain of the band's direct sound in a take, before anything of the room is known: one number for each third of an
 * octave, which a few seconds of sound determine. The path is learned from there. Learned from nothing, a held chord fits
 * all partitions of the path alike: of two guitars on the same chord only 5 dB were removed. One number for all
 * frequencies would suffice for a good loudspeaker, but that of a laptop has no bass.
 */
import { RealFft } from '../../base/real-fft.ts';

const WINDOW = 1024;
/** The player's notes do not fit the band: bins count less, the worse they fit. */
const ROUNDS = 20;
/** Bins that fit to within 20 dB count equally: the reverberation prevents a better fit. */
const FIT = 1e-2;
const TINY = 1e-6;
/** Bands are a third of an octave wide, and no narrower than so many bins (of 12 Hz). */
const OCTAVES = 1 / 3;
const LEAST_BINS = 8;
/**
 * The gain of a third of an octave is drawn towards the gain of the whole, the more the less certain it is (James and Stein
 * 1961); bins and windows are not independent, and their number is divided by this. Level of the band that is left, relative
 * to the player, tuning lines: a laptop that stops at 250 Hz, one number for all −24.9 dB, 1600 −27.1 dB, 100 −27.1 dB;
 * real guitars in a room −20.2, −20.0 and −19.7 dB.
 */
const CORRELATED = 1600;

/** Half the length of the taps: a laptop's loudspeaker changes the phase around its lower limit. */
const REACH = 96;

/**
 * @param microphone the samples of the take
 * @param band the samples of the band, aligned with the take and at the same sample rate
 * @param lead samples by which the band is early
 * @returns taps from the band to its direct sound in the take, index REACH is no delay; zeros where there is none
 */
export function directSound(microphone: Float32Array, band: Float32Array, lead: number): Float32Array {
  const fft = new RealFft(WINDOW);
  const windows = Math.floor((2 * (microphone.length - WINDOW)) / WINDOW) + 1;
  const pairs = Array.from({ length: Math.max(0, windows) }, (_, i) => {
    const from = (i * WINDOW) / 2;
    return { heard: spectrum(fft, microphone, from), played: spectrum(fft, band, from - lead) };
  });
  const edges = bandEdges(fft.bins);
  const overall = robust(pairs, 1, fft.bins);
  const middles: number[] = [];
  const gains: Gain[] = [];
  for (let b = 0; b + 1 < edges.length; b++) {
    const [from, to] = [edges[b]!, edges[b + 1]!];
    const { re, im, certainty } = robust(pairs, from, to);
    const apart = (re - overall.re) ** 2 + (im - overall.im) ** 2;
    const share = certainty * apart === 0 ? 0 : Math.max(0, 1 - CORRELATED / (certainty * apart));
    middles.push((from + to - 1) / 2);
    gains.push({
      re: overall.re + share * (re - overall.re),
      im: overall.im + share * (im - overall.im),
    });
  }
  return tapsOf(fft, middles, gains);
}

/** Samples from the first tap of `directSound` to the tap of no delay. */
export const DIRECT_REACH = REACH;

interface Pair {
  readonly heard: Float64Array;
  readonly played: Float64Array;
}
interface Gain {
  readonly re: number;
  readonly im: number;
}

function bandEdges(bins: number): number[] {
  const edges = [1];
  while (edges.at(-1)! < bins) {
    const from = edges.at(-1)!;
    const to = Math.max(from + LEAST_BINS, Math.round(from * 2 ** OCTAVES));
    edges.push(bins - to < LEAST_BINS ? bins : to);
  }
  return edges;
}

function robust(pairs: readonly Pair[], from: number, to: number) {
  let gain = fitted(pairs, from, to, () => 1);
  for (let round = 0; round < ROUNDS; round++) {
    const { re, im } = gain;
    const size = re * re + im * im;
    gain = fitted(pairs, from, to, (left, played) => 1 / (left(re, im) + FIT * size * played + TINY));
  }
  return gain;
}

/**
 * Weighted least squares; the weight of a bin depends on the error that the gain leaves there and on the band's power.
 */
function fitted(
  pairs: readonly Pair[],
  from: number,
  to: number,
  weightOf: (left: (re: number, im: number) => number, played: number) => number,
): Gain & { readonly certainty: number } {
  let [re, im, power] = [0, 0, 0];
  for (const { heard, played } of pairs) {
    for (let i = 2 * from; i < 2 * to; i += 2) {
      const [hr, hi, pr, pi] = [heard[i]!, heard[i + 1]!, played[i]!, played[i + 1]!];
      const size = pr * pr + pi * pi;
      if (size === 0) continue;
      const left = (r: number, j: number) => (hr - r * pr + j * pi) ** 2 + (hi - r * pi - j * pr) ** 2;
      const weight = weightOf(left, size);
      re += weight * (hr * pr + hi * pi);
      im += weight * (hi * pr - hr * pi);
      power += weight * size;
    }
  }
  return power === 0 ? { re: 0, im: 0, certainty: 0 } : { re: re / power, im: im / power, certainty: power };
}

/** Interpolates linearly between the thirds of an octave. */
function tapsOf(fft: RealFft, middles: readonly number[], gains: readonly Gain[]): Float32Array {
  const response = fft.spectrum();
  for (let k = 0, b = 0; k < fft.bins; k++) {
    while (b + 2 < middles.length && k > middles[b + 1]!) b++;
    const [low, high] = [gains[b]!, gains[b + 1] ?? gains[b]!];
    const width = (middles[b + 1] ?? middles[b]! + 1) - middles[b]!;
    const share = Math.max(0, Math.min(1, (k - middles[b]!) / width));
    response[2 * k] = low.re + share * (high.re - low.re);
    response[2 * k + 1] = low.im + share * (high.im - low.im);
  }
  response[1] = response[2 * fft.bins - 1] = 0;
  const signal = new Float64Array(WINDOW);
  fft.inverse(response, signal);
  return Float32Array.from({ length: 2 * REACH }, (_, i) => {
    const at = i - REACH;
    return signal[(at + WINDOW) % WINDOW]! * (0.5 + 0.5 * Math.cos((Math.PI * at) / REACH));
  });
}

/** A spectrum with a Hann window. */
function spectrum(fft: RealFft, signal: Float32Array, from: number): Float64Array {
  const windowed = Float64Array.from(
    { length: WINDOW },
    (_, i) => (signal[from + i] ?? 0) * (0.5 - 0.5 * Math.cos((2 * Math.PI * i) / WINDOW)),
  );
  const out = fft.spectrum();
  fft.forward(windowed, out);
  return out;
}
