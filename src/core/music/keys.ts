/** Keys as players name them. */
import type { Key } from './chord.ts';
import { pitchClassOf } from './spelling.ts';

/** Tonics whose signature has seven accidentals at most: the keys that music is written in. */
export const MAJOR_TONICS = [
  'C',
  'Db',
  'D',
  'Eb',
  'E',
  'F',
  'Gb',
  'G',
  'Ab',
  'A',
  'Bb',
  'B',
  'F#',
  'C#',
  'Cb',
];
export const MINOR_TONICS = [
  'C',
  'C#',
  'D',
  'Eb',
  'E',
  'F',
  'F#',
  'G',
  'G#',
  'A',
  'Bb',
  'B',
  'D#',
  'A#',
  'Ab',
];

const KEY = /^([A-Ga-g])(b|#|♭|♯)?\s*(major|maj|minor|min|m|-)?$/;

/** Minor keys that players name though their signature would need a double flat: Db minor stands in Db charts. */
const NAMED_MINOR_TONICS: readonly string[] = ['Db'];

/**
 * Reads a key: "Bb", "F# minor", "Gm", "eb major". Null when it is none. A tonic that would need double
 * accidentals is named as it is written in practice: "D#" comes back as Eb, "Gb minor" as F# minor; only Db minor
 * keeps its name.
 */
export function parseKey(text: string): Key | null {
  const match = KEY.exec(text.trim());
  if (!match) return null;
  const [, letter = '', accidental = '', word = 'major'] = match;
  const tonic = letter.toUpperCase() + accidental.replace('♭', 'b').replace('♯', '#');
  const mode = word === 'major' || word === 'maj' ? 'major' : 'minor';
  const tonicPitchClass = pitchClassOf(tonic);
  return mode === 'minor' && NAMED_MINOR_TONICS.includes(tonic)
    ? { tonic, tonicPitchClass, mode }
    : keyOn(tonicPitchClass, mode, tonic);
}

/** A key from its tonic and mode, as the report has them. Throws on a tonic that is no note name. */
export const keyOf = ({ tonic, mode }: Pick<Key, 'tonic' | 'mode'>): Key => ({
  tonic,
  tonicPitchClass: pitchClassOf(tonic),
  mode,
});

/** The key on a pitch class, spelled with the fewest accidentals, or with `tonic` where that is in use. */
export function keyOn(tonicPitchClass: number, mode: Key['mode'], tonic?: string): Key {
  const tonics = mode === 'major' ? MAJOR_TONICS : MINOR_TONICS;
  const known = tonics.find((name) => name === tonic);
  const spelled = known ?? tonics.find((name) => pitchClassOf(name) === tonicPitchClass);
  if (spelled === undefined) throw new RangeError(`a pitch class is 0 to 11, not ${tonicPitchClass}`);
  return { tonic: spelled, tonicPitchClass, mode };
}

/** "Bb" or "F# minor": what {@link parseKey} reads back. */
export const writeKey = (key: Key): string => (key.mode === 'major' ? key.tonic : `${key.tonic} minor`);

/** The tonic is a fifth up for each sharp; a minor key lies three fifths on. */
export function keyOfSignature(fifths: number, mode: Key['mode']): Key {
  const tonic = (((fifths * 7 + (mode === 'minor' ? 9 : 0)) % 12) + 12) % 12;
  const names = 'FCGDAEB';
  const place = fifths + (mode === 'minor' ? 4 : 1);
  const letter = names.charAt(((place % 7) + 7) % 7);
  const sharps = Math.floor(place / 7);
  const spelled = letter + (sharps < 0 ? 'b' : '#').repeat(Math.abs(sharps));
  return keyOn(tonic, mode, spelled);
}

/** Sharps of the signature, flats below nought. */
export function fifthsOf(tonic: string, mode: 'major' | 'minor'): number {
  const sharps = [...tonic.slice(1)].reduce((sum, sign) => sum + (sign === '#' ? 1 : -1), 0);
  return 'FCGDAEB'.indexOf(tonic.charAt(0)) - 1 + 7 * sharps - (mode === 'minor' ? 3 : 0);
}
