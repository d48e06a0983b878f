/**
 * Rhythms as short text, for tests: "4. 8 | 2 r2". A number is a note value, with a dot; r a rest; _ tied from the note
 * before; ~ a grace note before it; 3( ) a group of three in the time of two.
 */
import { steadyBeatMap } from '../../../src/core/chart/beat-maps.ts';
import { quantise, type LineNote, type Time } from '../../../src/core/notation/quantise.ts';
import type { Measure, ValueName, Written } from '../../../src/core/notation/score.ts';

const SHORT: Readonly<Record<ValueName, string>> = {
  whole: '1',
  half: '2',
  quarter: '4',
  eighth: '8',
  '16th': '16',
  '32nd': '32',
  '64th': '64',
};

const signText = ({ graces, tuplet, tiedFrom, note, value, dotted }: Written): string =>
  [
    tuplet?.starts ? `${tuplet.actual}(` : '',
    '~'.repeat(graces.length),
    tiedFrom ? '_' : '',
    note === null ? 'r' : '',
    SHORT[value],
    dotted ? '.' : '',
    tuplet?.stops ? ')' : '',
  ].join('');

export const measureText = ({ signs }: Measure): string => signs.map(signText).join(' ');

/** A meter at a tempo, straight unless it is said. */
export const timeOf = (
  beatsPerBar: number,
  { bpm = 100, swing = 0.5, divisions = 2 as 2 | 3, bars = 4 } = {},
): Time => ({ beatMap: steadyBeatMap(bpm, 0), beatsPerBar, divisions, swing, bars });

/**
 * Notes from pairs of start and length in beats; a length left out lasts to the next start.
 * @example notesFrom([0, [1, 0.5], 2], 4) // from 0 to 1, 1 to 1.5, 2 to 4
 */
export const notesFrom = (starts: readonly (number | readonly [number, number])[], end: number): LineNote[] =>
  starts.map((start, i) => {
    const next = starts[i + 1] ?? end;
    const nextBeat = typeof next === 'number' ? next : next[0];
    return typeof start === 'number'
      ? { beat: start, endBeat: nextBeat }
      : { beat: start[0], endBeat: start[0] + start[1] };
  });

export const written = (notes: readonly LineNote[], time: Time): string =>
  quantise(notes, time).measures.map(measureText).join(' | ');
