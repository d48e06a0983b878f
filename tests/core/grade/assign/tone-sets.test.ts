/** The tones of chords that count, as any chord dictionary spells them. */
import { describe, expect, it } from 'vitest';
import { namedTones } from '../../../../src/core/grade/assign/tone-names.ts';
import {
  holds,
  maskOf,
  maskReader,
  shareInside,
  toneMask,
  type ToneSet,
} from '../../../../src/core/grade/assign/tone-sets.ts';
import { parseKey } from '../../../../src/core/music/keys.ts';
import { parseChord } from '../../../../src/core/music/parse-chord.ts';

const NAMES = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'];
const named = (mask: number) => NAMES.filter((_, pitchClass) => holds(mask, pitchClass)).join(' ');
const tones = (symbol: string, set: ToneSet) => named(toneMask(parseChord(symbol)!, set));

describe('the tones of a chord that count', () => {
  it('are its third, its guide tones, or all that it names', () => {
    expect(tones('C7', 'thirds')).toBe('E');
    expect(tones('C7', 'guideTones')).toBe('E Bb');
    expect(tones('C7', 'chordTones')).toBe('C E G Bb');
    expect(tones('Dm7', 'guideTones')).toBe('C F');
    expect(tones('C6', 'guideTones')).toBe('E A');
    expect(tones('C9', 'guideTones')).toBe('E Bb');
    expect(tones('C9', 'chordTones')).toBe('C D E G Bb');
  });

  it('have the fourth or the second in the place of a third that is not there', () => {
    expect(tones('C7sus4', 'thirds')).toBe('');
    expect(tones('C7sus4', 'guideTones')).toBe('F Bb');
    expect(tones('Csus2', 'guideTones')).toBe('D');
    expect(tones('C5', 'guideTones')).toBe('');
    // The eleventh of a chord that has its third stands in nobody's place.
    expect(tones('Cm11', 'guideTones')).toBe('Eb Bb');
  });

  it('are remembered for each chord', () => {
    const read = maskReader();
    const chord = parseChord('F7')!;
    const masks = read(chord);
    expect([masks.thirds, masks.guideTones, masks.chordTones].map(named)).toEqual(['A', 'Eb A', 'C Eb F A']);
    expect(read(chord)).toBe(masks);
    expect(read(parseChord('Bb')!).thirds).toBe(maskOf([2]));
  });
});

describe('the share of a player’s notes inside a set', () => {
  const evenly = new Array<number>(12).fill(1 / 12);
  it('adds the shares of its tones and never passes one', () => {
    expect(shareInside(evenly, maskOf([0, 4, 11]))).toBeCloseTo(0.25, 12);
    expect(shareInside(evenly, 0)).toBe(0);
    expect(shareInside([1, ...new Array<number>(10).fill(0), 1e-9], 0xfff)).toBe(1);
  });
});

describe('the tones that an aim names', () => {
  const key = parseKey('F')!;
  // Over C7 in F: palette of D as the one colour.
  const tonesOf = (name: string, symbol = 'C7') =>
    named(namedTones(name, parseChord(symbol)!, key, new Set([2])));

  it('are those of a role', () => {
    expect(tonesOf('third')).toBe('E');
    expect(tonesOf('root')).toBe('C');
    expect(tonesOf('guide tone')).toBe('E Bb');
    expect(tonesOf('chord tone')).toBe('C E G Bb');
    expect(tonesOf('colour')).toBe('D');
    expect(tonesOf('blue')).toBe('Eb Gb');
    expect(tonesOf('outside')).toBe('Db F Ab A B');
    expect(tonesOf('third', 'C7sus4')).toBe('');
  });

  it('are degrees of the chord, or of the key', () => {
    expect(tonesOf('b3')).toBe('Eb');
    expect(tonesOf('9')).toBe('D');
    expect(tonesOf('13')).toBe('A');
    expect(tonesOf('key 3')).toBe('A');
    expect(tonesOf('key b7')).toBe('Eb');
  });
});
