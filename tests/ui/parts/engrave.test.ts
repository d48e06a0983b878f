import { describe, expect, it } from 'vitest';
import { en } from '../../../src/core/words/en.ts';
import {
  chordWidth,
  engraveChord,
  signsInText,
  speakSigns,
  spokenChord,
  withSigns,
} from '../../../src/ui/parts/engrave.ts';

describe('a chord symbol is set with its root large, its quality raised', () => {
  it.each([
    ['A7', 'A', '', '', '7', null],
    ['Bbmaj7', 'B', '♭', '', 'maj7', null],
    ['F#m7b5', 'F', '♯', 'm', '7♭5', null],
    ['C-7', 'C', '', '−', '7', null],
    ['Bb-7', 'B', '♭', '−', '7', null],
    ['Do7', 'D', '', '', '°7', null],
    ['Bø7', 'B', '', '', 'ø7', null],
    ['Eb7#9', 'E', '♭', '', '7♯9', null],
    ['D7/F#', 'D', '', '', '7', 'F♯'],
    ['G6/9', 'G', '', '', '6/9', null],
    ['Dbm(maj7)', 'D', '♭', 'm', '(maj7)', null],
    ['Cmin7', 'C', '', 'min', '7', null],
    ['Cmaj9', 'C', '', '', 'maj9', null],
    ['E7alt', 'E', '', '', '7alt', null],
  ])('%s', (symbol, letter, accidental, stem, raised, bass) => {
    expect(engraveChord(symbol)).toEqual({ letter, accidental, stem, raised, bass });
  });

  it('leaves what is no chord whole', () => {
    expect(engraveChord('N.C.').letter).toBe('N.C.');
  });

  it('guesses a longer symbol to be wider', () => {
    expect(chordWidth('Bbmaj7')).toBeGreaterThan(chordWidth('B7'));
    expect(chordWidth('B')).toBeGreaterThan(0.5);
  });
});

describe('signs', () => {
  it.each([
    ['Bb', 'B♭'],
    ['b7', '♭7'],
    ['#11', '♯11'],
    ['F##', 'F𝄪'],
    ['Bb4', 'B♭4'],
    ['bb7', '♭♭7'],
    ['F#m7b5', 'F♯m7♭5'],
  ])('%s becomes %s', (plain, signed) => expect(withSigns(plain)).toBe(signed));

  it('are put into sentences without touching words', () => {
    expect(signsInText('Bar 3: over Bb7 the b3 was left; play a D, not Db.')).toBe(
      'Bar 3: over B♭7 the ♭3 was left; play a D, not D♭.',
    );
    expect(signsInText('A bar in A, beat by beat, Abbey and bb')).toBe(
      'A bar in A, beat by beat, Abbey and bb',
    );
    expect(signsInText('12-bar blues in Bb')).toBe('12-bar blues in B♭');
    expect(signsInText('minor blues in F# minor')).toBe('minor blues in F♯ minor');
  });

  it('are spoken', () => {
    expect(speakSigns('b7', en)).toBe('flat 7');
    expect(spokenChord('C#m7b5/E', en)).toBe('C sharp m7 flat 5 over E');
    expect(spokenChord('C-7', en)).toBe('C minor 7');
  });
});
