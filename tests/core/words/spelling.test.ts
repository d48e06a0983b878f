import { describe, expect, it } from 'vitest';
import { de } from '../../../src/core/words/de.ts';
import { en } from '../../../src/core/words/en.ts';
import { spelledChord, spelledKey, spelledNote } from '../../../src/core/words/spelling.ts';

describe('spelledNote', () => {
  it('keeps the letters of English', () => {
    for (const name of ['C', 'F#4', 'Bb-1', 'Ebb3', 'F##']) expect(spelledNote(name, en)).toBe(name);
  });

  it('throws on what is no note', () => {
    expect(() => spelledNote('H4', en)).toThrow(RangeError);
    expect(() => spelledNote('', de)).toThrow(RangeError);
  });

  it('keeps the octave in German', () => {
    expect(spelledNote('B3', de)).toBe('H3');
    expect(spelledNote('Bb3', de)).toBe('B3');
    expect(spelledNote('F#-1', de)).toBe('Fis-1');
  });
});

describe('spelledChord', () => {
  // \germanChords of the LilyPond Notation Reference: B is H, B flat is B, other roots keep letter and sign.
  it.each([
    ['B7', 'H7'],
    ['Bb7', 'B7'],
    ['F#m7b5', 'F#m7b5'],
    ['Ebmaj7/Bb', 'Ebmaj7/B'],
    ['G7/B', 'G7/H'],
    ['N.C.', 'N.C.'],
  ])('writes %s as %s in German', (symbol, german) => {
    expect(spelledChord(symbol, de)).toBe(german);
    expect(spelledChord(symbol, en)).toBe(symbol);
  });

  it('takes a slash inside a quality for what it is', () => {
    expect(spelledChord('C6/9', de)).toBe('C6/9');
  });
});

describe('spelledKey', () => {
  it('names the mode', () => {
    expect(spelledKey({ tonic: 'F#', mode: 'minor' }, en)).toBe('F# minor');
    expect(spelledKey({ tonic: 'F#', mode: 'minor' }, de)).toBe('fis-Moll');
    expect(spelledKey({ tonic: 'Bb', mode: 'major' }, de)).toBe('B-Dur');
  });
});
