import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseChord, readingHint } from '../../../src/core/music/parse-chord.ts';
import { semitonesOf, wrapPitchClass } from '../../../src/core/music/spelling.ts';

const degrees = (symbol: string) =>
  parseChord(symbol)
    ?.tones.map((tone) => tone.degree)
    .join(' ');
const roles = (symbol: string) =>
  parseChord(symbol)
    ?.tones.map((tone) => tone.role)
    .join(' ');

describe('what players write', () => {
  it.each([
    ['CΔ', '1 3 5 7'],
    ['Cmajor7', '1 3 5 7'],
    ['Cminor7', '1 b3 5 b7'],
    ['C△7', '1 3 5 7'],
    ['C∆9', '1 3 5 7 9'],
    ['CMaj7', '1 3 5 7'],
    ['CMA7', '1 3 5 7'],
    ['Cj7', '1 3 5 7'],
    ['Cmaj', '1 3 5'],
    ['CM', '1 3 5'],
    ['CM7', '1 3 5 7'],
    ['Cm7', '1 b3 5 b7'],
    ['CMI7', '1 b3 5 b7'],
    ['C−7', '1 b3 5 b7'],
    ['Cø', '1 b3 b5 b7'],
    ['CØ7', '1 b3 b5 b7'],
    ['Ch7', '1 b3 b5 b7'],
    ['C°', '1 b3 b5'],
    ['Cº7', '1 b3 b5 bb7'],
    ['Co7', '1 b3 b5 bb7'],
    ['Cdim', '1 b3 b5'],
    ['Calt', '1 3 b7 b9 #9 #11 b13'],
    ['C7alt', '1 3 b7 b9 #9 #11 b13'],
    ['C7(b9,b13)', '1 3 5 b7 b9 b13'],
    ['C7b9b13', '1 3 5 b7 b9 b13'],
    ['C7(b9)(b13)', '1 3 5 b7 b9 b13'],
    ['C7(#9/b13)', '1 3 5 b7 #9 b13'],
    ['C7b9#9', '1 3 5 b7 b9 #9'],
    ['C7-9', '1 3 5 b7 b9'],
    ['C7+9', '1 3 5 b7 #9'],
    ['C7-5', '1 3 b5 b7'],
    ['C7+', '1 3 #5 b7'],
    ['C7b5#5', '1 3 b5 #5 b7'],
    ['C13b9', '1 3 5 b7 b9 13'],
    ['C13#11', '1 3 5 b7 9 #11 13'],
    ['C7(13)', '1 3 5 b7 13'],
    ['C7/9', '1 3 5 b7 9'],
    ['C67', '1 3 5 b7 6'],
    ['Cm7(11)', '1 b3 5 b7 11'],
    ['Cm/maj7', '1 b3 5 7'],
    ['C-Δ', '1 b3 5 7'],
    ['CmM9', '1 b3 5 7 9'],
    ['Cm#7', '1 b3 5 7'],
    ['Co(maj7)', '1 b3 b5 7'],
    ['Co7M7', '1 b3 b5 bb7 7'],
    ['C+maj7', '1 3 #5 7'],
    ['C7sus4(b9)', '1 5 b7 4 b9'],
    ['Csus7', '1 5 b7 4'],
    ['Csus24', '1 5 2 4'],
    ['Cphryg', '1 5 b7 4 b9'],
    ['C4', '1 b3 b7 4'],
    ['C2', '1 3 5 2'],
    ['C5', '1 5'],
    ['C7no5', '1 3 b7'],
    ['C9omit3', '1 5 b7 9'],
    ['C7b5', '1 3 b5 b7'],
    ['Cmaj#11', '1 3 5 7 #11'],
    ['D♭7♯9', '1 3 5 b7 #9'],
    ['B𝄫7', '1 3 5 b7'],
  ])('%s holds %s', (symbol, expected) => {
    expect(degrees(symbol)).toBe(expected);
  });

  it.each([
    ['CΔ9', '1 3 5 7 9'],
    ['C7sus13', '1 5 b7 4 9 13'],
    ['C7sus9', '1 5 b7 4 9'],
    ['C13sus', '1 5 b7 4 9 13'],
    ['C7sus2', '1 5 b7 2'],
    ['Csus2', '1 5 2'],
    ['Csus4add9', '1 5 4 9'],
    ['C+7', '1 3 #5 b7'],
    ['Caug', '1 3 #5'],
    ['Caug7', '1 3 #5 b7'],
    ['C7aug', '1 3 #5 b7'],
    ['Cmaj7+', '1 3 #5 7'],
    ['Calt7', '1 3 b7 b9 #9 #11 b13'],
    ['C(alt)', '1 3 b7 b9 #9 #11 b13'],
    ['Cadd6', '1 3 5 6'],
    ['Cadd4', '1 3 5 4'],
    ['C7add13', '1 3 5 b7 13'],
    ['C7add2', '1 3 5 b7 2'],
    ['Cadd#11', '1 3 5 #11'],
    ['Cmaj6', '1 3 5 6'],
    ['Cmaj13', '1 3 5 7 9 13'],
    ['CM7#11', '1 3 5 7 #11'],
    ['C11', '1 3 5 b7 9 11'],
    ['Cm11', '1 b3 5 b7 9 11'],
    ['Cm13', '1 b3 5 b7 9 13'],
    ['Cm69', '1 b3 5 6 9'],
    ['Cquartal', '1 b3 b7 4'],
    ['C7b13#11b9', '1 3 5 b7 b9 #11 b13'],
    ['C7(b9)(#11)', '1 3 5 b7 b9 #11'],
    ['C7no3no5', '1 b7'],
    [' C7 ', '1 3 5 b7'],
  ])('%s holds %s (common practice, from memory)', (symbol, expected) => {
    expect(degrees(symbol)).toBe(expected);
  });

  it('gives each tone its role', () => {
    expect(roles('C13')).toBe('root third fifth seventh extension extension');
    expect(roles('C6/9')).toBe('root third fifth seventh extension');
    expect(roles('Cdim7')).toBe('root third fifth seventh');
    expect(roles('C7sus')).toBe('root fifth seventh extension');
  });

  it('takes the bass behind the last slash and adds no tone for it', () => {
    expect(parseChord('C7/E')).toMatchObject({ root: 'C', bass: 'E' });
    expect(parseChord('Fx7')).toMatchObject({ root: 'F##', rootPitchClass: 7 });
    expect(parseChord('C6/9/B♭')).toMatchObject({ root: 'C', bass: 'Bb' });
    expect(degrees('C/D')).toBe('1 3 5');
  });

  it('holds a sound once, however often the symbol names it', () => {
    expect(degrees('C7#5b13')).toBe('1 3 #5 b7');
  });
});

describe('what is no chord', () => {
  it.each(Object.getOwnPropertyNames(Object.prototype))(
    'may be a word that every object knows: C%s',
    (word) => {
      expect(parseChord(`C${word}`)).toBeNull();
      expect(readingHint(`C${word}`)).toBeDefined();
    },
  );

  it.each([
    '',
    'H7',
    'c7',
    'bb7',
    'Cx7y',
    'C7(',
    'C7)',
    'C()',
    'C7(b9',
    'C7((b9))',
    'C7(,b9)',
    'C7(b9,)',
    'C7b',
    'C7altx',
    'xC7alt',
    'C7b4',
    'C7b11',
    'C7#6',
    'C5add9',
    'C713',
    'C7/',
    'C7/e',
    'C/E/G',
    'N.C.',
    '%',
  ])('refuses "%s"', (symbol) => {
    expect(parseChord(symbol)).toBeNull();
  });

  it('says what could have been meant', () => {
    expect(readingHint('c7')).toEqual({ kind: 'capital', write: 'C7' });
    expect(readingHint('C7q')).toEqual({ kind: 'beginning', readable: 'C7' });
    expect(readingHint('C7q4z')).toEqual({ kind: 'beginning', readable: 'C7' });
    expect(readingHint('q')).toEqual({ kind: 'none' });
    expect(readingHint('H')).toEqual({ kind: 'german', write: 'B' });
    expect(readingHint('Hm7b5')).toEqual({ kind: 'german', write: 'Bm7b5' });
    expect(readingHint('h7')).toEqual({ kind: 'german', write: 'B7' });
    expect(readingHint('Fis7')).toEqual({ kind: 'german', write: 'F#7' });
    expect(readingHint('Es')).toEqual({ kind: 'german', write: 'Eb' });
    expect(readingHint('E7/H')).toEqual({ kind: 'german', write: 'E7/B' });
    expect(readingHint('Hsus4')).toEqual({ kind: 'german', write: 'Bsus4' });
    expect(readingHint('Hq')).toEqual({ kind: 'none' });
  });

  it('never throws, and each chord that it reads contains its root', () => {
    const pieces = fc.constantFrom(
      ...[
        'm',
        'maj',
        '7',
        '9',
        '13',
        'b',
        '#',
        '5',
        '(',
        ')',
        ',',
        '/',
        'sus',
        'add',
        'no',
        'alt',
        'Δ',
        'ø',
        '°',
        '+',
        '-',
        'x',
        'E',
      ],
    );
    const symbols = fc
      .tuple(fc.constantFrom('C', 'F#', 'Bb', 'Gb', ''), fc.array(pieces, { maxLength: 8 }))
      .map(([root, quality]) => root + quality.join(''));
    fc.assert(
      fc.property(fc.oneof(symbols, fc.string({ unit: 'grapheme', maxLength: 12 })), (symbol) => {
        const chord = parseChord(symbol);
        if (!chord) return;
        expect(chord.tones[0]).toMatchObject({ degree: '1', role: 'root', name: chord.root });
        expect(new Set(chord.tones.map((tone) => tone.pitchClass)).size).toBe(chord.tones.length);
        for (const tone of chord.tones) {
          expect(wrapPitchClass(chord.rootPitchClass + semitonesOf(tone.degree))).toBe(tone.pitchClass);
        }
      }),
      { numRuns: 500 },
    );
  });
});
