/** An example take inside a lesson sheet: made from a report, written, read again, refused where it is too much. */
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { gradeForSheet } from '../../../src/core/grade-for-sheet.ts';
import { sheetJsonSchema } from '../../../src/core/lesson/json-schema.ts';
import { beatsBefore, exampleOf, EXAMPLE_LIMITS, notesOfExample } from '../../../src/core/lesson/example.ts';
import { LINK_CHARACTERS, readSheetFragment, sheetFragment } from '../../../src/core/lesson/sheet-link.ts';
import {
  markOfSheet,
  readSheet,
  timelineOfSheet,
  writeSheet,
  type SheetFile,
} from '../../../src/core/lesson/sheet.ts';
import { english } from '../../english.ts';
import { line, type Played } from '../grade/line.ts';
import { THIRDS_SHEET } from './thirds-sheet.ts';

/** A pickup, the third of D7 a little late, a bent note, a chord of two. */
const PLAYED: readonly Played[] = [
  [-0.5, 0.5, 64],
  [0.04, 1.5, 66],
  [2, 0.5, 69.25],
  [4, 2, 71],
];
const NOTES = [
  [-0.5, 0.5, 64],
  [0.04, 1.5, 66],
  [2, 0.5, 69.25],
  [4, 2, 71],
] as [number, number, number][];

const sheetWith = (example: unknown) => ({ ...THIRDS_SHEET, example });
const read = (example: unknown) => readSheet(JSON.stringify(sheetWith(example)), 'task.json');
function goodSheet(example: unknown) {
  const sheet = read(example);
  if (!sheet.ok) throw new Error(english(sheet.problem));
  return sheet.value;
}
const plain = readSheet(JSON.stringify(THIRDS_SHEET), 'task.json');
if (!plain.ok) throw new Error('The sheet of this test can’t be read.');

/** The line begins four beats into the take: 120 bpm, two seconds. */
const report = (referenceHz: number) =>
  gradeForSheet(line(PLAYED.map(([beat, beats, midi]) => [beat + 4, beats, midi])), plain.value, {
    source: { kind: 'notes', durationSeconds: 10, sampleRate: null },
    firstBeatSeconds: 2,
    referenceHz,
  });

describe('the example of a take', () => {
  it('holds its notes in beats from the first downbeat, lengths in beats, and MIDI numbers', () => {
    expect(exampleOf(report(440), 'tenor-sax-that-nobody-knows')).toEqual({ notes: NOTES });
    expect(exampleOf(report(440), 'guitar')).toEqual({ instrument: 'guitar', notes: NOTES });
  });

  it('sounds at 440 Hz: at 442 Hz it was 8 cents higher', () => {
    // 1200 · log2(442/440) = 7.85 cents.
    const notes = exampleOf(report(442), undefined)!.notes;
    expect(notes.map(([, , midi]) => midi)).toEqual(NOTES.map(([, , midi]) => midi - 0.08));
  });

  it('is none where nothing was played', () => {
    expect(exampleOf({ ...report(440), notes: [] }, 'guitar')).toBeNull();
  });

  it('comes back in seconds at the tempo of the sheet, its pickup in a bar before the first downbeat', () => {
    const sheet = goodSheet({ notes: NOTES });
    const before = beatsBefore(sheet.file.example!, 4);
    expect(before).toBe(4);
    const slower = { ...sheet, file: { ...sheet.file, tempo: 60 } };
    const notes = notesOfExample(sheet.file.example!, timelineOfSheet(slower, before));
    expect(notes.map(({ onsetSeconds }) => onsetSeconds)).toEqual([3.5, 4.04, 6, 8]);
    expect(notes.map(({ offsetSeconds }) => offsetSeconds)).toEqual([4, 5.54, 6.5, 10]);
    expect(notes.map(({ midi }) => midi)).toEqual([64, 66, 69.25, 71]);
    expect(beatsBefore({ notes: [[0, 1, 60]] }, 4)).toBe(0);
  });
});

describe('a sheet with an example', () => {
  it('is written with a line a note, and read as it was written', () => {
    const { file } = goodSheet({ instrument: 'guitar', notes: NOTES });
    const text = writeSheet(file);
    expect(text).toContain('\n      [0.04, 1.5, 66],\n');
    expect(text.split('\n').length).toBeLessThan(40);
    expect(readSheet(text, 'again.json')).toEqual(read({ instrument: 'guitar', notes: NOTES }));
  });

  it('has another mark than the same sheet without', () => {
    expect(markOfSheet(goodSheet({ notes: NOTES }).file)).not.toBe(markOfSheet(THIRDS_SHEET as SheetFile));
  });

  it('leaves a text alone that looks like a note', () => {
    const note = '[\n  1,\n  2,\n  3\n] and [ 1, 2, 3 ]';
    const file = { ...(THIRDS_SHEET as SheetFile), note };
    expect(JSON.parse(writeSheet(file))).toEqual({ ...file });
  });

  it('follows its JSON Schema, as ajv reads it', () => {
    const valid = new Ajv2020({ strict: false }).compile(sheetJsonSchema());
    expect(valid(sheetWith({ notes: NOTES }))).toBe(true);
    expect(valid(sheetWith({ notes: [[0, 1]] }))).toBe(false);
    expect(valid(sheetWith({ notes: [[0, 1, 60, 5]] }))).toBe(false);
    expect(valid(sheetWith({ notes: [[0, 1, 300]] }))).toBe(false);
  });

  const many = (count: number) => Array.from({ length: count }, (_, i) => [i / 2, 0.5, 40 + ((i * 7) % 40)]);

  it.each([
    ['no notes', { notes: [] }],
    ['more notes than are listened to', { notes: many(EXAMPLE_LIMITS.notes + 1) }],
    ['a note far behind the end', { notes: [[1e300, 1, 60]] }],
    ['a note far before the beginning', { notes: [[-9, 1, 60]] }],
    ['a note that does not last', { notes: [[0, 0, 60]] }],
    ['a note without a pitch', { notes: [[0, 1, null]] }],
    ['words for numbers', { notes: [['0', '1', '60']] }],
    ['an instrument that nobody knows', { instrument: 'kazoo', notes: NOTES }],
    ['a field of its own', { notes: NOTES, sound: 'data:audio/wav;base64,' }],
    ['a list', NOTES],
    ['null', null],
  ])('is refused with %s', (_, example) => {
    const sheet = read(example);
    expect(sheet.ok ? '' : english(sheet.problem)).toMatch(/example/);
  });

  it('goes into a link while it is short, and says that the file must be sent where it is not', () => {
    const short = goodSheet({ notes: many(100) });
    const link = sheetFragment(short.file);
    if (!link.ok) throw new Error(english(link.problem));
    expect(link.value.length).toBeLessThan(LINK_CHARACTERS);
    expect(readSheetFragment(link.value)).toEqual({ ok: true, value: short });
    // Every note somewhere else: that packs badly.
    const scattered = Array.from({ length: EXAMPLE_LIMITS.notes }, (_, i) => [
      Math.round(100 * (i + Math.sin(i * i) / 3)) / 100,
      Math.round(100 * (1 + Math.sin(3 * i * i) / 2)) / 100,
      Math.round(6000 + 2000 * Math.sin(7 * i * i)) / 100,
    ]);
    const long = goodSheet({ notes: scattered });
    const refused = sheetFragment(long.file);
    expect(refused.ok ? '' : english(refused.problem)).toMatch(/file/);
    expect(readSheet(writeSheet(long.file), 'long.json')).toEqual({ ok: true, value: long });
  });
});
