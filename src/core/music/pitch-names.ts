/**
 * Names and degrees for every one of the twelve pitch classes, over a chord and in a key.
 * A tone that the chord names is spelled as the chord spells it; for the others the table below is common practice.
 */
import type { Chord, Key } from './chord.ts';
import { SHARP_NAMES, pitchClassOf, plainSpelling, spellDegree, wrapPitchClass } from './spelling.ts';

/** By semitones above the tonic or root: the blue notes are flats, as the blues spells them. */
const SIMPLE_DEGREES = ['1', 'b2', '2', 'b3', '3', '4', 'b5', '5', 'b6', '6', 'b7', '7'] as const;

/** Over a chord with a seventh, what lies above it is counted on: 2, 4 and 6 are 9, 11 and 13. */
const COMPOUND_DEGREES = ['1', 'b9', '9', 'b3', '3', '11', 'b5', '5', 'b13', '13', 'b7', '7'] as const;

/**
 * Degree of a pitch class over a chord: as the chord spells it where it is a chord tone, else by common practice.
 * 2, 4 and 6 count as 9, 11 and 13 over a chord that holds a seventh; over a triad or a 6 chord they stay simple.
 *
 * @example degreeOver(3, parseChord('C7')) // 'b3'
 * @example degreeOver(3, parseChord('C7#9')) // '#9'
 */
export function degreeOver(pitchClass: number, chord: Chord): string {
  const interval = wrapPitchClass(pitchClass - chord.rootPitchClass);
  const tone = chord.tones.find((held) => held.pitchClass === wrapPitchClass(pitchClass));
  if (tone) return tone.degree;
  // Beside a b9 the same sound is the #9: players hear G7b9 and Bb as one altered chord.
  const altered =
    chord.tones.some(({ degree }) => degree === 'b9') && chord.tones.some(({ degree }) => degree === '3');
  if (interval === 3 && altered) return '#9';
  const hasSeventh = chord.tones.some((held) => held.role === 'seventh' && held.degree !== '6');
  return (hasSeventh ? COMPOUND_DEGREES : SIMPLE_DEGREES)[interval] ?? '1';
}

/** Degree of a pitch class in a key, from its tonic and always simple: "1", "b3", "4". */
export function degreeInKey(pitchClass: number, key: Key): string {
  return SIMPLE_DEGREES[wrapPitchClass(pitchClass - key.tonicPitchClass)] ?? '1';
}

/**
 * Name of a pitch class over a chord, in agreement with {@link degreeOver}. Chord tones keep the chord's own
 * spelling, double accidentals too; other tones are written as plainly as they can be.
 */
export function nameOverChord(pitchClass: number, chord: Chord): string {
  const tone = chord.tones.find((held) => held.pitchClass === wrapPitchClass(pitchClass));
  return tone ? tone.name : plainSpelling(spellDegree(chord.root, degreeOver(pitchClass, chord)));
}

/** Name of a pitch class in a key, in agreement with {@link degreeInKey}: over no chord, notes are named so. */
export function nameInKey(pitchClass: number, key: Key): string {
  return plainSpelling(spellDegree(key.tonic, degreeInKey(pitchClass, key)));
}

/**
 * A whole MIDI number as a name with its octave (C4 is 60, A4 is 69). `spelled` is how the pitch class is to be
 * named; the octave belongs to the letter, so that 59 spelled "Cb" is "Cb4". Without it, sharps.
 * Throws when `spelled` is another pitch class.
 */
export function noteName(midi: number, spelled?: string): string {
  const pitchClass = wrapPitchClass(midi);
  if (!Number.isInteger(midi)) throw new RangeError(`a note is named by its whole MIDI number, not ${midi}`);
  const name = spelled ?? SHARP_NAMES[pitchClass] ?? 'C';
  if (pitchClassOf(name) !== pitchClass)
    throw new RangeError(`${name} does not name the MIDI number ${midi}`);
  const accidentals = [...name.slice(1)].reduce((sum, sign) => sum + (sign === '#' ? 1 : -1), 0);
  return `${name}${(midi - accidentals - wrapPitchClass(pitchClass - accidentals)) / 12 - 1}`;
}
