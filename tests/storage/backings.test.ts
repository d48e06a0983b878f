/** Recordings that are kept: the file byte for byte, what is known about it, and broken records. */
import { describe, expect, test } from 'vitest';
import { Backings } from '../../src/storage/backings.ts';
import type { BackingRecord } from '../../src/storage/backing-record.ts';
import { english } from '../english.ts';
import { freshDatabase, value } from './fakes.ts';

const record: BackingRecord = {
  id: 'one',
  title: 'Minor groove',
  fileName: 'groove.wav',
  durationSeconds: 63.2,
  chartText: '| Cm7 | Fm7 |',
  beats: [0.5, 1.1, 1.68],
  pinned: [1],
  downbeat: 0,
  swing: 0.5,
  referenceHz: 440,
  speed: 0.75,
  cents: -12,
  bars: null,
};

describe('recordings', () => {
  test('are found again with their file, and go together', async () => {
    let asked = 0;
    const store = new Backings(await freshDatabase(), () => asked++);
    const bytes = new Uint8Array([1, 2, 3, 250]);
    value(await store.keepFile('one', new Blob([bytes])));
    expect(asked).toBe(1);
    value(await store.save(record));
    expect((await store.list()).backings).toEqual([record]);
    const file = value(await store.file('one'));
    expect(new Uint8Array(await file.arrayBuffer())).toEqual(bytes);
    value(await store.remove('one'));
    expect((await store.list()).backings).toEqual([]);
    const gone = await store.file('one');
    expect(!gone.ok && english(gone.problem)).toMatch(/open its file/);
  });

  test('beats that are not in order are told, and the others stay', async () => {
    const db = await freshDatabase();
    const store = new Backings(db);
    value(await store.save(record));
    await db.put('backings', { ...record, id: 'two', beats: [1, 0.5] }, 'two');
    const { backings, messages } = await store.list();
    expect(backings.map(({ id }) => id)).toEqual(['one']);
    expect(messages).toHaveLength(1);
  });

  test('a full disk is said in a sentence of its own', async () => {
    const put = () => Promise.reject(new DOMException('full', 'QuotaExceededError'));
    const store = new Backings({ put } as unknown as Awaited<ReturnType<typeof freshDatabase>>);
    const kept = await store.keepFile('one', new Blob(['x']));
    expect(!kept.ok && english(kept.problem)).toMatch(/no space/);
  });
});
