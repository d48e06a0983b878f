/** The scales that colour is drawn from, against their names in any scale dictionary ("common practice"). */
import { describe, expect, it } from 'vitest';
import { paletteOver, palettePitchClasses } from '../../../../src/core/grade/assign/scales.ts';
import type { PaletteName } from '../../../../src/core/grade/assign/settings.ts';
import { parseKey } from '../../../../src/core/music/keys.ts';
import { parseChord } from '../../../../src/core/music/parse-chord.ts';
import { chart } from '../line.ts';

const sorted = (classes: ReadonlySet<number>) => [...classes].sort((a, b) => a - b);
const scale = (name: PaletteName, key = 'C', chord: string | null = null) =>
  sorted(palettePitchClasses(name, parseKey(key)!, chord === null ? null : parseChord(chord)));

describe('a palette', () => {
  it('is the scale of its name on the key’s tonic', () => {
    expect(scale('minor pentatonic')).toEqual([0, 3, 5, 7, 10]);
    expect(scale('major pentatonic')).toEqual([0, 2, 4, 7, 9]);
    expect(scale('both pentatonics')).toEqual([0, 2, 3, 4, 5, 7, 9, 10]);
    expect(scale('blues scale')).toEqual([0, 3, 5, 6, 7, 10]);
    expect(scale('key')).toEqual([0, 2, 4, 5, 7, 9, 11]);
    expect(scale('key', 'A minor')).toEqual([0, 2, 4, 5, 7, 9, 11]);
    expect(scale('major pentatonic', 'Bb')).toEqual([0, 2, 5, 7, 10]);
  });

  it('has in a minor key what players add: 2, b6 and 6, but no major third', () => {
    expect(scale('both pentatonics', 'C minor')).toEqual([0, 2, 3, 5, 7, 8, 9, 10]);
  });

  it('has the leading tone over the dominant of a minor key, and over no other chord or key', () => {
    expect(scale('both pentatonics', 'C minor', 'G7')).toContain(11);
    expect(scale('both pentatonics', 'C minor', 'G7sus4')).toContain(11);
    expect(scale('both pentatonics', 'C minor', 'Gm7')).not.toContain(11);
    expect(scale('both pentatonics', 'C minor', 'F7')).not.toContain(11);
    expect(scale('both pentatonics', 'A minor', 'E7')).toContain(8);
    expect(scale('both pentatonics', 'C', 'G7')).not.toContain(11);
    expect(scale('minor pentatonic', 'C minor', 'G7')).not.toContain(11);
  });

  it('is worked out once a chord, in the key where the chord stands', () => {
    const over = paletteOver('minor pentatonic', chart('| C7 | F7 |', { key: 'C' }));
    const chord = parseChord('C7')!;
    expect(sorted(over(chord))).toEqual([0, 3, 5, 7, 10]);
    expect(over(chord)).toBe(over(chord));
  });
});
