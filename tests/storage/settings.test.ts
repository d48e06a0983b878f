import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { Charts } from '../../src/storage/charts.ts';
import { SettingsStore } from '../../src/storage/settings.ts';
import { freshDatabase } from './fakes.ts';

const fields = { bpm: v.number(), key: v.string() };
const usual = { bpm: 100, key: 'A' };

describe('settings', () => {
  it('are the usual ones at first, then what was saved last', async () => {
    const db = await freshDatabase();
    const store = new SettingsStore(db, 'setup', fields, usual);
    expect(await store.load()).toEqual({ value: usual, messages: [] });
    for (let bpm = 60; bpm < 70; bpm++) store.save({ bpm, key: 'Bb' });
    await store.settled();
    expect(await store.load()).toEqual({ value: { bpm: 69, key: 'Bb' }, messages: [] });
  });

  it('mend one broken field and keep the others; unknown ones are left out, missing ones filled', async () => {
    const db = await freshDatabase();
    const store = new SettingsStore(db, 'setup', fields, usual);
    await db.put('settings', { bpm: 'quick', key: 'F', colour: 'red' }, 'setup');
    const broken = await store.load();
    expect(broken.value).toEqual({ bpm: 100, key: 'F' });
    expect(broken.messages).toHaveLength(1);
    expect(broken.messages).toEqual([{ code: 'storage.settingUnreadable', facts: { fields: ['bpm'] } }]);
    await db.put('settings', { bpm: 80 }, 'setup');
    expect(await store.load()).toEqual({ value: { bpm: 80, key: 'A' }, messages: [] });
    await db.put('settings', 'rubbish', 'setup');
    expect((await store.load()).value).toEqual(usual);
  });
});

describe('own charts', () => {
  it('are kept by title; a broken one gets a sentence', async () => {
    const db = await freshDatabase();
    const charts = new Charts(db);
    await charts.save({ id: '2', title: 'Slow one', chartText: '| C |', key: 'C' });
    await charts.save({ id: '1', title: 'Fast one', chartText: '| G7 |', key: 'G' });
    await db.put('charts', { id: '3' }, '3');
    const { charts: kept, messages } = await charts.list();
    expect(kept.map((chart) => chart.title)).toEqual(['Fast one', 'Slow one']);
    expect(messages).toHaveLength(1);
    await charts.remove('3');
    expect((await charts.list()).messages).toEqual([]);
  });
});
