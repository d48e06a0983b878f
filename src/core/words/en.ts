/**
 * Everything that Landfall says, in English. The other languages have the same entries, and the compiler holds them
 * to it. An entry is a text, or a function of one object of plain values that gives a text. How to add one stands in
 * the folder's README.
 */
import { chordRootAscii, joinWith, noteAscii, type NoteName } from './entry.ts';

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const decimal = (value: number, digits: number): string => value.toFixed(digits);

export const en = {
  /** The language's own name, as its speakers write it. */
  name: 'English',

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
      colour: 'colour',
      blue: 'blue note',
      outside: 'outside',
    },
  },

  // What a report is told with, on the page of the command line and in the review alike.
  report: {
    title: 'Report',
  },

  // The page that the command line prints.
  page: {
    title: 'Landfall',
  },

  // Everything that keeps something from being done: what is wrong, where, and what to do. A key is a code; a fact
  // named `cause` holds another problem. Keys are grouped by the folder or the thing that they speak of.
  problems: {
    // A sentence that has no code yet. It goes when everything is converted.
    plain: ({ text }: { text: string }) => text,

    // ── charts ──

    // ── files ──

    // ── aims ──

    // ── room and beats ──

    // ── audio, storage, analysis, state ──

    // ── command line ──
    'cli.language': ({ given, known }: { given: string; known: readonly string[] }) =>
      `--language must be ${joinWith(known, 'or')}, not "${given}".`,
  },

  // What was odd and was mended, or is good to know; nothing failed. Codes as in `problems`.
  notices: {
    // A sentence that has no code yet. It goes when everything is converted.
    plain: ({ text }: { text: string }) => text,

    // ── of the core ──

    // ── of the app ──
  },

  // The screen before a take.
  ready: {
    language: 'Language',
  },

  // The screen during a take.
  playing: {
    title: 'Playing',
  },

  // The screen after a take.
  review: {
    title: 'Review',
  },

  // The sound check.
  soundCheck: {
    title: 'Sound check',
  },

  // The screen of a backing recording and its beats.
  backing: {
    title: 'Backing',
  },

  // The screen while a take is graded.
  grading: {
    title: 'Grading',
  },

  // The screen of a take that can't be graded.
  trouble: {
    title: 'Trouble',
  },

  // What several screens share.
  parts: {
    title: 'Landfall',
  },

  // Help and the other pages of the command line.
  cli: {
    noCommand: 'Say what to do.',
  },
};
