import { expect, test } from 'vitest';
import type { DoubtfulNote, ReportNote } from '../../../src/core/take/schema.ts';
import { en } from '../../../src/core/words/en.ts';
import { lineNotes, nextChoice, placeOf } from '../../../src/ui/review/line-notes.ts';
import { spokenNote } from '../../../src/ui/review/spoken-note.ts';

const facts = (onsetSeconds: number, midi: number, spelling: string) => ({
  ...{ onsetSeconds, midi, spelling, cents: 0, chord: 'C7', role: 'third' as const },
});
const counted = (onsetSeconds: number, chosen = false) =>
  ({ ...facts(onsetSeconds, 64, 'E4'), chosen }) as unknown as ReportNote;
const doubtful = (onsetSeconds: number, takenOut = false) =>
  ({ ...facts(onsetSeconds, 64, 'E4'), takenOut }) as unknown as DoubtfulNote;

const line = lineNotes({
  notes: [counted(1), counted(3, true)],
  doubtful: [doubtful(2), doubtful(4, true)],
});

test('the notes of a line stand in the order of their onsets, whether they count or not', () => {
  expect(line.map(({ place, counts, index }) => [place, counts, index])).toEqual([
    [0, true, 0],
    [1, false, 0],
    [2, true, 1],
    [3, false, 1],
  ]);
  expect([placeOf(line, 1), placeOf(line, 5), placeOf(line, null)]).toEqual([2, null, null]);
});

test('a note keeps its place when it begins to count', () => {
  const after = lineNotes({
    notes: [counted(1), counted(2, true), counted(3, true)],
    doubtful: [doubtful(4, true)],
  });
  expect(after.map(({ note }) => note.onsetSeconds)).toEqual(line.map(({ note }) => note.onsetSeconds));
});

test('one thing is offered of each note: what was said can be taken back, anything else turned round', () => {
  expect(line.map(nextChoice)).toEqual([
    { word: 'takeOut', counts: false },
    { word: 'letCount', counts: true },
    { word: 'asHeard', counts: null },
    { word: 'asHeard', counts: null },
  ]);
});

test('a note that does not count is read out as one', () => {
  expect(line.map((one) => spokenNote(one, en).split(',')[0])).toEqual([
    'E4',
    'doubtful: E4',
    'E4',
    'taken out: E4',
  ]);
});
