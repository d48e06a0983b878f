/** When two chord symbols name the same chord, so that there is no change between them. */
import type { Chord } from './chord.ts';
import { pitchClassOf } from './spelling.ts';

/**
 * Same root, bass and tones, however they are written: "CΔ" and "Cmaj7", "C#7" and "Db7" are one chord; "C7" and
 * "C7/E" are two. No chord (N.C.) is a chord of its own.
 */
export function sameChord(a: Chord | null, b: Chord | null): boolean {
  if (a === b) return true;
  if (a === null || b === null) return false;
  if (a.rootPitchClass !== b.rootPitchClass || bassOf(a) !== bassOf(b)) return false;
  const tonesOfA = new Set(a.tones.map((tone) => tone.pitchClass));
  return a.tones.length === b.tones.length && b.tones.every((tone) => tonesOfA.has(tone.pitchClass));
}

/** Pitch class of the lowest note: the bass behind the slash, else the root. */
export const bassOf = (chord: Chord): number =>
  chord.bass === null ? chord.rootPitchClass : pitchClassOf(chord.bass);
