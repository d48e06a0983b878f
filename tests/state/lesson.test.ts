/** A lesson sheet in the student's hands: opened by file or link, played, counted, left; and the teacher's answer. */
import { describe, expect, it } from 'vitest';
import { HOUSE_AIMS } from '../../src/core/grade/aims/aim-choices.ts';
import { gradeForSheet } from '../../src/core/grade-for-sheet.ts';
import { writeAnswer, type AnswerFile } from '../../src/core/lesson/answer.ts';
import { sheetFragment } from '../../src/core/lesson/sheet-link.ts';
import { readSheetFile, timelineOfSheet, writeSheet, type SheetFile } from '../../src/core/lesson/sheet.ts';
import { answerOfTake, sheetOfTake } from '../../src/state/lesson-files.ts';
import { Lesson } from '../../src/state/lesson.svelte.ts';
import type { Review } from '../../src/state/phase.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { RATE, world } from './world.ts';

const FILE: SheetFile = {
  format: 'landfall-sheet',
  version: 1,
  title: 'Thirds on two chords',
  note: 'Slowly.',
  chart: '| A7 | D7 |',
  tempo: 120,
  feel: 'straight',
  choruses: 4,
  aims: [{ id: 'third-on-arrival', shareToReach: 0.3 }, { id: 'guide-tones' }],
};
const OTHER: SheetFile = {
  ...FILE,
  title: 'Blues in Gb',
  chart: 'form:12-bar blues in Gb',
  tempo: 80,
  feel: 'shuffle',
};

const COUNT_IN = 2;
const line = () =>
  pluckLine(onTheBeat([73, 69, 64, 69, 66, 69, 74, 69], 120, COUNT_IN), RATE, COUNT_IN + 4.5);
const fileOf = (sheet: SheetFile) => new File([writeSheet(sheet)], 'task.json');
function linkOf(sheet: SheetFile): string {
  const fragment = sheetFragment(sheet);
  if (!fragment.ok) throw new Error('The sheet is too long.');
  return fragment.value;
}
function sheetOf(file: SheetFile) {
  const sheet = readSheetFile(file, 'task');
  if (!sheet.ok) throw new Error('The sheet is not read.');
  return sheet.value;
}

type World = Awaited<ReturnType<typeof world>>;
async function playTake(w: World): Promise<Review> {
  await w.session.start();
  await w.play(line());
  await w.session.stop();
  await w.until('review');
  await w.settle();
  return (w.session.phase as { review: Review }).review;
}

describe('a sheet that is opened', () => {
  it('is laid over the stand, not remembered, and leaves all of it as it was', async () => {
    const w = await world({ settings: { form: 'minor blues', key: 'A minor', bpm: 77, choruses: null } });
    w.setup.setPractice({ backbeatClick: true });
    w.setup.setBpm(70);
    const before = w.setup.settings;
    await w.lesson.openFile(fileOf(OTHER));
    expect(w.setup.settings).toMatchObject({
      form: '12-bar blues',
      key: 'Gb',
      bpm: 80,
      choruses: 4,
      swing: null,
    });
    expect(w.setup.settings.practice.backbeatClick).toBe(false);
    // What is not the sheet's stays the player's, also afterwards.
    w.setup.setLevel('drums', -9);
    expect(w.settings.saved.at(-1)).toEqual({ ...before, levels: { ...before.levels, drums: -9 } });
    w.lesson.leave();
    expect(w.setup.settings).toEqual({ ...before, levels: { ...before.levels, drums: -9 } });
    expect(w.setup.canUndo).toBe(true);
    w.setup.undo();
    expect(w.setup.settings.bpm).toBe(77);
  });

  it('has the very chords on time that the teacher’s grading has', async () => {
    for (const file of [FILE, OTHER]) {
      const w = await world();
      await w.lesson.openFile(fileOf(file));
      const timeline = w.setup.timeline;
      const asked = timelineOfSheet(sheetOf(file), 0);
      if (!timeline.ok) throw new Error('The chart is not read.');
      expect(timeline.value.chart).toBe(asked.chart);
      expect(timeline.value.spansBetween(0, 100)).toEqual(asked.spansBetween(0, 100));
      expect(timeline.value.swing).toBeCloseTo(asked.swing, 9);
      for (const beat of [0, 0.5, 7, 40.5])
        expect(timeline.value.beatMap.secondsAt(beat)).toBeCloseTo(asked.beatMap.secondsAt(beat), 9);
    }
  });

  it('takes the instrument that the sheet asks for, and gives the player’s own back', async () => {
    const w = await world();
    await w.lesson.openFile(fileOf({ ...FILE, instrument: 'flute' }));
    expect(w.setup.settings).toMatchObject({ instrument: 'flute', view: 'staff' });
    w.lesson.begin();
    expect(w.setup.settings.instrument).toBe('flute');
    w.lesson.leave();
    expect(w.setup.settings).toMatchObject({ instrument: 'guitar', view: 'neck' });
  });

  it('is replaced by another one, and the stand is still what it was', async () => {
    const w = await world();
    const before = w.setup.settings;
    await w.lesson.openFile(fileOf(FILE));
    await w.lesson.openFile(fileOf(OTHER));
    expect(w.lesson.sheet?.file.title).toBe('Blues in Gb');
    w.lesson.leave();
    expect(w.setup.settings).toEqual(before);
  });

  it('is told where it can’t be read, and the one that is open stays', async () => {
    const w = await world();
    await w.lesson.openFile(fileOf(FILE));
    await w.lesson.openFile(new File(['{}'], 'other.json'));
    expect(w.lesson.notices.map(({ code }) => code)).toEqual(['sheet.notSheet']);
    await w.lesson.openFile(new File([new Uint8Array(3_000_000)], 'big.json'));
    expect(w.lesson.notices.map(({ code }) => code)).toEqual(['sheet.tooLong']);
    expect(w.lesson.sheet?.file.title).toBe(FILE.title);
  });
});

describe('a sheet by its link', () => {
  it('opens at once where nothing goes on, and waits for the end of a take', async () => {
    const w = await world();
    await w.lesson.arrive(linkOf(FILE), () => true);
    expect(w.lesson.sheet?.file).toEqual(FILE);
    await w.session.start();
    await w.lesson.arrive(linkOf(OTHER), () => false);
    expect(w.lesson.sheet?.file).toEqual(FILE);
    expect(w.lesson.notices).toEqual([{ code: 'sheet.waits', facts: { title: OTHER.title } }]);
    w.session.close();
    w.lesson.openWaiting();
    expect(w.lesson.sheet?.file).toEqual(OTHER);
    expect(w.lesson.notices).toEqual([]);
    w.lesson.openWaiting();
    expect(w.lesson.sheet?.file).toEqual(OTHER);
    w.lesson.leave();
    expect(w.student.cleared).toBe(1);
  });

  it('is told where it is damaged; another fragment is none of its business', async () => {
    const w = await world();
    await w.lesson.arrive('#help', () => true);
    expect(w.lesson.notices).toEqual([]);
    await w.lesson.arrive(linkOf(FILE).slice(0, 60), () => true);
    expect(w.lesson.notices.map(({ code }) => code)).toEqual(['sheetLink.damaged']);
    expect(w.lesson.sheet).toBeNull();
  });
});

it('a link whose reader can’t be fetched is told, and opens nothing', async () => {
  const w = await world();
  const { setup, library } = w;
  const lesson = new Lesson({
    setup,
    library,
    student: { load: () => Promise.resolve({ value: { name: '' }, messages: [] }), save: () => undefined },
    readLink: () => Promise.reject(new TypeError('Failed to fetch')),
    readFile: () => Promise.reject(new TypeError('Failed to fetch')),
    forgetLink: () => undefined,
  });
  expect(await lesson.arrive(linkOf(FILE), () => true)).toBe(false);
  expect(lesson.notices.map(({ code }) => code)).toEqual(['site.partMissing']);
  expect(await lesson.openFile(fileOf(FILE))).toBeNull();
  expect(lesson.notices.map(({ code }) => code)).toEqual(['site.partMissing']);
  expect(lesson.sheet).toBeNull();
});

describe('a take for a sheet', () => {
  it('carries the sheet, the name and the try, counted over the kept takes of this student', async () => {
    const w = await world();
    await w.lesson.openFile(fileOf(FILE));
    expect(w.lesson.tryNumber).toBe(1);
    const first = await playTake(w);
    expect(first.details.lesson).toMatchObject({ title: FILE.title, student: 'Alto', tryNumber: 1 });
    expect(first.details.lesson?.mark).toBe(w.lesson.sheet?.mark);
    expect(sheetOfTake(first.details)?.file).toEqual(FILE);
    expect((await playTake(w)).details.lesson?.tryNumber).toBe(2);
    expect(w.lesson.tries).toHaveLength(2);
    // The first is removed: no number comes twice.
    await w.library.remove(first.id!);
    expect(w.lesson.tryNumber).toBe(3);
    w.lesson.setStudent('  Student 2 ');
    expect(w.lesson.tryNumber).toBe(1);
    expect(w.student.names.at(-1)).toBe('  Student 2 ');
    expect((await playTake(w)).details.lesson).toMatchObject({ student: 'Student 2', tryNumber: 1 });
    await w.lesson.openFile(fileOf({ ...FILE, tempo: 119 }));
    expect(w.lesson.tryNumber).toBe(1);
    w.session.close();
  });

  it('is graded by the aims of the sheet, and note for note as the teacher’s grading does', async () => {
    const w = await world({ settings: { aim: 'chord-tones' } });
    await w.lesson.openFile(fileOf(FILE));
    const { report, heard, details } = await playTake(w);
    const tried = report.aims.filter((aim) => aim.tried);
    expect(tried.map(({ id, shareToReach }) => [id, shareToReach])).toEqual([
      ['third-on-arrival', 0.3],
      ['guide-tones', HOUSE_AIMS.find(({ id }) => id === 'guide-tones')!.shareToReach],
    ]);
    const again = gradeForSheet(heard!, sheetOf(FILE), {
      source: report.source,
      firstBeatSeconds: details.firstBeatSeconds!,
      referenceHz: details.reference,
    });
    expect(report.notes.length).toBeGreaterThan(4);
    const facts = (of: typeof report) =>
      of.notes.map(({ name, role, onsetSeconds }) => [name, role, onsetSeconds]);
    expect(facts(again)).toEqual(facts(report));
    expect(again.landings.map(({ role, offsetMs }) => [role, offsetMs])).toEqual(
      report.landings.map(({ role, offsetMs }) => [role, offsetMs]),
    );
  });

  it('is played as the sheet asks, whatever was turned meanwhile', async () => {
    const w = await world();
    await w.lesson.openFile(fileOf(FILE));
    w.setup.setBpm(60);
    w.setup.chooseForm('minor blues');
    const { details } = await playTake(w);
    expect(details.bpm).toBe(120);
    expect(details.chartText).toContain('A7');
    w.session.close();
  });

  it('carries nothing of it where bars are tried again, nor once the sheet is left', async () => {
    const w = await world();
    await w.lesson.openFile(fileOf(FILE));
    await playTake(w);
    await w.session.again({ tryBars: { fromBar: 1, toBar: 1 } });
    await w.play(line());
    await w.session.stop();
    await w.until('review');
    expect((w.session.phase as { review: Review }).review.details.lesson).toBeUndefined();
    w.session.close();
    expect(w.setup.settings.choruses).toBe(4);
    w.lesson.leave();
    expect((await playTake(w)).details.lesson).toBeUndefined();
  });

  it('opens its sheet again, when it is played again on another day', async () => {
    const w = await world();
    await w.lesson.openFile(fileOf(FILE));
    const { id } = await playTake(w);
    w.session.close();
    w.lesson.leave();
    w.setup.chooseForm('minor blues');
    const before = w.setup.settings;
    await w.session.openTake(id!);
    await w.until('review');
    await w.session.again();
    expect(w.lesson.sheet?.file).toEqual(FILE);
    expect(w.lesson.tryNumber).toBe(2);
    w.session.close();
    w.lesson.leave();
    expect(w.setup.settings).toEqual(before);
  });
});

describe('a teacher’s answer', () => {
  const answerTo = (review: Review, change: Partial<AnswerFile> = {}): File => {
    const { mark, title, student, tryNumber } = review.details.lesson!;
    const answer: AnswerFile = {
      format: 'landfall-answer',
      version: 1,
      takeId: review.id,
      mark,
      title,
      student,
      tryNumber,
      note: 'Well done.',
      comments: [{ chorus: 0, bar: 1, text: 'The third was late.' }],
      ...change,
    };
    return new File([writeAnswer(answer)], 'answer.json');
  };

  it('is kept with the take that it is about', async () => {
    const w = await world();
    await w.lesson.openFile(fileOf(FILE));
    const review = await playTake(w);
    expect(await w.lesson.openFile(answerTo(review))).toBe(review.id);
    expect(await w.lesson.openFile(answerTo(review, { takeId: null }))).toBe(review.id);
    await w.session.openTake(review.id!);
    await w.until('review');
    const { details } = (w.session.phase as { review: Review }).review;
    expect(answerOfTake(details)).toMatchObject({ note: 'Well done.', comments: [{ bar: 1 }] });
  });

  it('says which take it is about where that take is not here', async () => {
    const w = await world();
    await w.lesson.openFile(fileOf(FILE));
    const review = await playTake(w);
    expect(await w.lesson.openFile(answerTo(review, { takeId: 'another' }))).toBeNull();
    expect(w.lesson.notices).toEqual([
      { code: 'answer.noTake', facts: { title: FILE.title, student: 'Alto' } },
    ]);
  });
});
