/** Names of notes, chords and keys as a language spells them, from the names that the core uses: "Bb" is German "B". */
import type { NoteName } from './entries/entry.ts';
import type { OpenPageWords } from './words.ts';

const NOTE = /^([A-G])(b*|#*)(-?\d+)?$/u;
const CHORD = /^([A-G])(bb|##|b|#)?(.*)$/u;
const BASS = /^(.*)\/([A-G])(bb|##|b|#)?$/u;

function takenApart(letter: string, signs: string, octave: string | undefined): NoteName {
  const alteration = signs.startsWith('b') ? -signs.length : signs.length;
  return { letter, alteration, octave: octave === undefined ? null : Number(octave) };
}

/**
 * A note with or without its octave.
 * @throws RangeError for what is no such name
 * @example spelledNote('Bb4', german) // 'B4'
 */
export function spelledNote(name: string, { music }: OpenPageWords): string {
  const match = NOTE.exec(name);
  if (match === null) throw new RangeError(`"${name}" is no note name, like F# or Bb4`);
  return music.note(takenApart(match[1]!, match[2]!, match[3]));
}

/**
 * A chord symbol. What does not begin with a note (N.C.) stays as it is.
 * @example spelledChord('Bbm7/F', german) // 'Bm7/F'
 */
export function spelledChord(symbol: string, { music }: OpenPageWords): string {
  const match = CHORD.exec(symbol);
  if (match === null) return symbol;
  const [, letter = '', signs = '', rest = ''] = match;
  const bass = BASS.exec(rest);
  const root = music.chordRoot(takenApart(letter, signs, undefined));
  if (bass === null) return `${root}${rest}`;
  return `${root}${bass[1]!}/${music.chordRoot(takenApart(bass[2]!, bass[3] ?? '', undefined))}`;
}

/** @example spelledKey({ tonic: 'Bb', mode: 'major' }, german) // 'B-Dur' */
export const spelledKey = (
  { tonic, mode }: { readonly tonic: string; readonly mode: 'major' | 'minor' },
  words: OpenPageWords,
): string => words.music.key({ tonic: spelledNote(tonic, words), mode });
