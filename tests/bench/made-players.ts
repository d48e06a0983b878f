/**
 * Players whose skill is known because they were made: they wander, they repeat a riff, or they land on thirds. The random
 * numbers are Mulberry32 (public domain, T. Ettinger), seeded: the same seed plays the same line.
 */
import { parseChart } from '../../src/core/chart/parse-chart.ts';
import { timelineFromTempo } from '../../src/core/chart/build-timeline.ts';
import { wrapPitchClass } from '../../src/core/music/spelling.ts';
import type { Timeline } from '../../src/core/chart/timeline.ts';
import type { HeardNote } from '../../src/core/take/note.ts';
import type { Played } from '../core/grade/line.ts';

export const MINOR_PENTATONIC = [0, 3, 5, 7, 10];
export const MAJOR_PENTATONIC = [0, 2, 4, 7, 9];
export const MIXOLYDIAN = [0, 2, 4, 5, 7, 9, 10];
export const CHROMATIC = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11];

export type Random = () => number;

export function mulberry32(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A number of the standard normal distribution (G. E. P. Box and M. E. Muller, 1958). */
export const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const pick = <T>(items: readonly T[], random: Random): T => items[Math.floor(random() * items.length)]!;

/** Eighths with rests over two octaves of a scale. */
export function wanderer(seed: number, scale: readonly number[], beats: number): readonly Played[] {
  const random = mulberry32(seed);
  const played: Played[] = [];
  for (let beat = 0; beat < beats; beat += 0.5) {
    if (random() < 0.25) continue;
    played.push([beat, random() < 0.3 ? 0.9 : 0.5, 60 + pick(scale, random) + (random() < 0.5 ? 12 : 0)]);
  }
  return played;
}

/** A riff of so many bars, drawn once and played again and again without regard to the chords. */
export function riff(
  seed: number,
  scale: readonly number[],
  riffBars: number,
  bars: number,
  beatsPerBar = 4,
): readonly Played[] {
  const random = mulberry32(seed);
  const once: Played[] = [];
  for (let beat = 0; beat < riffBars * beatsPerBar; beat += 0.5) {
    if (random() < 0.35) continue;
    once.push([beat, random() < 0.3 ? 0.9 : 0.45, 60 + pick(scale, random)]);
  }
  return Array.from({ length: Math.ceil(bars / riffBars) }, (_, time) =>
    once.map(([beat, beats, midi]): Played => [beat + time * riffBars * beatsPerBar, beats, midi]),
  )
    .flat()
    .filter(([beat]) => beat < bars * beatsPerBar);
}

/**
 * A player who lands on the third of a change with a likelihood, and wanders over a scale else.
 * @param timeline the chart; its changes are those of one round, gone through again and again
 */
export function thirdPlayer(
  seed: number,
  timeline: Timeline,
  choruses: number,
  likelihood: number,
  scale: readonly number[] = MIXOLYDIAN,
): readonly Played[] {
  const random = mulberry32(seed);
  const played: Played[] = [];
  const beats = choruses * timeline.roundBeats;
  let change = timeline.nextChange(-1);
  for (let beat = 0; beat < beats; beat += 0.5) {
    const isChange = change !== null && beat >= change.startBeat - 1e-6;
    const third = isChange ? change!.chord?.tones.find((tone) => tone.role === 'third') : undefined;
    if (isChange) change = timeline.nextChange(beat);
    if (third !== undefined && random() < likelihood) {
      played.push([beat, 0.5, 60 + wrapPitchClass(third.pitchClass)]);
      continue;
    }
    if (!isChange && random() < 0.3) continue;
    played.push([beat, 0.45, 60 + pick(scale, random)]);
  }
  return played;
}

/** The same notes with each onset and end moved by a normal number of seconds. */
export function jittered(notes: readonly HeardNote[], spreadSeconds: number, seed: number, aheadSeconds = 0) {
  const random = mulberry32(seed);
  return notes.map((note) => {
    const onsetSeconds = note.onsetSeconds - aheadSeconds + spreadSeconds * normal(random);
    const offsetSeconds = note.offsetSeconds - aheadSeconds + spreadSeconds * normal(random);
    return { ...note, onsetSeconds, offsetSeconds: Math.max(onsetSeconds + 0.02, offsetSeconds) };
  });
}

/** A chart at 120 beats a minute unless said otherwise. */
export function chartTimeline(text: string, bpm = 120, swing = 0.5): Timeline {
  const chart = parseChart(text);
  if (!chart.ok) throw new Error('the chart can’t be read');
  return timelineFromTempo(chart.value, { bpm, swing });
}
