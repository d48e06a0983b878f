/**
 * Stores as earlier versions wrote them (fixtures/stores, written by the code of those versions) are opened by today's:
 * takes with their sound, cut-off takes, charts and recordings, and the takes go on into a file and back.
 */
import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { readKeptReport } from '../../src/core/kept-report.ts';
import { readTakeFile } from '../../src/core/take-file/read-take-file.ts';
import { Backings } from '../../src/storage/backings.ts';
import { Charts } from '../../src/storage/charts.ts';
import { chunkSounds } from '../../src/storage/chunk-sounds.ts';
import { DATABASE_VERSION, openDatabase } from '../../src/storage/database.ts';
import { fileOf, soundOf, sourceOf } from '../core/take-file/made-take.ts';
import { ramp, takesOn, value } from './fakes.ts';

interface Store {
  readonly version: number;
  readonly stores: Readonly<Record<string, readonly (readonly [IDBValidKey, unknown])[]>>;
}

/** What JSON has not is written as an object with one field. */
function revived(_: string, of: unknown): unknown {
  if (typeof of !== 'object' || of === null) return of;
  if ('int16' in of) return Int16Array.from(of.int16 as number[]);
  if ('float32' in of) return Float32Array.from(of.float32 as number[]);
  return 'bytes' in of && Object.keys(of).length === 1 && typeof (of.bytes as unknown[])[0] === 'number'
    ? Uint8Array.from(of.bytes as number[]).buffer
    : of;
}

const fixture = (version: number) =>
  JSON.parse(
    readFileSync(new URL(`../../fixtures/stores/version-${version}.json`, import.meta.url), 'utf8'),
    revived,
  ) as Store;

/** The database as it lay on the machine, opened by today's program. */
async function opened(version: number) {
  const { version: written, stores } = fixture(version);
  expect(written).toBe(version);
  const name = `earlier-${version}-${Math.random()}`;
  const old = await openDB(name, version, {
    upgrade: (db) => {
      for (const store of Object.keys(stores)) db.createObjectStore(store);
    },
  });
  for (const [store, records] of Object.entries(stores))
    for (const [key, record] of records) await old.put(store, record, key);
  old.close();
  return value(await openDatabase(name));
}

const versions = Array.from({ length: DATABASE_VERSION }, (_, i) => i + 1);

describe.each(versions)('a store of version %i', (version) => {
  it('has its takes, their sound and their grade', async () => {
    const db = await opened(version);
    const takes = takesOn(db, chunkSounds(db));
    const { takes: cards, messages } = await takes.list();
    expect(messages).toEqual([]);
    expect(cards.map(({ source }) => source)).toEqual(version >= 2 ? ['midi', 'microphone'] : ['microphone']);
    const stored = value(await takes.open('take-0'));
    expect([...stored.samples]).toEqual([...ramp(9000)]);
    expect(stored.details).toMatchObject({ title: 'Blues in A', firstBeatSeconds: 0.5, bpm: 96 });
    expect(readKeptReport(stored)).toMatchObject({ ok: true, value: { version: 2 } });
    if (version < 2) return;
    expect(stored.band?.[5]).toBe(-5);
    expect(stored.details.path?.taps).toEqual(Float32Array.from([0.5, -0.25]));
    expect(value(await takes.open(cards[0]!.id)).messages).toHaveLength(2);
  });

  it('offers the take that was cut off', async () => {
    const db = await opened(version);
    const cut = await takesOn(db, chunkSounds(db)).unfinished();
    expect(cut).toMatchObject([{ id: 'take-1', durationSeconds: 0.5 }]);
  });

  it('has its charts and recordings', async () => {
    const db = await opened(version);
    expect(await new Charts(db).list()).toMatchObject({ charts: [{ title: 'Mine' }], messages: [] });
    const { backings, messages } = await new Backings(db).list();
    expect(messages).toEqual([]);
    expect(backings.map(({ title }) => title)).toEqual(version >= 3 ? ['Loop'] : []);
  });

  it('gives its takes away as files', async () => {
    const db = await opened(version);
    const { durationSeconds, ...stored } = value(await takesOn(db, chunkSounds(db)).open('take-0'));
    const frames = Math.round(durationSeconds * stored.details.sampleRate);
    const read = await readTakeFile(sourceOf(fileOf({ ...stored, frames })));
    if (!read.ok) throw new Error(read.problem.code);
    expect(await soundOf(read.value.line)).toEqual([...ramp(9000)]);
    expect(read.value.report).toMatchObject({ version: 2 });
  });
});
