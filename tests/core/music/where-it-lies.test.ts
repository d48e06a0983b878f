import { describe, expect, it } from 'vitest';
import {
  INSTRUMENTS,
  instrumentOf,
  withCapo,
  writtenMidi,
  type Instrument,
} from '../../../src/core/music/instruments.ts';
import { noteName } from '../../../src/core/music/pitch-names.ts';
import { nearestPosition, positionsOf } from '../../../src/core/music/where-it-lies.ts';

const instrument = (id: string): Instrument => {
  const found = instrumentOf(id);
  if (!found) throw new Error(id);
  return found;
};
const open = (id: string) =>
  instrument(id)
    .neck?.openStrings.map((midi) => noteName(midi))
    .join(' ');

describe('tunings (common practice)', () => {
  it.each([
    ['guitar', 'E2 A2 D3 G3 B3 E4'],
    ['guitar-drop-d', 'D2 A2 D3 G3 B3 E4'],
    ['guitar-half-down', 'D#2 G#2 C#3 F#3 A#3 D#4'],
    ['guitar-open-g', 'D2 G2 D3 G3 B3 D4'],
    ['guitar-dadgad', 'D2 A2 D3 G3 A3 D4'],
    ['guitar-7', 'B1 E2 A2 D3 G3 B3 E4'],
    ['guitar-8', 'F#1 B1 E2 A2 D3 G3 B3 E4'],
    ['bass', 'E1 A1 D2 G2'],
    ['bass-5', 'B0 E1 A1 D2 G2'],
  ])('%s is %s', (id, strings) => expect(open(id)).toBe(strings));

  it('has one id each', () => {
    expect(new Set(INSTRUMENTS.map(({ id }) => id)).size).toBe(INSTRUMENTS.length);
  });
});

describe('where a pitch lies', () => {
  const guitar = instrument('guitar');
  it('finds the frets that players know (common practice)', () => {
    expect(positionsOf(48, guitar)).toContainEqual({ string: 5, fret: 3 });
    expect(positionsOf(67, guitar)).toContainEqual({ string: 2, fret: 8 });
    expect(positionsOf(64, guitar)[0]).toEqual({ string: 1, fret: 0 });
  });
  it('finds every place and no other', () => {
    for (let midi = 30; midi < 100; midi++) {
      for (const { string, fret } of positionsOf(midi, guitar)) {
        expect((guitar.neck?.openStrings[6 - string] ?? 0) + fret).toBe(midi);
      }
    }
    expect(positionsOf(39, guitar)).toEqual([]);
    expect(positionsOf(87, guitar)).toEqual([]);
    expect(positionsOf(64, guitar)).toHaveLength(5);
  });
  it('stops at a capo', () => {
    const high = withCapo(guitar, 3);
    expect(positionsOf(43, high)).toEqual([{ string: 6, fret: 3 }]);
    expect(positionsOf(42, high)).toEqual([]);
    expect(high.lowestMidi).toBe(43);
    expect(withCapo(guitar, 0)).toEqual(guitar);
    expect(withCapo(guitar, 21).neck?.capo).toBe(21);
  });
  it.each([22, -1, 1.5])('refuses a capo on fret %f', (fret) => {
    expect(() => withCapo(guitar, fret)).toThrow(`a capo lies on fret 1 to 21, or 0 for none, not ${fret}`);
  });
  it('refuses a capo where there are no frets', () => {
    expect(() => withCapo(instrument('trumpet'), 1)).toThrow('B♭ trumpet has no frets for a capo');
  });
  it('is nowhere on an instrument without a neck, and on the last fret too', () => {
    expect(positionsOf(64, instrument('flute'))).toEqual([]);
    expect(positionsOf(86, guitar)).toEqual([{ string: 1, fret: 22 }]);
  });
  it('takes the place nearest to the hand', () => {
    expect(nearestPosition(64, guitar, { string: 2, fret: 7 })).toEqual({ string: 2, fret: 5 });
    expect(nearestPosition(64, guitar, { string: 4, fret: 12 })).toEqual({ string: 4, fret: 14 });
    // The open string and the fifth fret are equally far from here.
    expect(nearestPosition(64, guitar, { string: 1, fret: 3 })).toEqual({ string: 1, fret: 0 });
    expect(nearestPosition(20, guitar, { string: 2, fret: 7 })).toBeNull();
  });
});

describe('written and sounding (common practice)', () => {
  it.each([
    ['guitar', 'C4', 72],
    ['trumpet', 'C4', 62],
    ['tenor-sax', 'C4', 74],
    ['alto-sax', 'C4', 69],
    ['baritone-sax', 'C4', 81],
    ['violin', 'C4', 60],
  ])('a %s reads %s sounding as key %i', (id, _name, written) => {
    expect(writtenMidi(60, instrument(id))).toBe(written);
  });
});
