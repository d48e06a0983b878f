/**
 * How chords follow each other: how often a chord changes at each beat of the bar, and to which chord. Counted over the
 * built-in forms in all keys, each count begun at a little so that no change is impossible.
 */
import { FORMS } from '../chart/form-data.ts';
import { parseChart } from '../chart/parse-chart.ts';
import { playedBars } from '../chart/play-order.ts';
import type { Chord } from '../music/chord.ts';
import { CHORDS, CHORD_TYPES, NO_CHORD, rootOf, typeOf, TYPES } from './chord-types.ts';

/** A change that no form has, beside one that a form has once. */
const UNSEEN = 0.15;
/** Chances that the chord changes at a beat: the first of the bar, the one that halves it, any other. Near those of the forms. */
const CHANGE_AT_BAR = 0.6;
const CHANGE_AT_HALF = 0.16;
const CHANGE_ELSEWHERE = 0.02;
/** Into and out of a rest. */
const CHANGE_TO_NONE = 0.004;

/** The type of chord that a symbol sounds as, by its third, fifth and seventh; null where none of ours is near. */
export function soundingType(chord: Chord): number | null {
  const steps = new Set(chord.tones.map(({ pitchClass }) => (pitchClass - chord.rootPitchClass + 12) % 12));
  const suffix = steps.has(4)
    ? steps.has(10)
      ? '7'
      : steps.has(11)
        ? 'maj7'
        : ''
    : steps.has(3)
      ? steps.has(6) && !steps.has(7)
        ? steps.has(10)
          ? 'm7b5'
          : 'dim7'
        : steps.has(10)
          ? 'm7'
          : 'm'
      : steps.has(5)
        ? '7sus'
        : null;
  const type = CHORD_TYPES.findIndex((one) => one.suffix === suffix);
  return type < 0 ? null : type;
}

/** Natural logarithms of the chance of each chord after each other one where the chord changes: row by row. */
export function followLogs(): Float64Array {
  const counts = new Float64Array(TYPES * 12 * TYPES).fill(UNSEEN);
  for (const { text } of FORMS) {
    const chart = parseChart(text);
    if (!chart.ok) continue;
    const chords = playedBars(chart.value).flatMap(({ bar }) =>
      bar.chords.flatMap(({ chord }) => (chord === null ? [] : [chord])),
    );
    chords.forEach((chord, i) => {
      const next = chords[(i + 1) % chords.length]!;
      const [from, to] = [soundingType(chord), soundingType(next)];
      const interval = (next.rootPitchClass - chord.rootPitchClass + 12) % 12;
      if (from === null || to === null || (interval === 0 && from === to)) return;
      counts[(from * 12 + interval) * TYPES + to]! += 1;
    });
  }
  const logs = new Float64Array(CHORDS * CHORDS);
  for (let from = 0; from < CHORDS; from++) {
    const chance = (to: number) =>
      from === to
        ? 0
        : counts[(typeOf(from) * 12 + ((rootOf(to) - rootOf(from) + 12) % 12)) * TYPES + typeOf(to)]!;
    let sum = 0;
    for (let to = 0; to < CHORDS; to++) sum += chance(to);
    for (let to = 0; to < CHORDS; to++) logs[from * CHORDS + to] = Math.log(chance(to) / sum);
  }
  return logs;
}

/** How often a chord changes as a beat arrives. @param beatOfBar from 0 */
export function changeChance(beatOfBar: number, beatsPerBar: number): number {
  if (beatOfBar === 0) return CHANGE_AT_BAR;
  return beatsPerBar % 2 === 0 && beatOfBar === beatsPerBar / 2 ? CHANGE_AT_HALF : CHANGE_ELSEWHERE;
}

/** Natural logarithm of the chance of going from one chord to another, or of staying, as a beat arrives. */
export function stepLog(follow: Float64Array, from: number, to: number, change: number): number {
  if (from === NO_CHORD || to === NO_CHORD)
    return from === to
      ? Math.log(1 - CHANGE_TO_NONE)
      : to === NO_CHORD
        ? Math.log(CHANGE_TO_NONE)
        : Math.log(CHANGE_TO_NONE / CHORDS);
  return from === to ? Math.log(1 - change - CHANGE_TO_NONE) : Math.log(change) + follow[from * CHORDS + to]!;
}
