/** The tones an aim names, as sets of pitch classes over a chord. */
import type { Chord, Key } from '../../music/chord.ts';
import { semitonesOf, wrapPitchClass } from '../../music/spelling.ts';
import { isChordTone, roleOf } from './roles.ts';
import { maskOf, toneMask } from './tone-sets.ts';

const ALL_PITCH_CLASSES: readonly number[] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11];
const OF_KEY = 'key ';

/**
 * What one name stands for over a chord: a role ("third", "guide tone", "chord tone", "blue"), a degree of the chord
 * ("b3", "9") or a degree of the key ("key 3").
 * @returns a twelve-bit mask; empty where the chord has no such tone
 */
export function namedTones(name: string, chord: Chord, key: Key, palette: ReadonlySet<number>): number {
  if (name.startsWith(OF_KEY)) {
    return maskOf([wrapPitchClass(key.tonicPitchClass + semitonesOf(name.slice(OF_KEY.length)))]);
  }
  if (/\d/.test(name)) return maskOf([wrapPitchClass(chord.rootPitchClass + semitonesOf(name))]);
  if (name === 'guide tone') return toneMask(chord, 'guideTones');
  return maskOf(
    ALL_PITCH_CLASSES.filter((pitchClass) => {
      const role = roleOf(pitchClass, chord, palette);
      if (name === 'chord tone') return isChordTone(role);
      return role === name;
    }),
  );
}
