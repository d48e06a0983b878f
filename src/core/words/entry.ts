/** What the entries of every language are made with. */

/** A spelled note taken apart. */
export interface NoteName {
  /** A to G. */
  readonly letter: string;
  /** Semitones: −1 for one flat, 2 for a double sharp. */
  readonly alteration: number;
  /** null where no octave is meant. */
  readonly octave: number | null;
}

const signs = (alteration: number): string => (alteration < 0 ? 'b' : '#').repeat(Math.abs(alteration));

/** "F#4", "Bb": letters and ASCII accidentals, as English and the report have them. */
export const noteAscii = ({ letter, alteration, octave }: NoteName): string =>
  `${letter}${signs(alteration)}${octave ?? ''}`;

/** "F#", "Bb", without an octave. */
export const chordRootAscii = ({ letter, alteration }: NoteName): string => `${letter}${signs(alteration)}`;

/**
 * Items in a row with a word before the last.
 * @example joinWith(['a', 'b', 'c'], 'and') // 'a, b and c'
 */
export function joinWith(items: readonly string[], word: string): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${word} ${items.at(-1)!}`;
}
