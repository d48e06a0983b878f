/** What is said of a recording's beats, and where they stand on the page. */
import { expect, test } from 'vitest';
import { trackOf } from '../../../src/core/beats/track.ts';
import { de } from '../../../src/core/words/de.ts';
import { en } from '../../../src/core/words/en.ts';
import { placeOf, secondsAtPlace } from '../../../src/ui/backing/draw-wave.ts';
import { beatWords, placeWords, tapWords } from '../../../src/ui/backing/beat-sentences.ts';

test('a beat is said by its bar, its place and whether it was set by hand', () => {
  const track = { ...trackOf([0.31, 0.92, 1.5, 62.084]), downbeat: 1 };
  expect(beatWords(track, 0, 2, en)).toBe('1 beat before bar 1, at 0:00.31');
  expect(beatWords(track, 2, 2, en)).toBe('Bar 1, beat 2, at 0:01.50');
  const held = { ...track, marks: track.marks.map((mark, i) => ({ ...mark, pinned: i === 3 })) };
  expect(beatWords(held, 3, 2, en)).toBe('Bar 2, beat 1, at 1:02.08, set by hand');
  expect(beatWords(track, 9, 2, en)).toBe('No beat is chosen');
});

test('places and taps', () => {
  expect(placeWords(125.5)).toBe('2:05.50');
  expect(tapWords(1, null, en)).toBe('1 tap');
  expect(tapWords(6, 127.6, en)).toBe('6 taps, 128 a minute');
  expect(tapWords(6, 127.6, de)).toBe('6 Schläge getippt, 128 in der Minute');
  const sight = { from: 4, to: 12 };
  expect(secondsAtPlace(sight, 800, placeOf(sight, 800, 5.5))).toBeCloseTo(5.5, 9);
});
