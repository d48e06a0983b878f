/**
 * German note names against the table "Note names in other languages" (deutsch) of the LilyPond Notation Reference,
 * which has no octaves and small letters. Of two names for A double flat it marks "ases" as not the usual one.
 */
import { expect, it } from 'vitest';
import { de } from '../../src/core/words/de.ts';
import { spelledNote } from '../../src/core/words/spelling.ts';

/** From double flat to double sharp. */
const DEUTSCH: Readonly<Record<string, readonly string[]>> = {
  C: ['ceses', 'ces', 'c', 'cis', 'cisis'],
  D: ['deses', 'des', 'd', 'dis', 'disis'],
  E: ['eses', 'es', 'e', 'eis', 'eisis'],
  F: ['feses', 'fes', 'f', 'fis', 'fisis'],
  G: ['geses', 'ges', 'g', 'gis', 'gisis'],
  A: ['asas', 'as', 'a', 'ais', 'aisis'],
  B: ['heses', 'b', 'h', 'his', 'hisis'],
};
const SIGNS = ['bb', 'b', '', '#', '##'];

it.each(Object.entries(DEUTSCH))('%s and its accidentals', (letter, names) => {
  expect(SIGNS.map((sign) => spelledNote(`${letter}${sign}`, de).toLowerCase())).toEqual(names);
});
