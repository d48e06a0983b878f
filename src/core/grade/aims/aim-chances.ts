/** Chances of what takes more than one note: all tones of a set in one stretch, a guide tone that steps on. */
import type { Chord } from '../../music/chord.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { holds, toneMask } from '../assign/tone-sets.ts';

/** The widest move that still is a step. */
const STEP_SEMITONES = 2;

/**
 * Chance that every wanted set of tones is met at least once among notes drawn one by one (inclusion and exclusion
 * over the sets that are missed).
 * @param luck chance that a note drawn in the place of this one is one of the named tones
 */
export function allMetChance(
  wanted: readonly (readonly string[])[],
  group: readonly GradedNote[],
  luck: (names: readonly string[], note: GradedNote) => number,
): number {
  let chance = 0;
  for (let missed = 0; missed < 1 << wanted.length; missed++) {
    const chosen = wanted.filter((_, i) => ((missed >> i) & 1) === 1);
    const allMissed = group.reduce((product, note) => product * (1 - luck(chosen.flat(), note)), 1);
    chance += (chosen.length % 2 === 0 ? 1 : -1) * allMissed;
  }
  return Math.min(1, Math.max(0, chance));
}

/** Chance that two notes drawn one by one are a guide tone of the old chord and one of the new a step away. */
export function guideStepChance(own: readonly number[], from: Chord, to: Chord): number {
  const old = toneMask(from, 'guideTones');
  const next = toneMask(to, 'guideTones');
  let chance = 0;
  for (let a = 0; a < 12; a++) {
    if (!holds(old, a)) continue;
    for (let b = 0; b < 12; b++) {
      const step = Math.min(wrapPitchClass(a - b), wrapPitchClass(b - a));
      if (holds(next, b) && step >= 1 && step <= STEP_SEMITONES) chance += own[a]! * own[b]!;
    }
  }
  return Math.min(1, chance);
}
