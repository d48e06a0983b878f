/** A teacher writes a lesson sheet: from what is on the stand, or from a sheet that is there; it leaves as file and link. */
import { describe, expect, it } from 'vitest';
import { HOUSE_AIMS } from '../../src/core/grade/aims/targets.ts';
import { readSheetFragment } from '../../src/core/lesson/sheet-link.ts';
import { readSheet, readSheetFile, SHEET_LIMITS } from '../../src/core/lesson/sheet.ts';
import { askedShare } from '../../src/state/sheet-draft.svelte.ts';
import { SheetDesk } from '../../src/state/sheet-desk.svelte.ts';
import { Setup } from '../../src/state/setup.svelte.ts';
import { english } from '../english.ts';
import { fakeSettings } from './world.ts';

async function desk(settings: Parameters<typeof fakeSettings>[0] = {}) {
  const saved: { blob: Blob; fileName: string }[] = [];
  const setup = new Setup({ settings: fakeSettings(settings) });
  await setup.load();
  const files = { save: (blob: Blob, fileName: string) => void saved.push({ blob, fileName }) };
  return { desk: new SheetDesk({ setup, files }), setup, saved };
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
