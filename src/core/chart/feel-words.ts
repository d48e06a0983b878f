/** The band's feel behind the words that a chart writes at its head or at a section. */
import type { FeelName } from './feel-names.ts';

/** The first line that matches counts, so the narrower ones stand first. *Common practice.* */
const WORDS: readonly (readonly [RegExp, FeelName])[] = [
  [/\b(?:slow blues|12\/8)\b/, 'slow-blues'],
  [/\bshuffle\b/, 'shuffle'],
  [/\b(?:bossa|samba|latin)/, 'bossa'],
  [/\b(?:funk|sixteenths|16ths)/, 'funk'],
  [/\bballad\b/, 'ballad'],
  [/\brock\b/, 'rock'],
  [/\b(?:straight|even|pop)/, 'straight'],
  [/\b(?:swing|swung|jazz|walking|bebop)/, 'swing'],
];

/**
 * The feel that is meant, or null where none is known by these words.
 * @example feelOf('Medium Bossa Nova') // 'bossa'
 */
export function feelOf(words: string): FeelName | null {
  const plain = words.toLowerCase().replaceAll('-', ' ');
  return WORDS.find(([pattern]) => pattern.test(plain))?.[1] ?? null;
}
