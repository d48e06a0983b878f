import { describe, expect, it } from 'vitest';
import { chunkSounds } from '../../src/storage/chunk-sounds.ts';
import type { TakeSummary } from '../../src/storage/records.ts';
import { bad } from '../../src/core/base/outcome.ts';
import type { Problem } from '../../src/core/words/problem.ts';
import { details, freshDatabase, memoryLocks, memorySounds, ramp, takesOn, value } from './fakes.ts';

const summary: TakeSummary = {
  notes: 12,
  chordToneShare: 0.5,
  thirdShare: 0.25,
  landings: { count: 4, open: 1, chordTones: 2, thirds: 1 },
};
const never = () => {
  throw new Error('the disk is not full');
};

describe('a take', () => {
  it('comes back sample by sample, with its report and its first downbeat', async () => {
    const takes = takesOn(await freshDatabase(), memorySounds());
    const writer = value(await takes.begin(details, never));
    for (let i = 0; i < 20; i++) writer.append(ramp(1000, i * 1000));
    writer.change({ firstBeatSeconds: 1.25 });
    expect(await writer.finish()).toBeNull();
    await takes.saveReport(writer.id, { any: 'report' }, summary);
    const open = value(await takes.open(writer.id));
    expect(open.samples).toEqual(ramp(20_000));
    expect(open.details).toEqual({ ...details, firstBeatSeconds: 1.25 });
    expect(open.report).toEqual({ any: 'report' });
    expect((await takes.list()).takes).toEqual([
      { ...details, firstBeatSeconds: 1.25, id: writer.id, durationSeconds: 2.5, summary },
    ]);
  });

  it('keeps what was said of its notes; one of before that is read as it is', async () => {
    const takes = takesOn(await freshDatabase(), memorySounds());
    const writer = value(await takes.begin(details, never));
    writer.append(ramp(8000));
    await writer.finish();
    expect(value(await takes.open(writer.id)).details).not.toHaveProperty('noteChoices');
    const noteChoices = [{ onsetSeconds: 1.5, midi: 61.04, counts: false }];
    await takes.saveReport(writer.id, {}, summary, { noteChoices });
    expect(value(await takes.open(writer.id)).details).toEqual({ ...details, noteChoices });
    const corrections = [{ kind: 'pitch', of: { onsetSeconds: 1.5, midi: 61.04 }, midi: 62.04 }] as const;
    await takes.saveReport(writer.id, { after: 'corrections' }, summary, { corrections });
    expect(value(await takes.open(writer.id))).toMatchObject({
      details: { ...details, noteChoices, corrections },
      report: { after: 'corrections' },
    });
  });

  it('is listed newest first, renamed and removed with all that belongs to it', async () => {
    const db = await freshDatabase();
    const sounds = memorySounds();
    const takes = takesOn(db, sounds);
    const ids: string[] = [];
    for (const day of ['01', '03', '02']) {
      const writer = value(
        await takes.begin({ ...details, startedAt: `2026-03-${day}T10:00:00.000Z` }, never),
      );
      writer.append(ramp(8000));
      await writer.finish();
      ids.push(writer.id);
    }
    expect((await takes.list()).takes.map((t) => t.id)).toEqual([ids[1], ids[2], ids[0]]);
    await takes.mark(ids[0]!, { name: 'The good one', starred: true });
    expect((await takes.list()).takes.at(-1)).toMatchObject({ name: 'The good one', starred: true });
    expect((await takes.list()).takes[0]).not.toHaveProperty('name');
    await takes.saveReport(ids[0]!, {}, summary);
    await takes.remove(ids[0]!);
    expect((await takes.list()).takes).toHaveLength(2);
    expect(sounds.files.has(ids[0]!)).toBe(false);
    expect(await db.getAllKeys('reports')).toEqual([]);
    const gone = await takes.open(ids[0]!);
    expect(gone.ok).toBe(false);
  });
});

describe('a take that was cut off', () => {
  it('keeps every half second that was appended, and is offered once nobody holds it', async () => {
    const sounds = memorySounds();
    const locks = memoryLocks();
    const db = await freshDatabase();
    const playing = takesOn(db, sounds, locks);
    const writer = value(await playing.begin(details, never));
    writer.change({ firstBeatSeconds: 0.5 });
    writer.append(ramp(8000 * 3 + 3999));
    await new Promise((resolve) => setTimeout(resolve, 20));
    // Another page of the same browser does not touch what is being played.
    expect(await takesOn(db, sounds, locks).unfinished()).toEqual([]);
    // The page dies: its locks are gone, `finish` was never called.
    const after = takesOn(db, sounds);
    const [cut] = await after.unfinished();
    expect(cut).toEqual({
      id: writer.id,
      details: { ...details, firstBeatSeconds: 0.5 },
      durationSeconds: 3,
    });
    expect((await after.list()).takes).toEqual([]);
    // Grading it makes it whole.
    await after.saveReport(cut!.id, {}, summary);
    expect(await after.unfinished()).toEqual([]);
    expect((await after.list()).takes[0]?.durationSeconds).toBe(3);
    expect(value(await after.open(cut!.id)).samples).toEqual(ramp(24_000));
  });

  it('is never taken for one that was cut off while it begins: another page looks between any two steps', async () => {
    for (const source of ['microphone', 'midi'] as const) {
      const db = await freshDatabase();
      const sounds = memorySounds();
      const locks = memoryLocks();
      const looks = async () => void expect(await takesOn(db, sounds, locks).unfinished()).toEqual([]);
      const after =
        <A extends unknown[], R>(step: (...given: A) => Promise<R>) =>
        async (...given: A): Promise<R> => {
          const done = await step(...given);
          await looks();
          return done;
        };
      const playing = takesOn(
        db,
        { ...sounds, create: after(sounds.create) },
        { ...locks, hold: after(locks.hold) },
      );
      const writer =
        source === 'midi'
          ? value(await playing.beginNotes(details, never))
          : value(await playing.begin(details, never));
      await looks();
      expect(await db.getAllKeys('takes')).toEqual([writer.id]);
    }
  });

  it('holds nothing where it could not be begun', async () => {
    const locks = memoryLocks();
    const refusing = { ...memorySounds(), create: async () => bad('storage.unreachable') };
    const takes = takesOn(await freshDatabase(), refusing, locks);
    expect((await takes.begin(details, never)).ok).toBe(false);
    expect(await locks.held()).toEqual(new Set());
  });

  it('that holds nothing is removed', async () => {
    const db = await freshDatabase();
    value(await takesOn(db, memorySounds()).begin(details, never));
    expect(await db.getAllKeys('takes')).toHaveLength(1);
    expect(await takesOn(db, memorySounds()).unfinished()).toEqual([]);
    expect(await db.getAllKeys('takes')).toEqual([]);
  });
});

describe('the band beside a take', () => {
  const path = { heldBackSamples: 400, taps: Float32Array.from([0, 0.5, 0.25]) };

  it('is kept frame by frame where it is taken out, with the path it came by', async () => {
    const sounds = memorySounds();
    const takes = takesOn(await freshDatabase(), sounds);
    const writer = value(await takes.begin({ ...details, path, bandKept: true }, never));
    for (let i = 0; i < 9; i++)
      writer.append(ramp(1000, i * 1000), i % 3 === 1 ? null : ramp(1000, -i * 1000));
    expect(await writer.finish()).toBeNull();
    const open = value(await takes.open(writer.id));
    expect(open.samples).toEqual(ramp(9000));
    const silent = new Int16Array(1000);
    const band = Array.from({ length: 9 }, (_, i) => (i % 3 === 1 ? silent : ramp(1000, -i * 1000)));
    expect([...open.band!]).toEqual(band.flatMap((piece) => [...piece]));
    expect(open.details.path).toEqual(path);
    await takes.remove(writer.id);
    expect(sounds.files.size).toBe(0);
  });

  it('is not there for a take without one, and takes no room', async () => {
    const sounds = memorySounds();
    const takes = takesOn(await freshDatabase(), sounds);
    const writer = value(await takes.begin(details, never));
    writer.append(ramp(8000), ramp(8000));
    await writer.finish();
    expect(value(await takes.open(writer.id)).band).toBeNull();
    expect([...sounds.files.keys()]).toEqual([writer.id]);
  });

  it('cut off, sound and band are as long as each other', async () => {
    const sounds = memorySounds();
    const takes = takesOn(await freshDatabase(), sounds);
    const writer = value(await takes.begin({ ...details, path, bandKept: true }, never));
    writer.append(ramp(13_500), ramp(13_500));
    await new Promise((resolve) => setTimeout(resolve, 20));
    const open = value(await takes.open(writer.id));
    expect(open.samples).toEqual(ramp(12_000));
    expect(open.band).toEqual(ramp(12_000));
  });
});

describe('what becomes known while it is played', () => {
  it('is gathered and written in its turn, the newest of each', async () => {
    const takes = takesOn(await freshDatabase(), memorySounds());
    const writer = value(await takes.begin(details, never));
    const levels = { all: -20, drums: 0, bass: 0, chords: 0, line: 0, click: 0 };
    writer.append(ramp(8000));
    writer.change({ firstBeatSeconds: 1 });
    writer.change({ lost: [{ atSeconds: 0.5, seconds: 0.02 }] });
    writer.change({ firstBeatSeconds: 1.25, levels });
    await writer.finish();
    expect(value(await takes.open(writer.id)).details).toEqual({
      ...details,
      firstBeatSeconds: 1.25,
      levels,
      lost: [{ atSeconds: 0.5, seconds: 0.02 }],
    });
  });
});

describe('a take on a MIDI instrument', () => {
  const played = { ...details, source: 'midi' as const };
  const message = (seconds: number, ...bytes: number[]) => ({ seconds, bytes });
  const messages = [message(2, 0x90, 60, 100), message(2.4, 0x80, 60, 0), message(3, 0x90, 62, 90)];

  it('comes back message by message, as long as it was', async () => {
    const db = await freshDatabase();
    const takes = takesOn(db, memorySounds());
    const writer = value(await takes.beginNotes(played, never));
    for (const one of messages) writer.append(one);
    writer.change({ firstBeatSeconds: 1.5 });
    expect(await writer.finish(4.5)).toBeNull();
    const open = value(await takes.open(writer.id));
    expect(open.messages).toEqual(messages);
    expect(open.durationSeconds).toBe(4.5);
    expect(open.details.firstBeatSeconds).toBe(1.5);
    expect((await takes.list()).takes).toMatchObject([{ source: 'midi', durationSeconds: 4.5 }]);
    await takes.saveReport(writer.id, { any: 'report' }, summary);
    expect((await takes.list()).takes).toMatchObject([{ durationSeconds: 4.5, summary }]);
    await takes.remove(writer.id);
    expect(await db.getAllKeys('messages')).toEqual([]);
  });

  it('keeps what was played when the page is closed', async () => {
    const db = await freshDatabase();
    const locks = memoryLocks();
    const writer = value(await takesOn(db, memorySounds(), locks).beginNotes(played, never));
    for (const one of messages) {
      writer.append(one);
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    expect(await takesOn(db, memorySounds(), locks).unfinished()).toEqual([]);
    const after = takesOn(db, memorySounds());
    expect(await after.unfinished()).toMatchObject([{ id: writer.id, durationSeconds: 3 }]);
    expect(value(await after.open(writer.id)).messages).toEqual(messages);
  });

  it('is removed when nothing was played in it', async () => {
    const db = await freshDatabase();
    value(await takesOn(db, memorySounds()).beginNotes(played, never));
    expect(await takesOn(db, memorySounds()).unfinished()).toEqual([]);
    expect(await db.getAllKeys('takes')).toEqual([]);
  });

  it('reports once that it can no longer be written', async () => {
    const db = await freshDatabase();
    const said: Problem[] = [];
    const writer = value(
      await takesOn(db, memorySounds()).beginNotes(played, (problem) => said.push(problem)),
    );
    db.close();
    for (const one of messages) writer.append(one);
    expect(await writer.finish(4)).toEqual({ code: 'storage.unreachable' });
    expect(said).toHaveLength(1);
  });
});

describe('a full disk', () => {
  it('says so once, keeps what fitted and offers it as cut off', async () => {
    const db = await freshDatabase();
    const sounds = memorySounds(10_000);
    const takes = takesOn(db, sounds);
    const said: Problem[] = [];
    const writer = value(await takes.begin(details, (problem) => said.push(problem)));
    for (let i = 0; i < 30; i++) writer.append(ramp(1000, i * 1000));
    expect(await writer.finish()).toEqual({ code: 'storage.diskFull' });
    expect(said).toEqual([{ code: 'storage.diskFull' }]);
    expect(sounds.files.get(writer.id)).toEqual(ramp(8000));
    expect(await takes.unfinished()).toMatchObject([{ id: writer.id, durationSeconds: 1 }]);
  });
});

describe('a broken record', () => {
  it('is reported, and the other records are kept', async () => {
    const db = await freshDatabase();
    const sounds = memorySounds();
    const takes = takesOn(db, sounds);
    const writer = value(await takes.begin(details, never));
    writer.append(ramp(8000));
    await writer.finish();
    await db.put('takes', { id: 'odd', details: { bpm: 'fast' } }, 'odd');
    sounds.files.set('odd', ramp(10));
    const { takes: listed, messages } = await takes.list();
    expect(listed.map((t) => t.id)).toEqual([writer.id]);
    expect(messages).toEqual([{ code: 'take.unreadable', facts: { id: 'odd' } }]);
    await takes.unfinished();
    expect((await takes.open('odd')).ok).toBe(false);
    expect(sounds.files.get('odd')).toEqual(ramp(10));
  });

  it('of a closed database answers with a sentence instead of throwing', async () => {
    const db = await freshDatabase();
    const takes = takesOn(db, memorySounds());
    db.close();
    expect((await takes.begin(details, never)).ok).toBe(false);
    expect((await takes.list()).messages).toHaveLength(1);
    expect(await takes.unfinished()).toEqual([]);
    expect((await takes.mark('x', { name: 'y' })).ok).toBe(false);
  });
});

describe('sound as chunks in the database', () => {
  it('is kept per take, in order, and removed alone', async () => {
    const db = await freshDatabase();
    const takes = takesOn(db, chunkSounds(db));
    const [one, two] = [value(await takes.begin(details, never)), value(await takes.begin(details, never))];
    for (let i = 0; i < 15; i++) {
      one.append(ramp(2000, i * 2000));
      two.append(ramp(2000, -i * 2000));
    }
    await one.finish();
    await two.finish();
    await takes.remove(two.id);
    expect(value(await takes.open(one.id)).samples).toEqual(ramp(30_000));
    expect((await db.getAllKeys('chunks')).every(([id]) => id === one.id)).toBe(true);
  });
});
