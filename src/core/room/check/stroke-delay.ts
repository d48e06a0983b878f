/**
 * The round trip from the player's own hands: through headphones the microphone does not hear the sweep, so the
 * player strikes muted strings with a click, and the delay is the median distance from each click, as it was sent to
 * the output, to its stroke, as it came in. The player's own habit of playing early or late is part of it.
 */
import { bad, good, type Outcome } from '../../base/outcome.ts';
import { median, quantile } from '../../base/statistics.ts';

/** How many clicks are to be played with. */
export const STROKES_ASKED = 8;
/** One click lasts this long, so that a delay of up to MOST_DELAY_SECONDS can't be taken for the next click. */
export const CLICK_GAP_SECONDS = 0.75;
/** Strokes that must have been played with their click. One or two may be missed without harm to a median. */
const LEAST_STROKES = 6;
/**
 * A round trip that is looked for: a player is early by a tenth of a second at most, Bluetooth late by half a second.
 */
const LEAST_DELAY_SECONDS = -0.1;
const MOST_DELAY_SECONDS = 0.55;
/** Strokes this near one delay were played with their click. */
const TOGETHER_SECONDS = 0.08;
/**
 * Half of the strokes within this distance of each other: amateurs tap to a click with a spread of 20 to 40 ms (from
 * memory).
 */
const MOST_SPREAD_SECONDS = 0.06;

/** A sound that follows its click as exactly as this, four times out of four, is the click itself and no hand. */
const LEAK_SPREAD_SECONDS = 0.008;

const FRAME_SECONDS = 0.002;
/** A stroke raises the energy of the last 6 ms over that of the 60 ms before by this factor. */
const RISE = 8;
const SHORT_FRAMES = 3;
const LONG_FRAMES = 30;
/** After a stroke nothing counts for so long: strings rattle. */
const DEAD_SECONDS = 0.2;
/** A stroke is at least this much louder than the quietest tenth of the recording. */
const OVER_NOISE = 20;

/** What the strokes say of the delay. */
export interface StrokeDelay {
  /** From a click at the output to its stroke in the recording; the player's habit included. */
  readonly delaySeconds: number;
  /** Between the quarter that came earliest and the quarter that came latest (interquartile range). */
  readonly spreadSeconds: number;
  /** Strokes that were played with a click. */
  readonly strokes: number;
}

/**
 * The delay from a recording of the count-in and the eight clicks with their strokes. Fails where the clicks come back
 * through the microphone, since they could be taken for strokes, and where strokes and clicks were not together.
 * @param samples mono, full scale ±1
 * @param countInSeconds when the clicks of the count-in were sent to the output, from the first sample
 * @param clickSeconds when the eight clicks were
 */
export function measureStrokes(
  samples: Float32Array,
  sampleRate: number,
  countInSeconds: readonly number[],
  clickSeconds: readonly number[],
): Outcome<StrokeDelay> {
  const strokes = findStrokes(samples, sampleRate);
  if (isClickHeard(strokes, countInSeconds)) return bad('soundCheck.clicksHeard');
  const measured = delayOfStrokes(strokes, clickSeconds);
  return measured === null ? bad('soundCheck.strokesApart', { asked: STROKES_ASKED }) : good(measured);
}

/** Whether something sounds at the same distance from every click of the count-in, during which nobody strikes. */
function isClickHeard(strokeSeconds: readonly number[], countInSeconds: readonly number[]): boolean {
  const [first, ...others] = countInSeconds;
  if (first === undefined) return false;
  return strokeSeconds.some((stroke) => {
    const delay = stroke - first;
    if (delay < 0 || delay > MOST_DELAY_SECONDS) return false;
    return others.every((click) =>
      strokeSeconds.some((other) => Math.abs(other - click - delay) <= LEAK_SPREAD_SECONDS),
    );
  });
}

/**
 * The moments at which something was struck, in seconds from the first sample.
 * A muted stroke has no pitch: only the rise of its energy counts.
 * @param samples mono, full scale ±1
 */
export function findStrokes(samples: Float32Array, sampleRate: number): readonly number[] {
  const size = Math.max(1, Math.round(FRAME_SECONDS * sampleRate));
  const energies = frameEnergies(samples, size);
  if (energies.length === 0) return [];
  const floor = Math.max(quantile(energies, 0.1), 1e-12) * OVER_NOISE;
  const strokes: number[] = [];
  let lastFrame = -Infinity;
  for (let f = 0; f < energies.length; f++) {
    const now = meanOf(energies, f - SHORT_FRAMES + 1, f);
    if (now < floor || (f - lastFrame) * FRAME_SECONDS < DEAD_SECONDS) continue;
    const before = meanOf(energies, f - SHORT_FRAMES - LONG_FRAMES + 1, f - SHORT_FRAMES);
    if (now < RISE * before) continue;
    lastFrame = f;
    strokes.push((firstRise(energies, f, before) * size) / sampleRate);
  }
  return strokes;
}

/**
 * The delay that most strokes agree on, or null where fewer than six of eight do, or where they scatter so much
 * that the player and the click were not together.
 * @param strokeSeconds as the recording has them, on the same clock as the clicks
 * @param clickSeconds when each click was sent to the output
 * @example delayOfStrokes([1.12, 1.87, 2.61, …], [1, 1.75, 2.5, …]) // { delaySeconds: 0.12, … }
 */
export function delayOfStrokes(
  strokeSeconds: readonly number[],
  clickSeconds: readonly number[],
): StrokeDelay | null {
  const distances = clickSeconds.flatMap((click) =>
    strokeSeconds
      .map((stroke) => stroke - click)
      .filter((delay) => delay >= LEAST_DELAY_SECONDS && delay <= MOST_DELAY_SECONDS),
  );
  let together: readonly number[] = [];
  for (const centre of distances) {
    const near = clickSeconds.flatMap((click) => nearest(strokeSeconds, click + centre) ?? []);
    if (near.length > together.length) together = near.map((off) => off + centre);
  }
  if (together.length < LEAST_STROKES) return null;
  const spreadSeconds = quantile(together, 0.75) - quantile(together, 0.25);
  if (spreadSeconds > MOST_SPREAD_SECONDS) return null;
  return { delaySeconds: median(together)!, spreadSeconds, strokes: together.length };
}

/** How far the stroke nearest to a moment lies behind it, or null where none is near. */
function nearest(strokeSeconds: readonly number[], moment: number): number | null {
  let best: number | null = null;
  for (const stroke of strokeSeconds) {
    const off = stroke - moment;
    if (Math.abs(off) <= TOGETHER_SECONDS && (best === null || Math.abs(off) < Math.abs(best))) best = off;
  }
  return best;
}

function frameEnergies(samples: Float32Array, size: number): readonly number[] {
  const energies: number[] = [];
  let last = 0;
  for (let from = 0; from + size <= samples.length; from += size) {
    let sum = 0;
    for (let i = from; i < from + size; i++) {
      // The difference of neighbours leaves out hum and the slow swing of a microphone's offset.
      sum += (samples[i]! - last) ** 2;
      last = samples[i]!;
    }
    energies.push(sum / size);
  }
  return energies;
}

function meanOf(energies: readonly number[], from: number, to: number): number {
  let sum = 0;
  for (let f = Math.max(0, from); f <= to; f++) sum += energies[f]!;
  return sum / Math.max(1, to - Math.max(0, from) + 1);
}

/** The frame in which the stroke begins: the first of its rise that stands out from what was before. */
function firstRise(energies: readonly number[], frame: number, before: number): number {
  let first = frame;
  while (first > Math.max(0, frame - SHORT_FRAMES) && energies[first - 1]! > RISE * before) first--;
  return first;
}
