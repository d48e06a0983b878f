/** Whether somebody plays while the sweeps of a sound check sound: a tone in the silence after them, that comes and goes. */

/** Of the silence after a sweep, its end: the sweep itself has died away in any room by then, seconds. */
const TAIL_SECONDS = 0.4;
/** Quieter than this it does not harm what the sweeps measure, dB of full scale. */
const LEAST_DB = -48;
/** Pitches of guitars and basses from the second fret on; mains hum lies below, Hz. */
const [LOWEST_HZ, HIGHEST_HZ] = [70, 1000];
/** Sample rate in Hz: enough for these pitches, and cheap. */
const RATE = 4000;
/** Normalised autocorrelation at the period: a string reaches 0.95, noise stays under 0.5 over so many samples. */
const LEAST_CLARITY = 0.85;
/** Hum stays as it is from one sweep to the next; a string decays, or another one is played. */
const [SAME_DB, SAME_PITCH] = [1.5, 0.01];

interface Tone {
  readonly hz: number;
  readonly db: number;
}

/** @param recorded for each sweep the microphone's samples to the end of the silence after it */
export function heardPlaying(recorded: readonly Float32Array[], sampleRate: number): boolean {
  const tones = recorded
    .map((sound) => toneOf(sound.subarray(sound.length - Math.round(TAIL_SECONDS * sampleRate)), sampleRate))
    .filter((tone) => tone !== null);
  if (tones.length === 0) return false;
  const [first] = tones;
  const isSame = ({ hz, db }: Tone) =>
    Math.abs(db - first!.db) < SAME_DB && Math.abs(hz / first!.hz - 1) < SAME_PITCH;
  return !(recorded.length > 1 && tones.length === recorded.length && tones.every(isSame));
}

/** The tone of a stretch; null where it has none, or is quiet. */
function toneOf(samples: Float32Array, sampleRate: number): Tone | null {
  const low = atLowRate(samples, sampleRate);
  const power = low.reduce((sum, x) => sum + x * x, 0) / low.length;
  const db = 10 * Math.log10(Math.max(1e-12, power));
  if (db < LEAST_DB) return null;
  // McLeod and Wyvill, "A smarter way to find pitch" (2005): the first peak after the first zero crossing that is high enough.
  const longest = Math.ceil(RATE / LOWEST_HZ);
  const clarity = Array.from({ length: longest + 2 }, (_, lag) => clarityAt(low, lag));
  const crossed = clarity.findIndex((value) => value < 0);
  if (crossed < 0) return null;
  for (let lag = Math.max(crossed, Math.floor(RATE / HIGHEST_HZ)); lag <= longest; lag++) {
    const value = clarity[lag]!;
    if (value >= LEAST_CLARITY && value >= clarity[lag - 1]! && value >= clarity[lag + 1]!)
      return { hz: RATE / lag, db };
  }
  return null;
}

/** 1 where the samples repeat themselves after a lag. */
function clarityAt(samples: Float32Array, lag: number): number {
  let [same, size] = [0, 0];
  for (let i = lag; i < samples.length; i++) {
    const [one, other] = [samples[i]!, samples[i - lag]!];
    same += one * other;
    size += one * one + other * other;
  }
  return size === 0 ? 0 : (2 * same) / size;
}

/** Means of neighbouring samples, without the constant part. */
function atLowRate(samples: Float32Array, sampleRate: number): Float32Array {
  const step = sampleRate / RATE;
  const low = new Float32Array(Math.floor(samples.length / step));
  for (let i = 0; i < low.length; i++) {
    const [from, to] = [Math.round(i * step), Math.round((i + 1) * step)];
    for (let j = from; j < to; j++) low[i]! += samples[j]! / (to - from);
  }
  const mean = low.reduce((sum, x) => sum + x, 0) / low.length;
  return low.map((x) => x - mean);
}
