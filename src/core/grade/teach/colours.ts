/** Tones that are no chord tones and no faults: the ladder itself asks for them. *Common practice.* */
import type { Chord } from '../../music/chord.ts';
import { wrapPitchClass } from '../../music/spelling.ts';

const NINTH = 2;
const MINOR_THIRD = 3;
const ELEVENTH = 5;
const THIRTEENTH = 9;

/**
 * The natural ninth, the sixth or thirteenth, and over a minor chord the natural eleventh; not where the chord names
 * another tone of that number (a natural ninth over a 7b9).
 */
export function isColour(pitchClass: number, chord: Chord): boolean {
  const up = wrapPitchClass(pitchClass - chord.rootPitchClass);
  const names = (...degrees: readonly string[]) => chord.tones.some(({ degree }) => degrees.includes(degree));
  if (up === NINTH) return !names('b9', '#9');
  if (up === THIRTEENTH) return !names('b13', '#5');
  const isMinor = chord.tones.some(
    ({ role, pitchClass: tone }) =>
      role === 'third' && wrapPitchClass(tone - chord.rootPitchClass) === MINOR_THIRD,
  );
  return up === ELEVENTH && isMinor;
}
