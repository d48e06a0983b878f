/**
 * What a recording that was opened says of its tempo: by the beats of what plays in it, else by the onsets of the line
 * alone. It is a proposal, for the player to confirm.
 */
import { largest } from '../base/extremes.ts';
import { detectBeats } from './detect-beats.ts';
import { LEAST_BEATS } from './settings.ts';

export interface RecordingTempo {
  /** In beats a minute, of the straight line through the beats. */
  readonly bpm: number;
  /** The first beat that has sound on it, or comes after the first sound; in seconds from the first sample. */
  readonly firstBeatSeconds: number;
  /** Furthest that a beat lies from the straight line, in seconds: more than a tenth means that the tempo wanders. */
  readonly wanderSeconds: number;
  /** A pulse that was heard, or the line's own onsets, which a rubato leaves unsure. */
  readonly from: 'beats' | 'onsets';
}

/** Three minutes tell the tempo of a recording; more would only keep the player waiting, seconds. */
const LOOKED_AT_SECONDS = 180;
/** A beat this much before the first sound may still be its own: attacks are placed to about this, seconds. */
const BEFORE_FIRST_SOUND = 0.07;

/**
 * @param samples mono
 * @returns null where no steady beat was found
 */
export function tempoOfSound(samples: Float32Array, sampleRate: number): RecordingTempo | null {
  const found = detectBeats(samples.subarray(0, Math.round(LOOKED_AT_SECONDS * sampleRate)), sampleRate);
  if (!found.ok) return null;
  const { beats, attacks } = found.value;
  const { first, step, wanderSeconds } = evenBeats(beats);
  const sound = attacks[0] ?? first;
  return { bpm: 60 / step, firstBeatSeconds: gridFrom(first, step, sound), wanderSeconds, from: 'beats' };
}

/** Slowest and fastest beat that is looked for among onsets, beats a minute. */
const SLOWEST = 50;
const FASTEST = 210;
/** Neighbouring tempi differ by so much: over 64 beats a wrong one runs off by an eighth of a beat at most. */
const TEMPO_STEP = 1.002;
/**
 * Other things equal, the pulse nearest to the tempo that is expected is taken: onsets alone don't tell beats from halves,
 * nor a shuffle from its triplets. Of two tempi in the ratio of 2 to 3 the farther one counts a third.
 */
const OCTAVES = 0.4;
/** Onsets this near to a beat are its own, in beats. */
const NEAR_BEATS = 0.08;
/**
 * Onsets that fall anywhere reach 0.4 by luck among all tempi that are tried; lines of straight and swung eighths with 16 ms of jitter
 * reach 0.5 and more (`tests/core/beats/recording-tempo.test.ts`).
 */
const LEAST_AGREEMENT = 0.45;

/**
 * The tempo on whose beats and halves the onsets of a line agree best, not too far from the one that is expected.
 * @param onsets in seconds, rising
 * @param expectedBpm of the chart that the line is thought to be played over
 * @returns null for fewer than eight, or where they agree on none
 */
export function tempoOfOnsets(onsets: readonly number[], expectedBpm: number): RecordingTempo | null {
  if (onsets.length < LEAST_BEATS) return null;
  let best = { merit: 0, agreement: 0, step: 0 };
  for (let bpm = SLOWEST; bpm <= FASTEST; bpm *= TEMPO_STEP) {
    const step = 60 / bpm;
    const agreement = (agreementOn(onsets, step) + agreementOn(onsets, step / 2)) / 2;
    const merit = agreement * Math.exp(-0.5 * (Math.log2(bpm / expectedBpm) / OCTAVES) ** 2);
    if (merit > best.merit) best = { merit, agreement, step };
  }
  if (best.agreement < LEAST_AGREEMENT) return null;
  const { step } = best;
  const phase = beatPlace(onsets, step);
  const off = onsets.map((onset) => Math.abs(wrapped((onset - phase) / (step / 2)) * (step / 2)));
  return {
    bpm: 60 / step,
    firstBeatSeconds: gridFrom(phase, step, onsets[0]!),
    wanderSeconds: largest(off),
    from: 'onsets',
  };
}

/** How well times fall on one phase of a period: 1 all together, 0 anywhere. */
function agreementOn(times: readonly number[], period: number): number {
  let [x, y] = [0, 0];
  for (const time of times) {
    x += Math.cos((2 * Math.PI * time) / period);
    y += Math.sin((2 * Math.PI * time) / period);
  }
  return Math.hypot(x, y) / times.length;
}

/** Where the beats lie on which most onsets fall, swung off-beats or not; in seconds, of any beat. */
function beatPlace(onsets: readonly number[], step: number): number {
  const near = (place: number) =>
    onsets.map((onset) => wrapped((onset - place) / step)).filter((off) => Math.abs(off) <= NEAR_BEATS);
  const fullest = onsets.reduce((best, onset) => (near(onset).length > near(best).length ? onset : best));
  const offs = near(fullest);
  return fullest + (step * offs.reduce((sum, off) => sum + off, 0)) / offs.length;
}

/** The distance to the nearest whole number, with its sign. */
const wrapped = (value: number): number => value - Math.round(value);

/** The first place of a grid that is not before a sound, nor before the recording. */
function gridFrom(origin: number, step: number, sound: number): number {
  const at = origin + Math.ceil((sound - BEFORE_FIRST_SOUND - origin) / step) * step;
  return at >= 0 ? at : at + step * Math.ceil(-at / step);
}

/** Beats as an even tempo has them. */
export interface EvenBeats {
  /** Where the first of them lies, in seconds. */
  readonly first: number;
  /** From each to the next, in seconds. */
  readonly step: number;
  /** Furthest that one of them lies from there, in seconds. */
  readonly wanderSeconds: number;
}

/** The least-squares line through evenly numbered beats. @param beats seconds, rising; two at least */
export function evenBeats(beats: readonly number[]): EvenBeats {
  const middle = (beats.length - 1) / 2;
  const mean = beats.reduce((sum, beat) => sum + beat, 0) / beats.length;
  let [along, size] = [0, 0];
  beats.forEach((beat, i) => {
    along += (i - middle) * (beat - mean);
    size += (i - middle) ** 2;
  });
  const step = along / size;
  const first = mean - middle * step;
  return { first, step, wanderSeconds: largest(beats.map((beat, i) => Math.abs(beat - first - i * step))) };
}
