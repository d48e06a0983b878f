/** Takes come in from files and go out in one: whole or not at all, none twice, as they were. */
import { unzipSync } from 'fflate';
import { describe, expect, it, vi } from 'vitest';
import { bad, good } from '../../src/core/base/outcome.ts';
import { chance } from '../../src/core/base/random.ts';
import type { TakeToWrite } from '../../src/core/take-file/take-file.ts';
import { sortFiles } from '../../src/state/class-file.ts';
import { Library } from '../../src/state/library.svelte.ts';
import { LibraryFiles } from '../../src/state/library-files.svelte.ts';
import { Arrivals } from '../../src/storage/arrivals.ts';
import type { Sounds } from '../../src/storage/sounds.ts';
import { fileOf, joined, madeTake } from '../core/take-file/made-take.ts';
import { freshDatabase, memoryLocks, memorySounds, takesOn, value } from '../storage/fakes.ts';
import { processorTime } from '../processor-time.ts';

/** A machine with its takes. */
async function machine({ room = Infinity, sinkRoom = Infinity } = {}) {
  const db = await freshDatabase();
  const sounds = memorySounds(room);
  const locks = memoryLocks();
  const takes = takesOn(db, sounds, locks);
  const arrivals = new Arrivals({ db, sounds, locks, askToStay: () => undefined });
  const library = new Library({ takes });
  const written: Uint8Array<ArrayBuffer>[] = [];
  const ends: string[] = [];
  const files = {
    open: async () =>
      good({
        write: async (parts: readonly Uint8Array<ArrayBuffer>[]) => {
          if (joined([...written, ...parts]).length > sinkRoom) return bad('storage.diskFull');
          written.push(...parts);
          return good(undefined);
        },
        close: async () => good(void ends.push('closed')),
        giveUp: async () => void ends.push('given up'),
      }),
  };
  const today = () => new Date('2026-04-01T12:00:00Z');
  const libraryFiles = new LibraryFiles({ takes, arrivals, files, library, today });
  await library.load();
  return { db, sounds, locks, takes, arrivals, library, libraryFiles, written, ends };
}

const file = (bytes: Uint8Array<ArrayBuffer>, name = 'a.landfall') => new File([bytes], name);
const take = (n: number, change: Partial<TakeToWrite> = {}): TakeToWrite => {
  const made = madeTake({ id: `take-of-${n}`, ...change });
  const startedAt = new Date(Date.UTC(2026, 2, 1, 10, n)).toISOString();
  return { ...made, details: { ...made.details, startedAt, name: `number ${n}`, ...change.details } };
};
/** Sample by sample; comparing them one by one in the test runner takes seconds. */
const expectSame = (a: Int16Array | null, b: Int16Array | null) => {
  const bytes = (samples: Int16Array | null) =>
    Buffer.from(samples?.buffer ?? new ArrayBuffer(0), samples?.byteOffset, samples?.byteLength);
  expect(bytes(a).equals(bytes(b))).toBe(true);
};
const codes = ({ libraryFiles }: { libraryFiles: LibraryFiles }) =>
  libraryFiles.notices.map(({ code }) => code);

describe('a take file that is opened', () => {
  it('is among the takes as it was: sound, band, report, name, star, set-up, what was said of notes', async () => {
    const here = await machine();
    const sent = take(1);
    const id = await here.libraryFiles.bringIn([file(fileOf(sent))]);
    expect(id).toBe('take-of-1');
    const stored = value(await here.takes.open(id!));
    expect(stored).toMatchObject({ details: sent.details, report: sent.report, messages: null });
    expectSame(stored.samples, sent.samples);
    expectSame(stored.band, sent.band);
    expect(here.library.takes[0]).toMatchObject({
      name: 'number 1',
      starred: true,
      durationSeconds: sent.frames / 8000,
      summary: { notes: expect.any(Number) as number, counts: { changes: expect.any(Array) as unknown[] } },
    });
  });

  it('is there once, however often it is opened, and stays as the player has changed it here', async () => {
    const here = await machine();
    const sent = file(fileOf(take(1)));
    await here.libraryFiles.bringIn([sent]);
    await here.library.mark('take-of-1', { name: 'mine' });
    expect(await here.libraryFiles.bringIn([sent, sent])).toBeNull();
    expect(here.library.takes.map(({ name }) => name)).toEqual(['mine']);
    expect(here.libraryFiles.notices).toEqual([
      { code: 'library.cameIn', facts: { fresh: 0, sounds: 0, here: 2 } },
    ]);
  });

  it('that has the id of another take stands beside it, once', async () => {
    const here = await machine();
    await here.libraryFiles.bringIn([file(fileOf(take(1)))]);
    const other = file(fileOf(take(2, { id: 'take-of-1' })));
    await here.libraryFiles.bringIn([other]);
    await here.libraryFiles.bringIn([other]);
    expect(here.library.takes.map(({ name }) => name)).toEqual(['number 2', 'number 1']);
  });

  it('gives back the sound that had been removed to make room', async () => {
    const here = await machine();
    const sent = take(1);
    await here.libraryFiles.bringIn([file(fileOf(sent))]);
    expect(await here.takes.soundBytes('take-of-1')).toBe(2 * (sent.samples.length + sent.band!.length));
    value(await here.takes.removeSound('take-of-1'));
    expect(here.sounds.files.size).toBe(0);
    const silent = value(await here.takes.open('take-of-1'));
    expect(silent).toMatchObject({ durationSeconds: sent.frames / 8000, report: sent.report });
    expect(silent.samples).toHaveLength(0);
    await here.libraryFiles.bringIn([file(fileOf(sent))]);
    expectSame(value(await here.takes.open('take-of-1')).samples, sent.samples);
    expect(value(await here.takes.open('take-of-1')).details).toEqual(sent.details);
  });

  it('that is bad changes nothing and is told; the others come in all the same', async () => {
    const here = await machine();
    const cut = fileOf(take(2)).slice(0, 90_000);
    const hostile = Array.from({ length: 12 }, (_, seed) => {
      const bytes = fileOf(take(3));
      const random = chance(seed);
      for (let n = 0; n < 40; n++) bytes[Math.floor(random.next() * bytes.length)] = n;
      return file(bytes, `bad ${seed}.landfall`);
    });
    await here.libraryFiles.bringIn([file(cut, 'cut.landfall'), ...hostile, file(fileOf(take(1)))]);
    expect(here.library.takes.map(({ id }) => id)).toEqual(['take-of-1']);
    expect(await here.db.getAllKeys('reports')).toEqual(['take-of-1']);
    expect([...here.sounds.files.keys()].sort()).toEqual(['take-of-1', 'take-of-1-band']);
    expect(codes(here).at(-1)).toBe('library.cameIn');
    expect(codes(here)[0]).toBe('archive.cutShort');
  });

  it('that is a recording or a text is told where such files are opened', async () => {
    const here = await machine();
    await here.libraryFiles.bringIn([new File(['RIFF'], 'horn.wav'), new File(['hello'], 'readme.txt')]);
    expect(codes(here)).toEqual(['takeFile.noTakes', 'takeFile.noTakes']);
  });

  it('that was changed since it was chosen is told, and the others come in', async () => {
    const here = await machine();
    // File API (W3C): a file whose state on the disk has changed is refused with NotReadableError.
    const changed = file(fileOf(take(1)), 'changed.landfall');
    const refuse = () => Promise.reject(new DOMException('changed', 'NotReadableError'));
    changed.slice = () => Object.assign(new Blob(), { arrayBuffer: refuse });
    await here.libraryFiles.bringIn([changed, file(fileOf(take(2)))]);
    expect(codes(here)).toEqual(['file.gone', 'library.cameIn']);
    expect(here.libraryFiles.busy).toBeNull();
    expect(here.library.takes.map(({ id }) => id)).toEqual(['take-of-2']);
    const sorted = await sortFiles([
      { path: 'changed.zip', file: Object.assign(changed, { text: refuse }) },
      { path: 'changed.json', file: changed },
      { path: 'whole.wav', file: new File(['RIFF'], 'whole.wav') },
    ]);
    expect(sorted.failed.map(({ path, problem }) => [path, problem.code])).toEqual([
      ['changed.json', 'file.gone'],
      ['changed.zip', 'file.gone'],
    ]);
    expect(sorted.takes.map(({ path }) => path)).toEqual(['whole.wav']);
  });

  it('leaves nothing behind where the disk is full', async () => {
    const here = await machine({ room: 60_000 });
    await here.libraryFiles.bringIn([file(fileOf(take(1)))]);
    expect(codes(here)).toEqual(['storage.diskFull']);
    expect(await here.db.getAllKeys('takes')).toEqual([]);
    expect(here.sounds.files.size).toBe(0);
  });
});

describe('a browser that is killed while takes come in', () => {
  it.each([0, 1, 2, 3, 5, 8, 13, 21, 34, 50])(
    'after %i writes: each take is whole or gone',
    async (writes) => {
      const here = await machine();
      // The twentieth of a second in which it dies: from then on nothing is written, and nothing returns.
      let left = writes;
      const dying: Sounds = {
        ...here.sounds,
        create: async (id) => {
          const writer = value(await here.sounds.create(id));
          return good({
            ...writer,
            append: (samples) => (left-- > 0 ? writer.append(samples) : new Promise<never>(() => undefined)),
          });
        },
      };
      const dead = new Arrivals({
        db: here.db,
        sounds: dying,
        locks: memoryLocks(),
        askToStay: () => undefined,
      });
      const sent = [1, 2, 3].map((n) => take(n));
      const arriving = (async () => {
        for (const one of sent) {
          const pieces = async function* (all: Int16Array) {
            for (let at = 0; at < all.length; at += 8000) yield all.slice(at, at + 8000);
          };
          await dead.bringIn({ ...one, summary: null, line: pieces(one.samples), band: pieces(one.band!) });
        }
      })();
      await Promise.race([arriving, new Promise((resolve) => setTimeout(resolve, 150))]);
      // The next start: what was broken off is put away, and the rest is whole.
      expect(await here.takes.unfinished()).toEqual([]);
      await here.library.load();
      for (const { id } of here.library.takes) {
        const one = sent.find((other) => other.id === id)!;
        const stored = value(await here.takes.open(id));
        expectSame(stored.samples, one.samples);
        expectSame(stored.band, one.band);
        expect(stored.report).toEqual(one.report);
      }
      expect(here.library.takes.length).toBe(Math.min(3, Math.floor(writes / 18)));
      expect(here.sounds.files.size).toBe(2 * here.library.takes.length);
      // And the file is brought in again without a double.
      await here.libraryFiles.bringIn(sent.map((one) => file(fileOf(one))));
      expect(here.library.takes.map(({ id }) => id)).toEqual(['take-of-3', 'take-of-2', 'take-of-1']);
    },
  );
});

describe('two pages of one browser', () => {
  const arriving = (one: TakeToWrite, line = [one.samples]) => ({
    ...one,
    summary: null,
    line: (async function* () {
      yield* line;
    })(),
    band: null,
  });

  it('bring the same take in at the same time: it is there once', async () => {
    const { db, sounds, locks, arrivals, library } = await machine();
    const other = new Arrivals({ db, sounds, locks, askToStay: () => undefined });
    const one = take(1);
    const both = await Promise.all([arrivals.bringIn(arriving(one)), other.bringIn(arriving(one))]);
    expect(both.map((arrival) => value(arrival).was)).toEqual(['new', 'here']);
    await library.load();
    expect(library.takes).toHaveLength(1);
  });

  it('a take that has come in whole while the other page looked at the list is not removed', async () => {
    const here = await machine();
    let comesIn: () => void = () => undefined;
    const waits = new Promise<void>((resolve) => (comesIn = resolve));
    const one = take(1);
    const coming = here.arrivals.bringIn({
      ...arriving(one),
      line: (async function* () {
        await waits;
        yield one.samples;
      })(),
    });
    await expect.poll(async () => (await here.db.getAllKeys('takes')).length).toBe(1);
    let hasRead = false;
    const { getAll } = IDBObjectStore.prototype;
    vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(function (this: IDBObjectStore) {
      hasRead = true;
      return getAll.call(this);
    });
    const held = async () => {
      if (hasRead) {
        comesIn();
        await coming;
      }
      return here.locks.held();
    };
    expect(await takesOn(here.db, here.sounds, { ...here.locks, held }).unfinished()).toEqual([]);
    vi.restoreAllMocks();
    await here.library.load();
    expect(here.library.takes).toHaveLength(1);
  });
});

describe('all takes in one file', () => {
  const messages = [
    { seconds: 0.5, bytes: [0x90, 60, 100] },
    { seconds: 1, bytes: [0x80, 60, 0] },
  ];
  const midi = () => {
    const made = take(4);
    return {
      ...made,
      messages,
      samples: new Int16Array(0),
      band: null,
      details: { ...made.details, source: 'midi' as const },
    };
  };

  it('are take files that another machine takes in, without doubles', async () => {
    const here = await machine();
    await here.libraryFiles.bringIn([take(1), take(2), midi()].map((one) => file(fileOf(one))));
    await here.libraryFiles.saveAll();
    expect(here.ends).toEqual(['closed']);
    const library = joined(here.written);
    expect(Object.keys(unzipSync(library))).toEqual([
      'landfall 2026-03-01 10-04 number 4.landfall',
      'landfall 2026-03-01 10-02 number 2.landfall',
      'landfall 2026-03-01 10-01 number 1.landfall',
    ]);
    const there = await machine();
    await there.libraryFiles.bringIn([file(fileOf(take(2)))]);
    await there.libraryFiles.bringIn([file(library, 'landfall 2026-04-01.zip')]);
    expect(there.libraryFiles.notices).toEqual([
      { code: 'library.cameIn', facts: { fresh: 2, sounds: 0, here: 1 } },
    ]);
    expect(there.library.takes).toEqual(here.library.takes);
    for (const { id } of here.library.takes)
      expect(value(await there.takes.open(id))).toEqual(value(await here.takes.open(id)));
  });

  it('leave no half file where the player stops', async () => {
    const here = await machine();
    await here.libraryFiles.bringIn([take(1), take(2)].map((one) => file(fileOf(one))));
    const saving = here.libraryFiles.saveAll();
    here.libraryFiles.stop();
    await saving;
    expect(here.ends).toEqual(['given up']);
    expect(here.libraryFiles.busy).toBeNull();
    await here.libraryFiles.saveAll();
    expect(here.ends).toEqual(['given up', 'closed']);
  });

  it('leave no half file where the disk is full', async () => {
    const here = await machine({ sinkRoom: 300_000 });
    await here.libraryFiles.bringIn([take(1), take(2)].map((one) => file(fileOf(one))));
    await here.libraryFiles.saveAll();
    expect(here.ends).toEqual(['given up']);
    expect(codes(here)).toEqual(['storage.diskFull']);
  });

  it('three hundred are listed in under a second', async () => {
    const here = await machine();
    await here.libraryFiles.bringIn([file(fileOf(take(0)))]);
    const { summary } = here.library.takes[0]!;
    for (let n = 1; n < 300; n++) {
      const { details, frames } = take(n % 60, { id: `take-of-${n}` });
      await here.db.put(
        'takes',
        { id: `take-of-${n}`, details, frames, finished: true, summary },
        `take-of-${n}`,
      );
    }
    const { milliseconds } = await processorTime(() => here.library.load());
    expect(here.library.takes).toHaveLength(300);
    expect(milliseconds).toBeLessThan(1000);
  });
});
