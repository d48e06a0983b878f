import { describe, expect, it } from 'vitest';
import { fifthsOf, keyOf, keyOfSignature, keyOn, parseKey, writeKey } from '../../../src/core/music/keys.ts';

/** The circle of fifths (common practice): sharps of the signature, negative for flats; major and minor tonic. */
const CIRCLE: readonly (readonly [fifths: number, major: string, minor: string])[] = [
  [-7, 'Cb', 'Ab'],
  [-6, 'Gb', 'Eb'],
  [-5, 'Db', 'Bb'],
  [-4, 'Ab', 'F'],
  [-3, 'Eb', 'C'],
  [-2, 'Bb', 'G'],
  [-1, 'F', 'D'],
  [0, 'C', 'A'],
  [1, 'G', 'E'],
  [2, 'D', 'B'],
  [3, 'A', 'F#'],
  [4, 'E', 'C#'],
  [5, 'B', 'G#'],
  [6, 'F#', 'D#'],
  [7, 'C#', 'A#'],
];

describe('signatures', () => {
  it.each(CIRCLE)('%i sharps are %s major and %s minor', (fifths, major, minor) => {
    expect(keyOfSignature(fifths, 'major')).toMatchObject({ tonic: major, mode: 'major' });
    expect(keyOfSignature(fifths, 'minor')).toMatchObject({ tonic: minor, mode: 'minor' });
    expect(fifthsOf(major, 'major')).toBe(fifths);
    expect(fifthsOf(minor, 'minor')).toBe(fifths);
  });

  it('carry the pitch class of their tonic', () => {
    expect(keyOfSignature(-3, 'major').tonicPitchClass).toBe(3);
    expect(keyOfSignature(-3, 'minor').tonicPitchClass).toBe(0);
    expect(keyOfSignature(5, 'minor').tonicPitchClass).toBe(8);
  });
});

describe('reading a key', () => {
  it.each([
    ['Bb', 'Bb', 'major'],
    ['  Bb ', 'Bb', 'major'],
    ['eb major', 'Eb', 'major'],
    ['A maj', 'A', 'major'],
    ['E♭', 'Eb', 'major'],
    ['F♯ min', 'F#', 'minor'],
    ['F# minor', 'F#', 'minor'],
    ['Gm', 'G', 'minor'],
    ['g-', 'G', 'minor'],
    // A signature with more than seven accidentals is written by its enharmonic equivalent.
    ['D#', 'Eb', 'major'],
    ['Gb minor', 'F#', 'minor'],
    ['A#m', 'A#', 'minor'],
  ])('"%s" is %s %s', (text, tonic, mode) => {
    expect(parseKey(text)).toMatchObject({ tonic, mode });
  });

  it.each(['', 'H', 'Bbb', 'C dorian', 'C minorish', 'in C'])('refuses "%s"', (text) => {
    expect(parseKey(text)).toBeNull();
  });

  it('reads back what is written', () => {
    for (const [, major, minor] of CIRCLE) {
      for (const key of [keyOf({ tonic: major, mode: 'major' }), keyOf({ tonic: minor, mode: 'minor' })])
        expect(parseKey(writeKey(key))).toEqual(key);
    }
    expect(writeKey(keyOf({ tonic: 'F#', mode: 'minor' }))).toBe('F# minor');
    expect(writeKey(keyOf({ tonic: 'Bb', mode: 'major' }))).toBe('Bb');
  });
});

describe('the key on a pitch class', () => {
  it('has the fewest accidentals, or the tonic that is asked for', () => {
    expect(keyOn(1, 'major').tonic).toBe('Db');
    expect(keyOn(6, 'major', 'F#').tonic).toBe('F#');
    expect(keyOn(8, 'minor').tonic).toBe('G#');
    expect(keyOn(8, 'minor', 'Ab').tonic).toBe('Ab');
  });

  it('throws for what is no pitch class', () => {
    expect(() => keyOn(12, 'major')).toThrow('a pitch class is 0 to 11, not 12');
  });
});
