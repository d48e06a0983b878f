/** Keys, titles, landings and chords as both languages say them; German note names as in tests/core/words/spelling.test.ts. */
import { expect, it } from 'vitest';
import { readingOf } from '../../../src/core/music/reading.ts';
import { instrumentOf } from '../../../src/core/music/instruments.ts';
import { de } from '../../../src/core/words/de.ts';
import { en } from '../../../src/core/words/en.ts';
import { spokenChord } from '../../../src/ui/parts/engrave.ts';
import { keyWords, noteWords, titleAsRead } from '../../../src/ui/parts/sentences.ts';

const concert = readingOf(null, 'concert');

it('spells notes and keys', () => {
  expect([noteWords('Bb4', en), noteWords('Bb4', de)]).toEqual(['B♭4', 'B4']);
  expect([noteWords('B', en), noteWords('F#', de)]).toEqual(['B', 'Fis']);
  expect([keyWords('F#', en), keyWords('F#', de)]).toEqual(['F♯', 'Fis-Dur']);
  expect([keyWords('Bb minor', en), keyWords('Bb minor', de)]).toEqual(['B♭ minor', 'b-Moll']);
});

it('reads the title of a take in its language, for the player’s instrument', () => {
  expect(titleAsRead('12-bar blues in A', concert, en)).toBe('12-bar blues in A');
  expect(titleAsRead('12-bar blues in Bb', concert, de)).toBe('Blues mit 12 Takten in B-Dur');
  const tenor = readingOf(instrumentOf('tenor-sax'), 'written');
  expect(titleAsRead('12-bar blues in A', tenor, en)).toBe('12-bar blues in B');
  expect(titleAsRead('Harbour lights', concert, de)).toBe('Harbour lights');
});

it('says chords aloud', () => {
  expect(spokenChord('C#m7b5/E', en)).toBe('C sharp m7 flat 5 over E');
  expect(spokenChord('Bb7/D', de)).toBe('B 7 über D');
  expect(spokenChord('F#m7b5', de)).toBe('Fis m7 b 5');
});
