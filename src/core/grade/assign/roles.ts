/** What a note is to the chord under it: one role each. */
import type { Chord } from '../../music/chord.ts';
import type { Role } from '../../take/schema.ts';

const MINOR_THIRD = 3;
const MAJOR_THIRD = 4;
const DIMINISHED_FIFTH = 6;

const upFrom = (root: number, pitchClass: number): number => (pitchClass - root + 12) % 12;

/** Whether the chord has a major third as its third; only over such a chord is a b3 blue. */
export const hasMajorThird = (chord: Chord): boolean =>
  chord.tones.some(
    (tone) => tone.role === 'third' && upFrom(chord.rootPitchClass, tone.pitchClass) === MAJOR_THIRD,
  );

/** Whether a chord has a major third and a minor seventh. */
export const isDominantSeventh = (chord: Chord): boolean =>
  ['3', 'b7'].every((degree) => chord.tones.some((tone) => tone.degree === degree));

/** Whether a chord with a major third is altered by a b9: its b3 is the #9 beside it then, no blue note. */
const hasSharpNine = (chord: Chord): boolean =>
  hasMajorThird(chord) && chord.tones.some(({ degree }) => degree === 'b9');

/**
 * Whether the note stands a minor third above the root of a chord that has a major third, does not name that tone
 * (7#9) and is not altered so that it is the #9 (7b9).
 */
export const isFlatThird = (pitchClass: number, chord: Chord): boolean =>
  upFrom(chord.rootPitchClass, pitchClass) === MINOR_THIRD &&
  hasMajorThird(chord) &&
  !hasSharpNine(chord) &&
  !chord.tones.some((tone) => tone.pitchClass === pitchClass);

/** A b3 this much above the tempered one, and below the 3, is where the style wants it: a blue third. */
export const BLUE_THIRD_CENTS = 25;

/** Whether the note is a b3 over a major third that sounds between the two: blue on purpose, no fault. */
export const isBlueThird = (
  { pitchClass, cents }: { readonly pitchClass: number; readonly cents: number },
  chord: Chord,
): boolean => isFlatThird(pitchClass, chord) && cents >= BLUE_THIRD_CENTS;

/**
 * The role of a note over a chord. Asked in this order, so that every note has one and only one:
 * 1. a tone that the symbol names takes the role it has in the chord (the #9 of a 7#9 is an extension, never blue);
 * 2. blue: b3 over a chord with a major third, or b5, both counted from the chord of the moment. It goes before
 *    colour because the key's pentatonics hold the b3 of the I: the style hears a blue note there first;
 * 3. colour: in the palette chosen for the take, or the #9 of a dominant that is altered by a b9;
 * 4. outside.
 * @param palette pitch classes that count as colour
 * @example roleOf(3, parseChord('C7')!, new Set()) // 'blue'
 */
export function roleOf(pitchClass: number, chord: Chord, palette: ReadonlySet<number>): Role {
  const tone = chord.tones.find((candidate) => candidate.pitchClass === pitchClass);
  if (tone !== undefined) return tone.role;
  if (isFlatThird(pitchClass, chord)) return 'blue';
  if (upFrom(chord.rootPitchClass, pitchClass) === DIMINISHED_FIFTH) return 'blue';
  const isSharpNine = upFrom(chord.rootPitchClass, pitchClass) === MINOR_THIRD && hasSharpNine(chord);
  return palette.has(pitchClass) || isSharpNine ? 'colour' : 'outside';
}

/** Whether a role is that of a tone the symbol names. */
export const isChordTone = (role: Role | null): boolean =>
  role !== null && role !== 'colour' && role !== 'blue' && role !== 'outside';
