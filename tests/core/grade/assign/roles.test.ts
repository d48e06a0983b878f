import { describe, expect, it } from 'vitest';
import {
  hasMajorThird,
  isBlueThird,
  isChordTone,
  isDominantSeventh,
  isFlatThird,
  roleOf,
} from '../../../../src/core/grade/assign/roles.ts';
import { palettePitchClasses } from '../../../../src/core/grade/assign/scales.ts';
import { parseKey } from '../../../../src/core/music/keys.ts';
import { parseChord } from '../../../../src/core/music/parse-chord.ts';

const key = parseKey('C')!;
const palette = palettePitchClasses('both pentatonics', key);
const rolesOver = (symbol: string) =>
  Array.from({ length: 12 }, (_, pitchClass) => roleOf(pitchClass, parseChord(symbol)!, palette));

describe('roleOf', () => {
  it('gives every pitch class over the I7 one role', () => {
    expect(rolesOver('C7')).toEqual([
      'root',
      'outside',
      'colour', // 9
      'blue', // b3
      'third',
      'colour', // 11
      'blue', // b5
      'fifth',
      'outside',
      'colour', // 13
      'seventh',
      'outside',
    ]);
  });

  it('counts the b3 and b5 from the chord, not from the key', () => {
    expect(roleOf(3, parseChord('F7')!, palette)).toBe('seventh');
    expect(roleOf(8, parseChord('F7')!, palette)).toBe('blue');
    expect(roleOf(11, parseChord('F7')!, palette)).toBe('blue');
  });

  it('asks the symbol first: a #9, a #11 and the b3 of a minor chord are chord tones', () => {
    expect(roleOf(3, parseChord('C7#9')!, palette)).toBe('extension');
    expect(roleOf(6, parseChord('C7#11')!, palette)).toBe('extension');
    expect(roleOf(3, parseChord('Cm7')!, palette)).toBe('third');
    expect(isFlatThird(3, parseChord('C7#9')!)).toBe(false);
    expect(isFlatThird(3, parseChord('C7')!)).toBe(true);
  });

  it('seats the sixth of a 6 chord with the sevenths, and finds no third in a sus chord', () => {
    expect(roleOf(9, parseChord('C6')!, palette)).toBe('seventh');
    expect(rolesOver('C7sus4')).not.toContain('third');
    expect(roleOf(3, parseChord('C7sus4')!, palette)).toBe('colour');
  });

  it('takes colour from the palette that was chosen', () => {
    const minor = palettePitchClasses('minor pentatonic', key);
    expect(roleOf(2, parseChord('C7')!, minor)).toBe('outside');
    expect(roleOf(5, parseChord('C7')!, minor)).toBe('colour');
  });

  it('calls the #9 beside a b9 a colour, whatever the palette, and no other tone', () => {
    const altered = parseChord('C7b9')!;
    expect(roleOf(3, altered, new Set())).toBe('colour');
    expect(roleOf(8, altered, new Set())).toBe('outside');
    expect(isFlatThird(3, altered)).toBe(false);
  });
});

describe('chords', () => {
  const chord = (symbol: string) => parseChord(symbol)!;
  it('have a major third, a minor one or none', () => {
    expect(['C', 'C7', 'Cmaj7', 'Caug'].map((symbol) => hasMajorThird(chord(symbol)))).not.toContain(false);
    expect(['Cm7', 'Cdim7', 'C7sus4', 'C5'].map((symbol) => hasMajorThird(chord(symbol)))).not.toContain(
      true,
    );
  });

  it('are dominant sevenths with a major third and a minor seventh', () => {
    expect(['C7', 'C9', 'C7b9'].map((symbol) => isDominantSeventh(chord(symbol)))).not.toContain(false);
    expect(['Cmaj7', 'Cm7', 'C', 'C7sus4'].map((symbol) => isDominantSeventh(chord(symbol)))).not.toContain(
      true,
    );
  });
});

describe('a blue third', () => {
  it('sounds 25 cents or more above the b3 of a chord with a major third', () => {
    const blue = (cents: number, symbol = 'C7') => isBlueThird({ pitchClass: 3, cents }, parseChord(symbol)!);
    expect([blue(25), blue(24), blue(40, 'Cm7')]).toEqual([true, false, false]);
  });
});

describe('chord tones', () => {
  it('are the tones that the symbol names, and nothing where there is no chord', () => {
    const named = (['root', 'third', 'fifth', 'seventh', 'extension'] as const).map(isChordTone);
    expect(named).not.toContain(false);
    expect([null, 'colour' as const, 'blue' as const, 'outside' as const].map(isChordTone)).not.toContain(
      true,
    );
  });
});
