/**
 * What one sweep tells: how late, how loudly and by which path the speakers come back through the microphone.
 */
import { bad, good, type Outcome } from '../../base/outcome.ts';
import { deconvolve } from './sweep.ts';

export interface MeasuredPath {
  /** Taps at `sampleRate`, index 0 at no delay at all. */
  readonly taps: Float32Array;
  readonly sampleRate: number;
  /** Round trip of the first sound to arrive, seconds. */
  readonly delaySeconds: number;
  /** Power of what comes back against what was played, the noise's share taken off, dB. */
  readonly leakDb: number;
  /** Peak of the path over what the room's noise leaves in it, dB. */
  readonly clarityDb: number;
  /** headphones: too little comes back to be in the way. */
  readonly through: 'speakers' | 'headphones';
}

/** A path whose peak stands less than this over its own noise is none: noise alone reaches 13 dB. */
const LEAST_CLARITY_DB = 16;
/**
 * The first arrival: the earliest tap that reaches a fifth of the strongest, where the noise lets so weak a one be seen
 * (the highest of 30,000 taps of noise reaches 4.2 deviations), else half of it. Later and stronger ones are reflections.
 */
const ARRIVAL = 0.2;
const NOISY_ARRIVAL = 0.5;
const NOISE_DEVIATIONS = 5;
const LONGEST_DELAY_SECONDS = 0.6;
/** What belongs to the path: a little before the first arrival, and the room's answer behind it. */
const EARLY_SECONDS = 0.003;
const PATH_SECONDS = 0.45;
const TAIL_SECONDS = 0.5;
/** Samples at full scale beyond which a sweep is bent rather than measured. */
const CLIPPED_SAMPLES = 20;
const SILENT = 1e-5;

/**
 * @param recorded from the sample at which the sweep began to be played, with a second of what follows
 * @param played the sweep as it was played, its level included
 * @returns a problem where the recording is silent, clipped, or drowned in noise
 */
export function measurePath(
  recorded: Float32Array,
  played: Float32Array,
  sampleRate: number,
): Outcome<MeasuredPath> {
  let loudest = 0;
  let clipped = 0;
  for (const x of recorded) {
    loudest = Math.max(loudest, Math.abs(x));
    if (Math.abs(x) >= 0.99) clipped++;
  }
  if (loudest < SILENT) {
    return bad('sweep.silent');
  }
  if (clipped > CLIPPED_SAMPLES) {
    return bad('sweep.tooLoud');
  }
  const length = Math.round((LONGEST_DELAY_SECONDS + TAIL_SECONDS) * sampleRate);
  const taps = deconvolve(recorded, played, length);
  const arrival = firstArrival(taps, Math.round(LONGEST_DELAY_SECONDS * sampleRate));
  const [from, to] = [arrival.index - EARLY_SECONDS * sampleRate, arrival.index + PATH_SECONDS * sampleRate];
  const [pathFrom, pathTo] = [Math.max(0, Math.round(from)), Math.min(length, Math.round(to))];
  // Before and behind the path there is nothing but the room's noise.
  const noise = Math.sqrt(
    (pathFrom * rms(taps, 0, pathFrom) ** 2 + (length - pathTo) * rms(taps, pathTo, length) ** 2) /
      (pathFrom + length - pathTo),
  );
  const clarityDb = 20 * Math.log10(arrival.peak / (noise + 1e-12));
  const power = (pathTo - pathFrom) * (rms(taps, pathFrom, pathTo) ** 2 - noise ** 2);
  const leakDb = 10 * Math.log10(Math.max(power, 1e-12));
  const heard = clarityDb >= LEAST_CLARITY_DB;
  if (!heard && loudest > NOISY) {
    return bad('sweep.noisyRoom');
  }
  return good({
    taps,
    sampleRate,
    delaySeconds: arrival.position / sampleRate,
    leakDb: heard ? leakDb : -Infinity,
    clarityDb,
    through: heard && leakDb > HEADPHONES_DB ? 'speakers' : 'headphones',
  });
}

/** Quieter than this the microphone heard next to nothing: headphones, not noise. */
const NOISY = 0.02;
/** Under −50 dB the band lies far under any played note. */
const HEADPHONES_DB = -50;

function firstArrival(taps: Float32Array, longest: number) {
  let peak = 0;
  for (let i = 0; i < longest; i++) peak = Math.max(peak, Math.abs(taps[i]!));
  let index = 0;
  // Most taps hold no more than noise and the end of the tail; a normal distribution's median is 0.67 deviations.
  const sizes = taps.map(Math.abs).sort();
  const deviation = sizes[sizes.length >> 1]! / 0.67;
  const least = Math.min(NOISY_ARRIVAL * peak, Math.max(ARRIVAL * peak, NOISE_DEVIATIONS * deviation));
  while (index < longest && Math.abs(taps[index]!) < least) index++;
  while (Math.abs(taps[index + 1] ?? 0) > Math.abs(taps[index]!)) index++;
  const [a, b, c] = [taps[index - 1] ?? 0, taps[index]!, taps[index + 1] ?? 0].map(Math.abs) as [
    number,
    number,
    number,
  ];
  const bend = a - 2 * b + c;
  return { index, peak, position: index + (bend < 0 ? (0.5 * (a - c)) / bend : 0) };
}

function rms(values: Float32Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i]! ** 2;
  return Math.sqrt(sum / Math.max(1, to - from));
}
