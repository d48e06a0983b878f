import { describe, expect, it } from 'vitest';
import {
  intervalBetween,
  moveByInterval,
  pitchClassOf,
  plainSpelling,
  semitonesOf,
  spellDegree,
} from '../../../src/core/music/spelling.ts';

describe('degrees (common practice)', () => {
  it.each([
    ['1', 0],
    ['b2', 1],
    ['2', 2],
    ['#2', 3],
    ['bb3', 2],
    ['b3', 3],
    ['3', 4],
    ['b4', 4],
    ['4', 5],
    ['#4', 6],
    ['##4', 7],
    ['b5', 6],
    ['bb5', 5],
    ['5', 7],
    ['#5', 8],
    ['6', 9],
    ['bb7', 9],
    ['b7', 10],
    ['7', 11],
    ['8', 12],
    ['b9', 13],
    ['#9', 15],
    ['11', 17],
    ['#11', 18],
    ['12', 19],
    ['b13', 20],
    ['13', 21],
  ])('%s lies %i semitones above the root', (degree, semitones) => {
    expect(semitonesOf(degree)).toBe(semitones);
  });

  it.each([
    ['C', 'b5', 'Gb'],
    ['C', 'bb7', 'Bbb'],
    ['Gb', 'b7', 'Fb'],
    ['F#', '3', 'A#'],
    ['B', '#5', 'F##'],
    ['Eb', 'bb5', 'Bbbb'],
  ])('on %s the %s is %s', (root, degree, name) => {
    expect(spellDegree(root, degree)).toBe(name);
  });

  it.each(['', '0', '14', 'b', '3b', 'b#3'])('throws for "%s", which is no degree', (degree) => {
    expect(() => semitonesOf(degree)).toThrow(`"${degree}" is no degree`);
  });
});

describe('plain spelling', () => {
  it.each([
    ['Bbb', 'A'],
    ['Ebb', 'D'],
    ['Dbb', 'C'],
    ['Abbb', 'Gb'],
    ['F##', 'G'],
    ['C##', 'D'],
    ['F###', 'G#'],
    ['E#', 'E#'],
    ['Cb', 'Cb'],
    ['Bb', 'Bb'],
    ['A', 'A'],
  ])('%s is %s', (name, plain) => {
    expect(plainSpelling(name)).toBe(plain);
  });

  it('is that of a note that was moved by an interval', () => {
    expect(intervalBetween('C', 'E')).toBe('3M');
    expect(intervalBetween('A', 'C')).toBe('3m');
    expect(moveByInterval('C', '3M')).toBe('E');
    expect(moveByInterval('Gb', '2m')).toBe('G');
  });
});

describe('pitch classes of names', () => {
  it.each([
    ['C', 0],
    ['B#', 0],
    ['Fb', 4],
    ['Cb', 11],
    ['F##', 7],
  ])('%s is %i', (name, pitchClass) => {
    expect(pitchClassOf(name)).toBe(pitchClass);
  });

  it('throws for what is no note name', () => {
    expect(() => pitchClassOf('H')).toThrow('"H" is no note name');
    expect(() => pitchClassOf('')).toThrow(RangeError);
  });
});
