/** When two chord symbols name the same chord, so that there is no change between them. */
import type { Chord } from './chord.ts';

/**
 * Same root and tones, however they are written: "CΔ" and "Cmaj7", "C#7" and "Db7" are one chord. The same chord over
 * another bass is no other chord: "C" and "C/E" are one. No chord (N.C.) is a chord of its own.
 */
export function sameChord(a: Chord | null, b: Chord | null): boolean {
  if (a === b) return true;
  if (a === null || b === null) return false;
  if (a.rootPitchClass !== b.rootPitchClass) return false;
  const tonesOfA = new Set(a.tones.map((tone) => tone.pitchClass));
  return a.tones.length === b.tones.length && b.tones.every((tone) => tonesOfA.has(tone.pitchClass));
}
