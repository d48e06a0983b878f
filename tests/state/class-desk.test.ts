/** The teacher's desk without a screen: what is dropped, graded, written and saved. The lines are counted by hand. */
import { describe, expect, it } from 'vitest';
import { AnalysisClient } from '../../src/analysis/client.ts';
import { readAnswer } from '../../src/core/lesson/answer.ts';
import { ZipWriter } from '../../src/core/files/zip/write-zip.ts';
import { writeTakeFile } from '../../src/core/take-file/write-take-file.ts';
import { ClassDesk } from '../../src/state/class-desk.svelte.ts';
import type { DroppedFile } from '../../src/state/class-file.ts';
import type { FilesPort } from '../../src/state/ports.ts';
import { InProcessWorker } from '../analysis/in-process.ts';
import { THIRDS_SHEET } from '../core/lesson/thirds-sheet.ts';
import { details, madeTake } from '../core/take-file/made-take.ts';

/** A note a bar of the four chords, three times round; at 120 bpm a bar lasts two seconds. */
const notes = (pitches: readonly number[], fromSeconds = 0) =>
  [
    'onset,duration,pitch',
    ...Array.from({ length: 12 }, (_, bar) => `${fromSeconds + 2 * bar},1,${pitches[bar % 4]}`),
    '',
  ].join('\n');
/** F#, B, C#, G#: the thirds of D7, G7, A7 and E7. */
const THIRDS = [66, 71, 73, 68];
/** No chord tones. */
const BESIDE = [61, 66, 68, 63];
const SHEET_TEXT = JSON.stringify(THIRDS_SHEET);

const dropped = (path: string, content: BlobPart): DroppedFile => ({
  path,
  file: new File([content], path.split('/').at(-1)!),
});
const sheet = dropped('class/sheet.json', SHEET_TEXT);

/** @param firstCrashes whether the first worker dies of its first file */
function desk(firstCrashes = false) {
  const workers: InProcessWorker[] = [];
  const analysis = new AnalysisClient(() => {
    const worker = new InProcessWorker();
    if (firstCrashes && workers.length === 0) queueMicrotask(() => worker.crash());
    workers.push(worker);
    return InProcessWorker.asWorker(worker);
  });
  const saved: { readonly text: Promise<string>; readonly name: string }[] = [];
  const reviewed: string[] = [];
  const made = new ClassDesk({
    analysis,
    session: {
      gradeRecording: (_, opened) => {
        reviewed.push(opened.ok ? `${opened.value.take.details.firstBeatSeconds}` : opened.problem.code);
        return Promise.resolve();
      },
      close: () => reviewed.push('closed'),
    },
    files: {
      save: (blob: Blob, name: string) => saved.push({ text: blob.text(), name }),
    } as unknown as FilesPort,
    graders: 2,
    version: 'test',
  });
  return { desk: made, saved, reviewed };
}
const standing = (of: ClassDesk) => of.rows.map(({ student, attention }) => `${student}: ${attention}`);

describe('files on the desk', () => {
  it('become rows, those that need attention first; a file that is no take fails alone', async () => {
    const { desk: on } = desk();
    await on.open([
      sheet,
      dropped('class/cello.csv', notes(THIRDS)),
      dropped('class/tuba.csv', notes(BESIDE)),
      dropped('class/torn.wav', 'RIFF'),
      dropped('class/letter.txt', 'Dear teacher'),
      dropped('class/other.json', '{}'),
    ]);
    expect(standing(on)).toEqual(['tuba: not reached', 'cello: reached']);
    expect(on.failed.map(({ path }) => path).sort()).toEqual(['class/other.json', 'class/torn.wav']);
    expect(on.sheets.map(({ name }) => name)).toEqual(['class/sheet.json']);
    expect(on.progress).toBeNull();
    on.clear();
    expect([on.rows, on.failed, on.sheets]).toEqual([[], [], []]);
  });

  it('wait for their sheet where it comes later', async () => {
    const { desk: on } = desk();
    await on.open([dropped('cello.csv', notes(THIRDS))]);
    expect(on.rows).toEqual([]);
    expect(on.failed.map(({ problem }) => problem.code)).toEqual(['class.noSheet']);
    await on.open([sheet]);
    expect(standing(on)).toEqual(['cello: reached']);
    expect(on.failed).toEqual([]);
  });

  it('replace those that lay there under the same path', async () => {
    const { desk: on } = desk();
    await on.open([sheet, dropped('cello.csv', notes(BESIDE))]);
    await on.open([dropped('cello.csv', notes(THIRDS))]);
    expect(standing(on)).toEqual(['cello: reached']);
    expect(on.takes).toBe(1);
  });

  it('are called after their own names in an archive', async () => {
    const zip = new ZipWriter('2026-03-01T10:00:00.000Z');
    const silent = { ...details, written: true, bandKept: false };
    const parts = writeTakeFile(madeTake({ samples: new Int16Array(), band: null, details: silent }));
    const bytes = ['lesson/oboe 2', 'lesson/harp', 'lesson/harp (1)'].flatMap((name) =>
      zip.entry({ name: `${name}.landfall`, parts, pack: false }),
    );
    bytes.push(...zip.finish());
    const { desk: on } = desk();
    await on.open([sheet, { path: 'all.zip', file: new File(bytes as BlobPart[], 'all.zip') }]);
    expect(on.failed).toEqual([]);
    const rows = on.rows.map(({ student, takes }) => `${student}, ${takes}`);
    expect(rows.sort()).toEqual(['harp, 2', 'oboe, 1']);
    const oboe = on.rows.find(({ student }) => student === 'oboe')!.take;
    expect(oboe).toMatchObject({ file: 'all.zip/lesson/oboe 2.landfall', tryNumber: 2 });
  });
});

describe('the grading', () => {
  it('ends where the teacher stops it, and what is graded stays', async () => {
    const { desk: on } = desk();
    await on.open([sheet, dropped('cello.csv', notes(THIRDS))]);
    const going = on.open([dropped('tuba.csv', notes(BESIDE)), dropped('viola.csv', notes(BESIDE))]);
    // A timer could come after both are graded.
    for (let i = 0; i < 100 && on.progress === null; i++) await Promise.resolve();
    expect(on.progress?.of).toBe(2);
    on.cancel();
    await going;
    expect(standing(on)).toEqual(['cello: reached']);
    expect(on.progress).toBeNull();
  });

  it('goes on after a worker has died; only the file it died of has failed', async () => {
    const { desk: on } = desk(true);
    await on.open([sheet, ...['a', 'b', 'c', 'd'].map((name) => dropped(`${name}.csv`, notes(THIRDS)))]);
    expect(on.failed.map(({ problem }) => problem.code)).toEqual(['listener.stopped']);
    expect(on.rows).toHaveLength(3);
  });
});

describe('the first downbeat of plain recordings', () => {
  // Two thirds of a second late, each note stands a beat and a third after its chord began.
  it('is set for all, and each is graded by it from the notes that were heard', async () => {
    const { desk: on } = desk();
    // Four seconds are two bars: the thirds of D7 and G7 stand over A7 and E7.
    await on.open([sheet, dropped('cello.csv', notes(THIRDS, 4))]);
    expect(on.recordings).toBe(1);
    expect(on.rows[0]?.take.thirds.hits).toBe(0);
    on.setFirstBeat(4);
    expect(on.rows[0]?.take.thirds).toMatchObject({ hits: 12, of: 12 });
    // One that comes later is graded by it, too.
    await on.open([dropped('tuba.csv', notes(THIRDS, 4))]);
    expect(on.rows.map(({ take }) => take.thirds.hits)).toEqual([12, 12]);
    on.setFirstBeat(1e9);
    expect(on.firstBeatSeconds).toBe(86_400);
  });

  it('is set for the one in review, which is shown anew; the others stay', async () => {
    const { desk: on, reviewed } = desk();
    await on.open([sheet, dropped('cello.csv', notes(THIRDS, 4)), dropped('tuba.csv', notes(THIRDS))]);
    await on.setFirstBeatOfReview(4);
    await on.review('cello.csv');
    await on.setFirstBeatOfReview(4);
    expect(on.rows.map(({ student, take }) => [student, take.thirds.hits])).toEqual([
      ['cello', 12],
      ['tuba', 12],
    ]);
    expect(reviewed).toEqual(['0', '4']);
    on.clear();
    expect(on.firstBeatSeconds).toBe(0);
  });
});

describe('the answer', () => {
  it('is written in review, kept for each take, and saved as a file with its comments in order', async () => {
    const { desk: on, saved, reviewed } = desk();
    await on.open([sheet, dropped('cello 3.csv', notes(THIRDS)), dropped('tuba.csv', notes(BESIDE))]);
    on.writeNote('Lost: no take is in review.');
    await on.review('cello 3.csv');
    expect(on.inReview?.row.student).toBe('cello');
    expect(on.draft).toEqual({ note: '', comments: [] });
    on.writeNote('Good.');
    on.addComment({ chorus: 1, bar: 0, text: ' late ' });
    on.addComment({ chorus: 0, bar: 3, text: 'calm' });
    on.addComment({ chorus: 0, bar: 0, text: '   ' });
    on.addComment({ chorus: 0, bar: 1, text: 'away with it' });
    on.removeComment(0);
    on.giveAnswer();
    const answer = readAnswer(await saved[0]!.text, saved[0]!.name);
    expect(answer).toMatchObject({
      ok: true,
      value: {
        ...{ takeId: null, student: 'cello', tryNumber: 3, title: 'Thirds in D', note: 'Good.' },
        comments: [
          { chorus: 0, bar: 3, text: 'calm' },
          { chorus: 1, bar: 0, text: 'late' },
        ],
      },
    });
    expect(saved[0]!.name).toMatch(/^cello.*\.answer\.json$/);
    on.leaveReview();
    expect(reviewed).toEqual(['0', 'closed']);
    expect([on.hasDraft('cello 3.csv'), on.hasDraft('tuba.csv')]).toEqual([true, false]);
    await on.review('tuba.csv');
    expect(on.draft.note).toBe('');
  });
});

describe('the table as a file', () => {
  it('is CSV with a line a student', async () => {
    const { desk: on, saved } = desk();
    await on.open([sheet, dropped('cello.csv', notes(THIRDS)), dropped('tuba.csv', notes(BESIDE))]);
    on.saveCsv();
    const lines = (await saved[0]!.text).trim().split('\r\n');
    expect(lines.map((line) => line.split(',')[0])).toEqual(['student', 'tuba', 'cello']);
  });
});
