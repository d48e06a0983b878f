/** The name of the language, numbers, and the terms of music. */
import { chordRootAscii, joinWith, noteAscii, type NoteName } from '../entries/entry.ts';
import { decimal, percent } from './grammar.ts';

export const terms = {
  /** The language's own name, as its speakers write it. */
  name: 'English',
  /** Its tag of BCP 47, by which the browser writes dates. */
  tag: 'en',

  numbers: {
    /** With so many digits behind the point. */
    decimal: ({ value, digits }: { value: number; digits: number }) => decimal(value, digits),
    /** A share from 0 to 1. */
    percent: ({ share }: { share: number }) => percent(share),
    /** "a, b and c" */
    and: ({ items }: { items: readonly string[] }) => joinWith(items, 'and'),
    /** "a, b or c" */
    or: ({ items }: { items: readonly string[] }) => joinWith(items, 'or'),
  },

  // The terms of music. Renderings use them through core/words/spelling.ts and hand the result to other entries.
  music: {
    /** A note of a line: "F#4", or "F#" where no octave is meant. Signs are set by the screens. */
    note: (name: NoteName) => noteAscii(name),
    /** The letter and accidental that a chord symbol begins with, or the bass behind its slash. */
    chordRoot: (name: NoteName) => chordRootAscii(name),
    key: ({ tonic, mode }: { tonic: string; mode: 'major' | 'minor' }) =>
      mode === 'minor' ? `${tonic} minor` : `${tonic} major`,
    roles: {
      root: 'root',
      third: 'third',
      fifth: 'fifth',
      seventh: 'seventh',
      extension: 'extension',
      colour: 'scale tone',
      blue: 'blue note',
      outside: 'outside',
    },
  },
};
