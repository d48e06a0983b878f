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
        refuse(piece, 'chart.meter', {
          line: piece.line,
          value,
          known: METERS.map((meter) => meter.written),
        });
      return;
    case 'tempo':
      headings.bpm = numberIn(piece, 'tempo', value, SLOWEST_BPM, FASTEST_BPM);
      return;
    case 'swing':
      headings.swing = numberIn(piece, 'swing', value, STRAIGHT_SWING, WIDEST_SWING);
      return;
    case 'pickup':
      headings.pickupBeats = numberIn(piece, 'pickup', value, 0.25, 7);
      return;
    default:
      refuse(piece, 'chart.unknownHeading', { line: piece.line, word, known: WORDS });
  }
}

/** The key that a heading names; refuses what is none. */
export const keyIn = (piece: Piece, value: string): Key =>
  parseKey(value) ?? refuse(piece, 'chart.key', { line: piece.line, value });

function numberIn(
  piece: Piece,
  word: 'tempo' | 'swing' | 'pickup',
  value: string,
  least: number,
  most: number,
): number {
  const number = /^\d+(\.\d+)?$/.test(value) ? Number(value) : Number.NaN;
  if (number >= least && number <= most) return number;
  return refuse(piece, 'chart.number', { line: piece.line, word, value, least, most });
}
