/** Chord symbols against two other libraries and a table of the trade. */
import { createRequire } from 'node:module';
import { ChordType, Interval, Note } from 'tonal';
import { describe, expect, it } from 'vitest';
import type { Chord } from '../../src/core/music/chord.ts';
import { parseChord } from '../../src/core/music/parse-chord.ts';

const { chordParserFactory } = createRequire(import.meta.url)('chord-symbol/lib/chord-symbol.js') as {
  chordParserFactory: () => (symbol: string) => { error?: unknown; normalized?: { notes: string[] } };
};

const read = (symbol: string): Chord => {
  const chord = parseChord(symbol);
  if (!chord) throw new Error(`${symbol} can't be read`);
  return chord;
};
const pitchClasses = (chord: Chord): readonly number[] =>
  chord.tones.map((tone) => tone.pitchClass).sort((a, b) => a - b);
const rising = (pitchClassList: Iterable<number>): readonly number[] =>
  [...new Set(pitchClassList)].sort((a, b) => a - b);

/**
 * Chords as handbooks of jazz harmony spell them. Common practice; written from memory, no book was at hand.
 */
const HANDBOOK: readonly (readonly [symbol: string, degrees: string, notes: string])[] = [
  ['C', '1 3 5', 'C E G'],
  ['Cm', '1 b3 5', 'C Eb G'],
  ['C6', '1 3 5 6', 'C E G A'],
  ['Cm6', '1 b3 5 6', 'C Eb G A'],
  ['Cmaj7', '1 3 5 7', 'C E G B'],
  ['Eb7', '1 3 5 b7', 'Eb G Bb Db'],
  ['Gb7', '1 3 5 b7', 'Gb Bb Db Fb'],
  ['Cb7', '1 3 5 b7', 'Cb Eb Gb Bbb'],
  ['F#m7', '1 b3 5 b7', 'F# A C# E'],
  ['Bm7b5', '1 b3 b5 b7', 'B D F A'],
  ['F#dim7', '1 b3 b5 bb7', 'F# A C Eb'],
  ['Cdim7', '1 b3 b5 bb7', 'C Eb Gb Bbb'],
  ['Cm(maj7)', '1 b3 5 7', 'C Eb G B'],
  ['G+7', '1 3 #5 b7', 'G B D# F'],
  ['E7#9', '1 3 5 b7 #9', 'E G# B D Fx'],
  ['G7b9', '1 3 5 b7 b9', 'G B D F Ab'],
  ['Bb9', '1 3 5 b7 9', 'Bb D F Ab C'],
  ['C7#11', '1 3 5 b7 #11', 'C E G Bb F#'],
  ['C9#11', '1 3 5 b7 9 #11', 'C E G Bb D F#'],
  ['C13', '1 3 5 b7 9 13', 'C E G Bb D A'],
  ['Dm11', '1 b3 5 b7 9 11', 'D F A C E G'],
  ['G7sus4', '1 5 b7 4', 'G D F C'],
  ['G9sus', '1 5 b7 4 9', 'G D F C A'],
  ['Dsus2', '1 5 2', 'D A E'],
  ['C6/9', '1 3 5 6 9', 'C E G A D'],
  ['Cadd9', '1 3 5 9', 'C E G D'],
  ['G7alt', '1 3 b7 b9 #9 #11 b13', 'G B F Ab A# C# Eb'],
];

describe('chords as a handbook spells them', () => {
  it.each(HANDBOOK)('%s is %s', (symbol, degrees, notes) => {
    const chord = read(symbol);
    expect(chord.tones.map((tone) => tone.degree).join(' ')).toBe(degrees);
    expect(chord.tones.map((tone) => tone.name).join(' ')).toBe(notes.replace('Fx', 'F##'));
  });
});

/**
 * Where we read a symbol otherwise than tonal's dictionary, and why. A chord here names the tones that its symbol
 * writes; the dictionary leaves some out that a pianist would not play, and respells others.
 */
const UNLIKE_TONAL: Readonly<Record<string, readonly string[]>> = {
  'b6 and b13 are written beside the fifth, and do not take its place': [
    'M7b6',
    '^7b6',
    '7b13',
    '9b13',
    'mb6M7',
    'mb6b9',
  ],
  'b5 alters the fifth; the dictionary adds a #11 to it': [
    'M6b5',
    '6b5',
    '7b5b13',
    '7b5#9',
    '7#9b5',
    '9b5b13',
    '7b5b9',
    '7b9b5',
    '7b5b9b13',
  ],
  'an eleventh chord keeps its third, as the number stacks thirds': ['11', '11b9'],
  'alt names every altered tone': ['7alt', 'alt7'],
  'add13 adds no ninth': ['M7add13'],
};
const UNLIKE = new Set(Object.values(UNLIKE_TONAL).flat());

describe('every chord type of tonal 6.4', () => {
  // On F#, no quality that starts with b or # can run into the root: "Cb9sus" is a chord on Cb.
  const root = 'F#';
  const aliases = ChordType.all().flatMap((type) =>
    type.aliases.map((alias) => ({ alias, intervals: type.intervals })),
  );
  const tonalPitchClasses = (intervals: readonly string[]) =>
    rising(intervals.map((interval) => (6 + Interval.semitones(interval)) % 12));

  it('is read', () => {
    expect(aliases.length).toBeGreaterThan(150);
    expect(aliases.filter(({ alias }) => !parseChord(root + alias)).map(({ alias }) => alias)).toEqual([]);
  });

  it('has the same tones, but for the readings listed above', () => {
    const unlike = aliases
      .filter(
        ({ alias, intervals }) =>
          JSON.stringify(pitchClasses(read(root + alias))) !== JSON.stringify(tonalPitchClasses(intervals)),
      )
      .map(({ alias }) => alias);
    expect(unlike.sort()).toEqual([...UNLIKE].sort());
  });
});

/** Qualities that both readers know. m13 stands apart below. */
const COMMON_QUALITIES = [
  ...[
    '',
    'm',
    '-',
    'min',
    'dim',
    'aug',
    '+',
    'sus',
    'sus4',
    'sus2',
    '5',
    '6',
    'm6',
    '-6',
    '6/9',
    '69',
    'm69',
  ],
  ...[
    '7',
    'm7',
    '-7',
    'min7',
    'mi7',
    'maj7',
    'M7',
    'ma7',
    'Δ',
    'Δ7',
    'm7b5',
    '-7b5',
    'ø',
    'ø7',
    'o',
    'o7',
    '°7',
    'dim7',
  ],
  ...['mMaj7', 'm(maj7)', '-Δ7', '9', 'm9', 'maj9', 'm11', '13', 'maj13', 'add9', 'madd9', '7sus', '7sus4'],
  ...[
    '9sus',
    '13sus',
    '7b9',
    '7#9',
    '7#11',
    '9#11',
    '13#11',
    '13b9',
    '7#5',
    '+7',
    '7b5',
    '9#5',
    '9b5',
    '7b9#9',
  ],
  ...['7(b9)', '7(#11)', '7#5#9', '7#5b9', '7b9#11', 'maj7#11', 'maj7#5', 'maj7b5', '6/9#11', 'M9'],
];
const ROOTS = ['C', 'C#', 'Db', 'D', 'Eb', 'E', 'F', 'F#', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'];

describe('chord-symbol 4.0', () => {
  const parseOther = chordParserFactory();
  it.each(COMMON_QUALITIES)('agrees on "%s" over every root', (quality) => {
    for (const root of ROOTS) {
      const other = parseOther(root + quality);
      expect(other.error, root + quality).toBeUndefined();
      const theirs = rising((other.normalized?.notes ?? []).map((note) => Note.chroma(note)));
      expect(pitchClasses(read(root + quality)), root + quality).toEqual(theirs);
    }
  });

  it('stacks an eleventh into m13, where tonal and we leave it out as in 13', () => {
    const theirs = rising((parseOther('Cm13').normalized?.notes ?? []).map((note) => Note.chroma(note)));
    expect(theirs.filter((pitchClass) => !pitchClasses(read('Cm13')).includes(pitchClass))).toEqual([5]);
  });
});
