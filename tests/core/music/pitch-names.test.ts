import { describe, expect, it } from 'vitest';
import { keyOn, parseKey, writeKey } from '../../../src/core/music/keys.ts';
import { parseChord } from '../../../src/core/music/parse-chord.ts';
import {
  degreeInKey,
  degreeOver,
  nameInKey,
  nameOverChord,
  noteName,
} from '../../../src/core/music/pitch-names.ts';
import { sameChord } from '../../../src/core/music/same-chord.ts';

const chord = (symbol: string) => {
  const read = parseChord(symbol);
  if (!read) throw new Error(symbol);
  return read;
};
const TWELVE = [...Array(12).keys()];

describe('degrees over a chord', () => {
  it('counts 2, 4, 6 as 9, 11, 13 over a chord with a seventh', () => {
    expect(TWELVE.map((pc) => degreeOver(pc, chord('C7'))).join(' ')).toBe('1 b9 9 b3 3 11 b5 5 b13 13 b7 7');
  });
  it('keeps them simple over a triad and a 6 chord', () => {
    expect(TWELVE.map((pc) => degreeOver(pc, chord('C6'))).join(' ')).toBe('1 b2 2 b3 3 4 b5 5 b6 6 b7 7');
  });
  it('lets the chord tell b3 from #9 and b5 from #11', () => {
    expect(degreeOver(3, chord('C7#9'))).toBe('#9');
    expect(degreeOver(6, chord('C7#11'))).toBe('#11');
    expect(degreeOver(9, chord('Cdim7'))).toBe('bb7');
    expect(degreeOver(5, chord('C7sus'))).toBe('4');
  });
});

describe('names', () => {
  it('follow the degree over the chord', () => {
    expect(nameOverChord(4, chord('Gb7'))).toBe('Fb');
    expect(nameOverChord(10, chord('G7'))).toBe('Bb');
    expect(nameOverChord(9, chord('Gb7'))).toBe('A');
    expect(nameOverChord(1, chord('F#7'))).toBe('C#');
  });
  it('follow the degree in the key where there is no chord', () => {
    expect(nameInKey(1, keyOn(11, 'major'))).toBe('C#');
    expect(nameInKey(3, keyOn(0, 'major'))).toBe('Eb');
    expect(degreeInKey(3, keyOn(0, 'major'))).toBe('b3');
    expect(degreeInKey(5, keyOn(0, 'minor'))).toBe('4');
  });
  it('carry the octave of their letter', () => {
    expect(noteName(60)).toBe('C4');
    expect(noteName(59, 'Cb')).toBe('Cb4');
    expect(noteName(60, 'B#')).toBe('B#3');
    expect(noteName(66, 'Gb')).toBe('Gb4');
    expect(noteName(21)).toBe('A0');
    expect(() => noteName(60, 'D')).toThrow(RangeError);
  });
});

describe('keys', () => {
  it.each([
    ['Bb', 'Bb', 'major'],
    ['bb', 'Bb', 'major'],
    ['F# minor', 'F#', 'minor'],
    ['Gm', 'G', 'minor'],
    ['E♭ major', 'Eb', 'major'],
    ['D#', 'Eb', 'major'],
    ['Gb minor', 'F#', 'minor'],
  ])('%s is %s %s', (text, tonic, mode) => {
    expect(parseKey(text)).toMatchObject({ tonic, mode });
  });
  it('are written so that they read back', () => {
    for (const mode of ['major', 'minor'] as const) {
      for (const pitchClass of TWELVE) {
        const key = keyOn(pitchClass, mode);
        expect(parseKey(writeKey(key))).toEqual(key);
      }
    }
  });
  it.each(['', 'H', 'C dorian', 'Bbb', '7'])('refuses "%s"', (text) => expect(parseKey(text)).toBeNull());
});

describe('one chord or two', () => {
  it('looks at sound, not at spelling, and not at the bass', () => {
    expect(sameChord(chord('CΔ'), chord('Cmaj7'))).toBe(true);
    expect(sameChord(chord('C#7'), chord('Db7'))).toBe(true);
    expect(sameChord(chord('C7'), chord('C7/E'))).toBe(true);
    expect(sameChord(chord('C6'), chord('Am7'))).toBe(false);
    expect(sameChord(null, chord('C'))).toBe(false);
    expect(sameChord(null, null)).toBe(true);
  });
});
