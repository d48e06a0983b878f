/** A chord symbol as one row of text, spelled by the language and with its signs. */
import { spelledChord } from '../../core/words/spelling.ts';
import type { Words } from '../../core/words/words.ts';
import { engraveChord } from '../parts/engrave.ts';

/** @example chordText('Bbm7b5', words) // "B♭m7♭5"; null is "N.C." */
export function chordText(symbol: string | null, words: Words): string {
  if (symbol === null) return 'N.C.';
  const { letter, accidental, stem, raised, bass } = engraveChord(spelledChord(symbol, words));
  return `${letter}${accidental}${stem}${raised}${bass === null ? '' : `/${bass}`}`;
}
