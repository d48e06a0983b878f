import { describe, expect, it } from 'vitest';
import { isFlatThird, roleOf } from '../../../../src/core/grade/assign/roles.ts';
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
});
