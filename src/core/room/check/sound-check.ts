/** Three quiet sweeps of rising level, and the result of all of them. */
import { problem, type Problem } from '../../words/problem.ts';
import { bad, failure, good, type Outcome } from '../../base/outcome.ts';
import { roomPathOf, type RoomPath } from '../cancel/band-remover.ts';
import { interpolated } from '../../base/interpolate.ts';
import { measurePath, type MeasuredPath } from '../path/measure-path.ts';
import { powerOfTwoFrom, RealFft } from '../../base/real-fft.ts';
import { heardPlaying } from './heard-playing.ts';
import { sweep, sweepShape } from '../path/sweep.ts';

/** Levels of the sweeps, dB of full scale: the first is hardly audible, the last as loud as quiet talk. */
const LEVELS_DB = [-34, -28, -22] as const;
const SWEEP_SECONDS = 0.8;
/** Silence after each sweep, seconds: the longest delay and the reverberation. */
export const SWEEP_GAP_SECONDS = 1.1;
/** Delays that differ by more than this are not the same delay. */
const MOST_SPREAD_SECONDS = 0.005;

/** The sweeps as they are to be played, SWEEP_GAP_SECONDS between them. */
export function checkSweeps(sampleRate: number): readonly Float32Array<ArrayBuffer>[] {
  const full = sweep({ ...sweepShape(sampleRate), seconds: SWEEP_SECONDS });
  return LEVELS_DB.map((db) => Float32Array.from(full, (x) => x * 10 ** (db / 20)));
}

export interface SweepResult {
  /** Round trip, seconds; null where too little came back to measure it. */
  readonly delaySeconds: number | null;
  /** Largest difference between the sweeps. */
  readonly spreadSeconds: number;
  /** Power of what comes back relative to what is played, dB; −Infinity where nothing comes back. */
  readonly leakDb: number;
  readonly through: 'speakers' | 'headphones';
  /** By how much the path of one sweep reduces another, dB; 0 through headphones. */
  readonly removedDb: number;
  /** null through headphones, where there is nothing to remove. */
  readonly path: RoomPath | null;
}

/**
 * @param recorded for each sweep the microphone's samples from its first sample to SWEEP_GAP_SECONDS after its end
 * @param played the sweeps that `checkSweeps` returned
 */
export function judgeSweeps(
  recorded: readonly Float32Array[],
  played: readonly Float32Array[],
  sampleRate: number,
): Outcome<SweepResult> {
  if (heardPlaying(recorded, sampleRate)) return bad('sweep.playing');
  const measured: MeasuredPath[] = [];
  let refusal: Problem | null = null;
  for (const [i, sound] of recorded.entries()) {
    const path = measurePath(sound, played[i]!, sampleRate);
    if (path.ok) measured.push(path.value);
    else refusal = path.problem;
  }
  const heard = measured.filter(({ leakDb }) => leakDb > -Infinity);
  // The last sweep is the loudest, so that its measurement of the room counts.
  const last = measured.at(-1);
  if (last === undefined || (refusal !== null && heard.length === 0)) {
    return failure(refusal ?? problem('sweep.nothingRecorded'));
  }
  if (heard.length === 0) {
    return good({
      delaySeconds: null,
      spreadSeconds: 0,
      leakDb: -Infinity,
      through: 'headphones',
      removedDb: 0,
      path: null,
    });
  }
  const delays = heard.map(({ delaySeconds }) => delaySeconds).sort((a, b) => a - b);
  const spreadSeconds = delays.at(-1)! - delays[0]!;
  if (spreadSeconds > MOST_SPREAD_SECONDS) {
    const ms = Math.round(1000 * spreadSeconds);
    return bad('sweep.spread', { ms });
  }
  const best = heard.at(-1)!;
  const speakers = best.through === 'speakers';
  const other = heard.at(-2);
  return good({
    delaySeconds: delays[delays.length >> 1]!,
    spreadSeconds,
    leakDb: best.leakDb,
    through: best.through,
    removedDb:
      speakers && other ? takenOut(recorded.at(-1)!, played.at(-1)!, moved(other, best.delaySeconds)) : 0,
    path: speakers ? roomPathOf(best) : null,
  });
}

/** A path as it would be with another delay: a browser may slip by a few samples from one sweep to the next. */
function moved({ taps, delaySeconds, sampleRate }: MeasuredPath, toSeconds: number): Float32Array {
  const by = (toSeconds - delaySeconds) * sampleRate;
  return taps.map((_, i) => interpolated(taps, i - by));
}

/** By how much the level falls when the prediction of a path is subtracted, dB. */
function takenOut(recorded: Float32Array, played: Float32Array, taps: Float32Array): number {
  const fft = new RealFft(powerOfTwoFrom(recorded.length + taps.length));
  const spectrumOf = (samples: Float32Array) => {
    const padded = new Float64Array(fft.size);
    padded.set(samples);
    const spectrum = fft.spectrum();
    fft.forward(padded, spectrum);
    return spectrum;
  };
  const [a, b] = [spectrumOf(played), spectrumOf(taps)];
  for (let i = 0; i < a.length; i += 2) {
    const re = a[i]! * b[i]! - a[i + 1]! * b[i + 1]!;
    a[i + 1] = a[i]! * b[i + 1]! + a[i + 1]! * b[i]!;
    a[i] = re;
  }
  const foretold = new Float64Array(fft.size);
  fft.inverse(a, foretold);
  let [before, after] = [1e-20, 1e-20];
  for (let i = 0; i < recorded.length; i++) {
    before += recorded[i]! ** 2;
    after += (recorded[i]! - foretold[i]!) ** 2;
  }
  return Math.max(0, 10 * Math.log10(before / after));
}
