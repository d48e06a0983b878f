/** The name of the language, numbers, and the terms of music. */
import { chordRootAscii, joinWith, type NoteName } from '../entries/entry.ts';
import { decimal, percent } from './grammar.ts';
import type { terms as english } from '../en/terms.ts';
import type { Translated } from '../entries/translated.ts';

/**
 * German note names: H for B, B for B flat, -is for a sharp, -es for a flat, but As and Es.
 * The names are those of the LilyPond Notation Reference, "Note names in other languages" (deutsch).
 */
function noteName({ letter, alteration, octave }: NoteName): string {
  const base = letter === 'B' ? 'H' : letter;
  const sharps = 'is'.repeat(Math.max(0, alteration));
  const name = alteration < 0 ? flatName(base, -alteration) : `${base}${sharps}`;
  return `${name}${octave ?? ''}`;
}

function flatName(base: string, flats: number): string {
  if (base === 'H' && flats === 1) return 'B';
  if (base === 'A') return `As${'as'.repeat(flats - 1)}`;
  return base === 'E' ? `Es${'es'.repeat(flats - 1)}` : `${base}${'es'.repeat(flats)}`;
}

/** In a chord symbol only B and B flat have other names; F# and Eb stay, as German lead sheets have them. */
function chordRoot(name: NoteName): string {
  if (name.letter !== 'B') return chordRootAscii(name);
  return name.alteration === -1 ? 'B' : chordRootAscii({ ...name, letter: 'H' });
}

export const terms: Translated<typeof english> = {
  name: 'Deutsch',
  tag: 'de',

  numbers: {
    decimal: ({ value, digits }) => decimal(value, digits),
    percent: ({ share }) => percent(share),
    and: ({ items }) => joinWith(items, 'und'),
    or: ({ items }) => joinWith(items, 'oder'),
  },

  music: {
    note: noteName,
    chordRoot,
    key: ({ tonic, mode }) =>
      mode === 'minor' ? `${tonic.charAt(0).toLowerCase()}${tonic.slice(1)}-Moll` : `${tonic}-Dur`,
    roles: {
      root: 'Grundton',
      third: 'Terz',
      fifth: 'Quinte',
      seventh: 'Septime',
      extension: 'Erweiterung',
      colour: 'Skalenton',
      blue: 'Blue Note',
      outside: 'außerhalb',
    },
  },
};
