/** A chord symbol, as players write it, read into spelled tones with their roles. */
import { MOST_SYMBOL } from '../base/limits.ts';
import type { ChordHint } from '../words/entries/entry.ts';
import type { Chord, ChordTone, ToneRole } from './chord.ts';
import { readQuality } from './read-quality.ts';
import { pitchClassOf, semitonesOf, spellDegree, wrapPitchClass } from './spelling.ts';

/** Root, quality, and the bass behind the last slash. Capitals only: "b7" is a degree, never a chord. */
const SYMBOL = /^([A-G](?:bb|b|##|#|x)?)(.*?)(?:\/([A-G](?:bb|b|##|#|x)?))?$/;

/** Other ways to write the signs of the grammar. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/[♭]/g, 'b'],
  [/[♯]/g, '#'],
  [/𝄫/gu, 'bb'],
  [/𝄪/gu, '##'],
  [/[∆△]/g, 'Δ'],
  [/[º˚]/g, '°'],
  [/[Ø∅⌀]/g, 'ø'],
  [/[−–]/g, '-'],
];

/** The written parts of a chord symbol, signs brought to ASCII but for Δ ° ø. */
export interface SymbolParts {
  readonly root: string;
  readonly quality: string;
  readonly bass: string | null;
}

/**
 * Reads a chord symbol. Null when it is none: a wrong or lower-case root, or a quality that can't be read.
 * Tones come spelled by the chord, in the order root, third, fifth, seventh, extensions; a tone that the symbol
 * names twice in sound ("7#5b13") is held once.
 *
 * @example parseChord('Gb7')?.tones.map((tone) => tone.name) // ['Gb', 'Bb', 'Db', 'Fb']
 */
export function parseChord(symbol: string): Chord | null {
  const written = symbol.trim();
  if (written.length > MOST_SYMBOL) return null;
  const parts = splitSymbol(written);
  if (!parts) return null;
  const quality = readQuality(parts.quality);
  if (!quality) return null;
  const rootPitchClass = pitchClassOf(parts.root);
  const tones: ChordTone[] = [];
  const hold = (degree: string, role: ToneRole) => {
    const pitchClass = wrapPitchClass(rootPitchClass + semitonesOf(degree));
    if (tones.some((tone) => tone.pitchClass === pitchClass)) return;
    tones.push({ pitchClass, degree, role, name: spellDegree(parts.root, degree) });
  };
  hold('1', 'root');
  if (quality.third !== null) hold(quality.third, 'third');
  for (const fifth of quality.fifths) hold(fifth, 'fifth');
  if (quality.seventh !== null) hold(quality.seventh, 'seventh');
  for (const extension of quality.extensions) hold(extension, 'extension');
  return { symbol: written, root: parts.root, rootPitchClass, bass: parts.bass, tones };
}

/** Takes a symbol apart without judging its quality; null when it has no root. */
export function splitSymbol(symbol: string): SymbolParts | null {
  let plain = symbol.trim();
  for (const [sign, ascii] of SIGNS) plain = plain.replace(sign, ascii);
  const match = SYMBOL.exec(plain);
  if (!match) return null;
  const [, root = '', quality = '', bass] = match;
  return { root: spelledPlainly(root), quality, bass: bass === undefined ? null : spelledPlainly(bass) };
}

/** "Fx" is another way to write "F##". */
const spelledPlainly = (name: string): string => name.replace('x', '##');

/** A symbol as a sentence shows it: of one that is too long, its beginning. */
export const shownSymbol = (symbol: string): string =>
  symbol.length > MOST_SYMBOL ? `${symbol.slice(0, MOST_SYMBOL)}…` : symbol;

/** German names of notes: "is" raises, "es" lowers, but Es and As; H is the English B (common practice). */
const GERMAN_NOTE = /^([A-H])(is|es|s(?!us))?/;

/** The symbol with English names for German ones; null where it has none, or can't be read with them either. */
function inEnglish(symbol: string): string | null {
  const [first = '', bass] = symbol.split('/');
  const english = (name: string) =>
    name.replace(
      GERMAN_NOTE,
      (_, letter: string, sign: string | undefined) =>
        (letter === 'H' ? 'B' : letter) + (sign === undefined ? '' : sign === 'is' ? '#' : 'b'),
    );
  const written = bass === undefined ? english(first) : `${english(first)}/${english(bass)}`;
  return written !== symbol && parseChord(written) ? written : null;
}

/**
 * What a player could have meant by a symbol that can't be read.
 *
 * @example readingHint('c7') // { kind: 'capital', write: 'C7' }
 */
export function readingHint(symbol: string): ChordHint {
  const raised = symbol.charAt(0).toUpperCase() + symbol.slice(1);
  if (raised !== symbol && parseChord(raised)) return { kind: 'capital', write: raised };
  const english = symbol.length <= MOST_SYMBOL ? inEnglish(raised) : null;
  if (english !== null) return { kind: 'german', write: english };
  for (let length = Math.min(MOST_SYMBOL, symbol.length - 1); length > 0; length--) {
    const start = symbol.slice(0, length);
    if (parseChord(start)) return { kind: 'beginning', readable: start };
  }
  return { kind: 'none' };
}
