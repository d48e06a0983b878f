/** A teacher writes a lesson sheet: from what is on the stand, or from a sheet that is there; it leaves as file and link. */
import { describe, expect, it } from 'vitest';
import { HOUSE_AIMS } from '../../src/core/grade/aims/aim-choices.ts';
import { readSheetFragment } from '../../src/core/lesson/sheet-link.ts';
import { readSheet, readSheetFile, SHEET_LIMITS } from '../../src/core/lesson/sheet.ts';
import { askedShare } from '../../src/state/sheet-draft.svelte.ts';
import { SheetDesk } from '../../src/state/sheet-desk.svelte.ts';
import { Setup } from '../../src/state/setup.svelte.ts';
import { english } from '../english.ts';
import type { Report } from '../../src/core/take/schema.ts';
import { good } from '../../src/core/base/outcome.ts';
import { madeTake } from '../core/take-file/made-take.ts';
import { fakeSettings } from './world.ts';

/** A kept take of five notes over four chords, A7 D7 A7 E7. */
const KEPT = madeTake();
const REPORT = KEPT.report as Report;
const CARDS = [
  { ...KEPT.details, id: 'over-these', durationSeconds: 8, summary: {} },
  { ...KEPT.details, id: 'over-others', durationSeconds: 8, summary: {}, chartText: '| C7 |' },
  { ...KEPT.details, id: 'not-graded', durationSeconds: 8, summary: null },
];

async function desk(settings: Parameters<typeof fakeSettings>[0] = {}) {
  const saved: { blob: Blob; fileName: string }[] = [];
  const setup = new Setup({ settings: fakeSettings(settings) });
  await setup.load();
  const files = { save: (blob: Blob, fileName: string) => void saved.push({ blob, fileName }) };
  const open = (id: string) =>
    Promise.resolve(
      id === 'over-these'
        ? good({ id, details: KEPT.details, report: REPORT })
        : good({ id, details: KEPT.details, report: { ...REPORT, notes: [] } }),
    );
  const ports = { setup, files, library: { takes: CARDS }, takes: { open } } as unknown;
  return { desk: new SheetDesk(ports as ConstructorParameters<typeof SheetDesk>[0]), setup, saved };
}

const OWN_AIM = {
  format: 'landfall-aim',
  version: 1,
  id: 'roots-first',
  name: 'Roots first',
  task: 'Land on the root of every chord.',
  events: 'landings',
  test: 'is one of',
  tones: ['root'],
  shareToReach: 0.6,
  leastEvents: 4,
  againstLuck: false,
} as const;
const SHEET = {
  format: 'landfall-sheet',
  version: 1,
  title: 'Roots',
  note: 'First things first.',
  chart: '| Am7 | D7 |',
  tempo: 90,
  feel: 'swing',
  choruses: 7,
  instrument: 'flute',
  aims: [OWN_AIM, { id: 'guide-tones' }],
} as const;

describe('a sheet that is written', () => {
  it('begins with what is on the stand, and changes nothing there', async () => {
    const w = await desk({
      form: 'minor blues',
      key: 'D minor',
      bpm: 88,
      feel: 'swing',
      aim: 'thirds',
      choruses: 2,
    });
    const before = w.setup.settings;
    w.desk.open();
    const draft = w.desk.draft!;
    expect(draft.sheet.ok).toBe(false);
    draft.change({ title: '  Minor thirds ', note: 'Listen.\n' });
    draft.setup.setBpm(70);
    const sheet = draft.sheet;
    if (!sheet.ok) throw new Error(english(sheet.problem));
    expect(sheet.value.file).toMatchObject({
      title: 'Minor thirds',
      note: 'Listen.',
      chart: 'form:minor blues in D minor',
      tempo: 70,
      feel: 'swing',
      choruses: 2,
      aims: [{ id: 'third-on-arrival' }],
    });
    expect(sheet.value.instrument).toBeNull();
    expect(w.setup.settings).toEqual(before);
  });

  it('leaves as a file that is read again, and as a link with the same mark', async () => {
    const w = await desk();
    w.desk.open();
    expect(w.desk.save()).toBeNull();
    w.desk.draft!.change({ title: 'A/B: thirds?' });
    expect(w.desk.save()).toBe('A B thirds.sheet.json');
    const read = readSheet(await w.saved[0]!.blob.text(), 'saved');
    const { fragment } = w.desk.draft!;
    const linked = fragment.ok ? readSheetFragment(fragment.value) : null;
    expect(read.ok && linked?.ok && read.value.mark === linked.value.mark).toBe(true);
  });

  it('asks for aims of the house, each once, with a share in twentieths, the first one leading', async () => {
    const w = await desk({ aim: 'guide-tones' });
    w.desk.open();
    const draft = w.desk.draft!;
    expect(draft.otherAims).not.toContain('guide-tones');
    // Choices that stand for the same aim are offered once.
    expect([...draft.otherAims].sort()).toEqual(
      HOUSE_AIMS.map(({ id }) => id)
        .filter((id) => id !== 'guide-tones')
        .sort(),
    );
    draft.addAim('third-on-arrival');
    draft.addAim('third-on-arrival');
    draft.addAim('no such aim');
    draft.setShare('third-on-arrival', 0.4321);
    draft.setShare('guide-tones', -3);
    expect(draft.fields.aims).toEqual([
      { id: 'guide-tones', shareToReach: 0.05 },
      { id: 'third-on-arrival', shareToReach: 0.45 },
    ]);
    draft.removeAim('guide-tones');
    expect(draft.fields.aims.map(({ id }) => id)).toEqual(['third-on-arrival']);
    for (const id of draft.otherAims) draft.addAim(id);
    expect(draft.fields.aims).toHaveLength(SHEET_LIMITS.aims);
    expect(draft.otherAims).toEqual([]);
  });

  it('goes on with what was written after it was closed, and begins anew where that is asked', async () => {
    const w = await desk();
    w.desk.open();
    w.desk.draft!.change({ title: 'Half done' });
    w.desk.close();
    expect(w.desk.draft).toBeNull();
    w.desk.open();
    expect(w.desk.draft!.fields.title).toBe('Half done');
    w.desk.begin();
    expect(w.desk.draft!.fields.title).toBe('');
  });
});

describe('the example of a sheet', () => {
  const overThese = { form: null, ownChart: '| A7 | D7 | A7 | E7 |', key: 'A' };

  it('is one of the kept takes over its chart, in the file and in the link', async () => {
    const w = await desk(overThese);
    w.desk.open();
    const draft = w.desk.draft!;
    draft.change({ title: 'Thirds' });
    expect(w.desk.examples.map(({ id }) => id)).toEqual(['over-these']);
    await w.desk.giveExample('over-these');
    const sheet = draft.sheet;
    if (!sheet.ok) throw new Error(english(sheet.problem));
    // The first note begins with the first downbeat, the second half a second later: a beat at 120 bpm.
    expect(sheet.value.file.example).toMatchObject({ instrument: 'guitar' });
    expect(sheet.value.file.example?.notes).toHaveLength(REPORT.notes.length);
    expect(sheet.value.file.example?.notes[0]).toEqual([0, 0.8, 61]);
    expect(draft.fragment.ok && readSheetFragment(draft.fragment.value)).toEqual(sheet);
    draft.removeExample();
    expect(draft.sheet.ok && 'example' in draft.sheet.value.file).toBe(false);
  });

  it('is left out where the sheet has another chart by then, and comes back with its own', async () => {
    const w = await desk(overThese);
    w.desk.open();
    const draft = w.desk.draft!;
    draft.change({ title: 'Thirds' });
    await w.desk.giveExample('over-these');
    draft.setup.chooseKey('C');
    expect(draft.exampleMisfits).toBe(true);
    expect(draft.sheet.ok && 'example' in draft.sheet.value.file).toBe(false);
    draft.setup.chooseKey('A');
    expect(draft.exampleMisfits).toBe(false);
    expect(draft.sheet.ok && 'example' in draft.sheet.value.file).toBe(true);
  });

  it('is refused without notes, and what was given before stays', async () => {
    const w = await desk(overThese);
    w.desk.open();
    await w.desk.giveExample('over-these');
    await w.desk.giveExample('not-graded');
    expect(w.desk.notices.map(({ code }) => code)).toEqual(['sheet.example']);
    expect(w.desk.draft!.fields.example?.takeId).toBe('over-these');
  });

  it('stays with a sheet that is opened to be changed', async () => {
    const example = { notes: [[0, 1, 60]] };
    const w = await desk();
    await w.desk.editFile(new File([JSON.stringify({ ...SHEET, example })], 'roots.json'));
    const { sheet, fields } = w.desk.draft!;
    expect(sheet.ok && sheet.value.file.example).toEqual(example);
    expect(fields.example?.takeId).toBeNull();
  });
});

describe('a sheet that is opened to be changed', () => {
  it('keeps all that it has, the teacher’s own aims too', async () => {
    const w = await desk({ form: 'jazz blues', key: 'F' });
    await w.desk.editFile(new File([JSON.stringify(SHEET)], 'roots.json'));
    const again = w.desk.draft!.sheet;
    const first = readSheetFile(SHEET, 'roots');
    expect(again.ok && again.value.file).toEqual(first.ok && first.value.file);
    expect(again.ok && first.ok && again.value.mark === first.value.mark).toBe(true);
    expect(SHEET.aims.map(askedShare)).toEqual([
      0.6,
      HOUSE_AIMS.find(({ id }) => id === 'guide-tones')!.shareToReach,
    ]);
    w.desk.draft!.setShare('roots-first', 0.8);
    const changed = w.desk.draft!.sheet;
    expect(changed.ok && changed.value.aims[0]).toMatchObject({ id: 'roots-first', shareToReach: 0.8 });
  });

  it('is told where it can’t be read, and what is written stays', async () => {
    const w = await desk();
    w.desk.open();
    w.desk.draft!.change({ title: 'Mine' });
    await w.desk.editFile(new File(['no sheet'], 'x.json'));
    await w.desk.editFile(new File([new Uint8Array([0xff, 0, 1])], 'y.json'));
    expect(w.desk.notices.map(({ code }) => code)).toEqual(['sheet.notJson']);
    await w.desk.editFile(new File([new Uint8Array(SHEET_LIMITS.bytes + 1)], 'z.json'));
    expect(w.desk.notices.map(({ code }) => code)).toEqual(['sheet.tooLong']);
    expect(w.desk.draft!.fields.title).toBe('Mine');
  });
});
