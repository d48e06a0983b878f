import { describe, expect, it } from 'vitest';
import { parseChord } from '../../../src/core/music/parse-chord.ts';
import { sameChord } from '../../../src/core/music/same-chord.ts';

const chord = (symbol: string) => {
  const read = parseChord(symbol);
  if (read === null) throw new Error(symbol);
  return read;
};

describe('two chord symbols', () => {
  it.each([
    ['CΔ', 'Cmaj7'],
    ['C-7', 'Cmi7'],
    ['C#7', 'Db7'],
    ['C7/E', 'C7/Fb'],
    // Another bass does not make another chord.
    ['C7', 'C7/E'],
  ])('%s and %s are one chord', (a, b) => {
    expect(sameChord(chord(a), chord(b))).toBe(true);
    expect(sameChord(chord(b), chord(a))).toBe(true);
  });

  it.each([
    ['C', 'Cm'],
    ['C', 'C7'],
    ['C7', 'C9'],
    ['C7b9', 'C7#9'],
    ['C7', 'D7'],
    // The same tones and the same bass, but another root.
    ['C6', 'Am7/C'],
  ])('%s and %s are two', (a, b) => {
    expect(sameChord(chord(a), chord(b))).toBe(false);
    expect(sameChord(chord(b), chord(a))).toBe(false);
  });

  it('are compared with no chord too', () => {
    expect(sameChord(null, null)).toBe(true);
    expect(sameChord(chord('C'), null)).toBe(false);
    expect(sameChord(null, chord('C'))).toBe(false);
  });
});
