/** Tones that are no chord tones and no faults ("common practice": the available tensions of a chord). */
import { describe, expect, it } from 'vitest';
import { isColour } from '../../../../src/core/grade/teach/colours.ts';
import { findResolution } from '../../../../src/core/grade/teach/resolution.ts';
import { parseChord } from '../../../../src/core/music/parse-chord.ts';

const colours = (symbol: string) =>
  Array.from({ length: 12 }, (_, pitchClass) => pitchClass).filter((pitchClass) =>
    isColour(pitchClass, parseChord(symbol)!),
  );

describe('colours', () => {
  it('are the ninth and the thirteenth; over a minor chord the eleventh too', () => {
    expect(colours('C7')).toEqual([2, 9]);
    expect(colours('Cm7')).toEqual([2, 5, 9]);
    expect(colours('F7')).toEqual([2, 7]);
    expect(colours('C7sus4')).toEqual([2, 9]);
  });

  it('are none where the chord names another tone of that number', () => {
    expect(colours('C7b9')).toEqual([9]);
    expect(colours('C7#9')).toEqual([9]);
    expect(colours('C7b13')).toEqual([2]);
    expect(colours('C7#5')).toEqual([2]);
  });
});

describe('the tone that resolves', () => {
  const resolution = (pitch: number, symbol: string, roles: Parameters<typeof findResolution>[2] = null) =>
    findResolution(pitch, parseChord(symbol)!, roles);

  it('of two equally near, tells more of the chord: third, seventh, root, fifth', () => {
    expect(resolution(63, 'C9')).toEqual({ midi: 64, role: 'third' }); // Eb: E before D
    expect(resolution(71, 'C7')).toEqual({ midi: 70, role: 'seventh' }); // B: Bb before C
    expect(resolution(66, 'Csus2')).toEqual({ midi: 67, role: 'fifth' }); // F#: G
  });

  it('leads the major seventh of a minor chord up to its root', () => {
    expect(resolution(71, 'Cm7')).toEqual({ midi: 72, role: 'root' });
    expect(resolution(71, 'C7')).toEqual({ midi: 70, role: 'seventh' });
    // Its third is no root, and two half steps away it would be reached by a whole step.
    expect(resolution(71, 'Cm7', ['seventh'])).toBeNull();
  });

  it('may be asked of some roles alone', () => {
    expect(resolution(65, 'C7', ['third'])).toEqual({ midi: 64, role: 'third' });
    expect(resolution(67, 'C7', ['third'])).toBeNull();
    expect(resolution(66, 'C7', ['third'])).toEqual({ midi: 64, role: 'third' });
    expect(resolution(68, 'C7', ['seventh'])).toEqual({ midi: 70, role: 'seventh' });
  });
});
