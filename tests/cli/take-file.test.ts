/** A take file at the command line: the same grade as in the app, and a class of take files by a lesson sheet. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { english } from '../english.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { readArgs } from '../../src/cli/args.ts';
import { doJob } from '../../src/cli/batch-job.ts';
import { gradeFile } from '../../src/cli/grade-command.ts';
import { gradeOrder } from '../../src/core/grade-order.ts';
import { gradeSound } from '../../src/core/grade-samples.ts';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { markOfSheet, sheetSchema } from '../../src/core/lesson/sheet.ts';
import type { Report } from '../../src/core/take/schema.ts';
import type { TakeDetails } from '../../src/core/take/details-schema.ts';
import type { TakeToWrite } from '../../src/core/take-file/take-file.ts';
import { wordsOf } from '../../src/core/words/catalogues.ts';
import * as v from 'valibot';
import { fileOf } from '../core/take-file/made-take.ts';

const folder = mkdtempSync(join(tmpdir(), 'landfall-take-'));
afterAll(() => rmSync(folder, { recursive: true }));

const RATE = 16_000;
const MIDIS = [61, 64, 57, 61, 66, 69, 62, 66, 61, 57, 64, 61, 68, 71, 64, 68];
const details: TakeDetails = {
  title: 'Blues in A',
  startedAt: '2026-03-01T10:00:00.000Z',
  source: 'microphone',
  chartText: 'key: A\n| A7 | D7 | A7 | E7 |',
  key: 'A',
  bpm: 120,
  feel: 'straight',
  swing: 0.5,
  reference: 440,
  sampleRate: RATE,
  firstBeatSeconds: 0.5,
};
const samples = toPcm16(pluckLine(onTheBeat(MIDIS, 120, 0.5), RATE, 9));
const take = (change: Partial<TakeDetails>, more: Partial<TakeToWrite> = {}): TakeToWrite => ({
  id: 'played-1',
  frames: samples.length,
  messages: null,
  report: null,
  samples,
  band: null,
  details: { ...details, ...change },
  ...more,
});

const silent = { at: () => undefined, dispose: () => undefined };
const words = wordsOf('en');

async function graded(file: string, ...options: readonly string[]) {
  const order = readArgs(['grade', file, ...options]);
  if (!order.ok || order.value.command !== 'grade') throw new Error('no order');
  const answer = await gradeFile(order.value, silent, words);
  if (!answer.ok) throw new Error(english(answer.problem));
  return answer.value.page;
}

describe('landfall grade of a take file', () => {
  const path = join(folder, 'oboe 2.landfall');
  beforeAll(() => writeFileSync(path, fileOf(take({}))));

  it('gives the report that the app makes of the take', async () => {
    const app = gradeSound({ samples, sampleRate: RATE, name: 'take', backing: null }, gradeOrder(details), {
      progress: () => undefined,
      message: () => undefined,
    });
    if (!app.ok) throw new Error(english(app.problem));
    expect(app.value.report.notes.length).toBeGreaterThan(12);
    expect(JSON.parse(await graded(path, '--json'))).toEqual(app.value.report);
  });

  it('listens to the sound: what stands in the report of the file changes nothing', async () => {
    const first = await graded(path, '--json');
    const lying = join(folder, 'lying.landfall');
    const report = JSON.parse(first) as { notes: unknown[]; summary: { thirdShare: number } };
    writeFileSync(
      lying,
      fileOf(take({}, { report: { ...report, summary: { ...report.summary, thirdShare: 1 } } })),
    );
    expect(await graded(lying, '--json')).toBe(first);
  });

  it('grades the notes as they were corrected by hand', async () => {
    const plain = JSON.parse(await graded(path, '--json')) as Report;
    const [first, second] = plain.notes;
    const corrected = join(folder, 'corrected.landfall');
    const placeOf = ({ onsetSeconds, midi }: Report['notes'][number]) => ({ onsetSeconds, midi });
    const corrections: TakeDetails['corrections'] = [
      { kind: 'pitch', of: placeOf(first!), midi: first!.midi + 1 },
      { kind: 'delete', of: placeOf(second!) },
    ];
    writeFileSync(corrected, fileOf(take({ corrections })));
    const report = JSON.parse(await graded(corrected, '--json')) as Report;
    expect(report.notes).toHaveLength(plain.notes.length - 1);
    expect(report.notes[0]).toMatchObject({ name: 'D4', corrected: { changes: ['pitch'] } });
    expect(report.corrections).toMatchObject({ notes: 2, leftOut: [] });
    expect(await graded(corrected)).toContain('2 notes are corrected by hand (1 deleted).');
  });

  it('needs no chords, and takes none', async () => {
    const order = readArgs(['grade', path, '--chart', '| C |', '--tempo', '90']);
    if (!order.ok || order.value.command !== 'grade') throw new Error('no order');
    expect(await gradeFile(order.value, silent, words)).toMatchObject({
      ok: false,
      problem: { code: 'cli.takeFileHasChords' },
    });
    expect(readArgs(['grade', path, '--tempo', '90'])).toMatchObject({
      ok: false,
      problem: { code: 'cli.idleForTakeFile', facts: { option: 'tempo' } },
    });
    expect(readArgs(['grade', 'take.csv'])).toMatchObject({ ok: false, problem: { code: 'cli.noChords' } });
  });
});

describe('a take file in a class', () => {
  const file = v.parse(sheetSchema, {
    format: 'landfall-sheet',
    version: 1,
    title: 'Thirds',
    note: '',
    chart: 'key: A\n| A7 | D7 | A7 | E7 |',
    tempo: 120,
    feel: 'straight',
    choruses: 1,
    aims: [{ id: 'third-over-one' }],
  });
  const rowOf = async (name: string, bytes: Uint8Array) => {
    const path = join(folder, name);
    writeFileSync(path, bytes);
    const sheet = { text: JSON.stringify(file), name: 'sheet.json' };
    const result = await doJob({ kind: 'class', file: path, sheets: [sheet], firstBeatSeconds: 0 });
    if (result.kind !== 'row') throw new Error(JSON.stringify(result));
    return result.row;
  };

  it('says who played it for which sheet, and where its first downbeat lies', async () => {
    const lesson = { mark: markOfSheet(file), title: file.title, student: 'Violin', tryNumber: 3 };
    const row = await rowOf('x.landfall', fileOf(take({ lesson })));
    expect(row).toMatchObject({
      student: 'Violin',
      sheet: 'this one',
      tryNumber: 3,
      startedAt: details.startedAt,
      doubts: [],
    });
    expect(row.notes).toBeGreaterThan(12);
    const other = await rowOf('y.landfall', fileOf(take({ lesson: { ...lesson, mark: 'f'.repeat(16) } })));
    expect(other).toMatchObject({ sheet: 'another', doubts: ['another sheet'] });
    expect(await rowOf('oboe 4.landfall', fileOf(take({})))).toMatchObject({
      student: 'oboe',
      sheet: 'none',
      tryNumber: 4,
    });
  });

  it('that is bad is a problem of its own row', async () => {
    const path = join(folder, 'cut.landfall');
    writeFileSync(path, fileOf(take({})).slice(0, 90_000));
    const sheet = { text: JSON.stringify(file), name: 'sheet.json' };
    expect(await doJob({ kind: 'class', file: path, sheets: [sheet], firstBeatSeconds: 0 })).toMatchObject({
      kind: 'problem',
    });
  });
});
