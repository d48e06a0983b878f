/** Heading lines of a chart: "key: Bb", "meter: 12/8", "swing: 0.62". */
import type { Key } from '../music/chord.ts';
import { parseKey } from '../music/keys.ts';
import {
  FASTEST_BPM,
  METERS,
  SLOWEST_BPM,
  STRAIGHT_SWING,
  WIDEST_SWING,
  meterOf,
  type Meter,
} from './chart.ts';
import { refuse, type Piece } from './chart-problem.ts';

/** The values of the headings so far. */
export interface Headings {
  title: string | null;
  key: Key | null;
  meter: Meter;
  feel: string | null;
  bpm: number | null;
  swing: number | null;
  pickupBeats: number;
}

const WORDS = ['title', 'key', 'meter', 'feel', 'tempo', 'swing', 'pickup'] as const;
const HEADING = /^\s*([A-Za-z][A-Za-z ]*?)\s*:\s*(.*?)\s*$/;

/** A line or part of a line as a heading word and its value, or null; the word need not be a known one. */
export function headingOf(text: string): { readonly word: string; readonly value: string } | null {
  const match = HEADING.exec(text);
  if (!match) return null;
  return { word: (match[1] ?? '').toLowerCase(), value: match[2] ?? '' };
}

export const isHeadingWord = (word: string): boolean => (WORDS as readonly string[]).includes(word);

/** Reads a heading; refuses a value that is not allowed, with the allowed ones. */
export function readHeading(piece: Piece, word: string, value: string, headings: Headings): void {
  switch (word) {
    case 'title':
      headings.title = value;
      return;
    case 'feel':
      headings.feel = value;
      return;
    case 'key':
      headings.key = keyIn(piece, value);
      return;
    case 'meter':
      headings.meter =
        meterOf(value) ??
        refuse(
          piece,
          `Line ${piece.line}: “${value}” is no meter that can be played; write one of ${METERS.map((meter) => meter.written).join(', ')}.`,
        );
      return;
    case 'tempo':
      headings.bpm = numberIn(piece, word, value, SLOWEST_BPM, FASTEST_BPM, 'beats a minute');
      return;
    case 'swing':
      headings.swing = numberIn(
        piece,
        word,
        value,
        STRAIGHT_SWING,
        WIDEST_SWING,
        'of the beat for its first eighth',
      );
      return;
    case 'pickup':
      headings.pickupBeats = numberIn(piece, word, value, 0.25, 7, 'beats before the first downbeat');
      return;
    default:
      refuse(piece, `Line ${piece.line}: “${word}” is no heading of a chart; there are ${WORDS.join(', ')}.`);
  }
}

/** The key that a heading names; refuses what is none. */
export const keyIn = (piece: Piece, value: string): Key =>
  parseKey(value) ??
  refuse(
    piece,
    `Line ${piece.line}: “${value}” is no key; write a tonic and, for minor, the word: Bb, F# minor.`,
  );

function numberIn(
  piece: Piece,
  word: string,
  value: string,
  least: number,
  most: number,
  unit: string,
): number {
  const number = /^\d+(\.\d+)?$/.test(value) ? Number(value) : Number.NaN;
  if (number >= least && number <= most) return number;
  return refuse(
    piece,
    `Line ${piece.line}: ${word} “${value}” is out of range; write a number from ${least} to ${most} (${unit}).`,
  );
}
