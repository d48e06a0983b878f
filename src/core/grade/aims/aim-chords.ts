/** The chords that an aim is about. */
import type { Chord, Key } from '../../music/chord.ts';
import { isDominantSeventh } from '../assign/roles.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import type { Aim } from './aim.ts';

/** Semitones above the tonic by the degree's numeral. */
const NUMERALS: Readonly<Record<string, number>> = { I: 0, II: 2, III: 4, IV: 5, V: 7, VI: 9, VII: 11 };

/** "IV7": a degree, and whether only a dominant seventh on it counts. */
const DEGREE = /^([b#]?)([IV]+)(7?)$/;

/** Whether a chord counts for an aim: by the degree of its root in the key, or always. */
export function isOver({ over }: Pick<Aim, 'over'>, chord: Chord, key: Key): boolean {
  return over === undefined || over.some((degree) => standsOn(degree, chord, key));
}

function standsOn(degree: string, chord: Chord, key: Key): boolean {
  const [, sign = '', numeral = 'I', seventh = ''] = DEGREE.exec(degree) ?? [];
  const altered = sign === 'b' ? -1 : sign === '#' ? 1 : 0;
  const root = wrapPitchClass(key.tonicPitchClass + (NUMERALS[numeral] ?? 0) + altered);
  return root === chord.rootPitchClass && (seventh === '' || isDominantSeventh(chord));
}
