/** Everything that Landfall says, in German. */
import { chordRootAscii, joinWith, type NoteName } from './entry.ts';
import type { Words } from './words.ts';

const decimal = (value: number, digits: number): string => value.toFixed(digits).replace('.', ',');
const percent = (share: number): string => `${Math.round(share * 100)} %`;

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

export const de: Words = {
  name: 'Deutsch',

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
      colour: 'Farbton',
      blue: 'Blue Note',
      outside: 'außerhalb',
    },
  },

  // Was von einem Bericht gesagt wird.
  report: {
    title: 'Bericht',
  },

  // Die Seite, die die Kommandozeile ausgibt.
  page: {
    title: 'Landfall',
  },

  // Probleme: gleiche Schlüssel und Gruppen wie in en.ts.
  problems: {
    // Ein Satz ohne Schlüssel.
    plain: ({ text }) => text,

    // ── charts ──

    // ── files ──

    // ── aims ──

    // ── room and beats ──

    // ── audio, storage, analysis, state ──

    // ── command line ──
    'cli.language': ({ given, known }) =>
      `--language muss ${joinWith(known, 'oder')} sein, nicht „${given}“.`,
  },

  // Hinweise: gleiche Schlüssel und Gruppen wie in en.ts.
  notices: {
    // Ein Satz ohne Schlüssel.
    plain: ({ text }) => text,

    // ── of the core ──

    // ── of the app ──
  },

  // Der Bildschirm vor einem Take.
  ready: {
    language: 'Sprache',
  },

  // Der Bildschirm während eines Takes.
  playing: {
    title: 'Spielen',
  },

  // Der Bildschirm nach einem Take.
  review: {
    title: 'Rückblick',
  },

  // Der Soundcheck.
  soundCheck: {
    title: 'Soundcheck',
  },

  // Der Bildschirm einer Begleitaufnahme und ihrer Schläge.
  backing: {
    title: 'Begleitung',
  },

  // Der Bildschirm, während ein Take bewertet wird.
  grading: {
    title: 'Bewertung',
  },

  // Der Bildschirm eines Takes, der nicht bewertet werden kann.
  trouble: {
    title: 'Störung',
  },

  // Was mehrere Bildschirme teilen.
  parts: {
    title: 'Landfall',
  },

  // Hilfe und andere Seiten der Kommandozeile.
  cli: {
    noCommand: 'Sag, was zu tun ist.',
  },
};
