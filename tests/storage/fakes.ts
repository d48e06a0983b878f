import { english } from '../english.ts';
import 'fake-indexeddb/auto';
import { bad, good, type Outcome } from '../../src/core/base/outcome.ts';
import { openDatabase, type Database } from '../../src/storage/database.ts';
import type { TakeDetails } from '../../src/core/take/details-schema.ts';
import type { Sounds } from '../../src/storage/sounds.ts';
import type { Locks } from '../../src/storage/locks.ts';
import { Takes } from '../../src/storage/takes.ts';

export const details: TakeDetails = {
  title: 'Blues in A',
  startedAt: '2026-03-01T10:00:00.000Z',
  source: 'microphone',
  chartText: '| A7 | D7 | A7 | E7 |',
  key: 'A',
  bpm: 96,
  feel: 'shuffle',
  swing: 0.62,
  reference: 440,
  sampleRate: 8000,
  firstBeatSeconds: null,
};

export const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.problem));
  return outcome.value;
};

let count = 0;
export const freshDatabase = async (): Promise<Database> => value(await openDatabase(`test-${count++}`));

/** A disk in memory that holds so many samples and no more. */
export function memorySounds(room = Infinity): Sounds & { readonly files: Map<string, Int16Array> } {
  const files = new Map<string, Int16Array>();
  return {
    files,
    create: async (id) => {
      files.set(id, new Int16Array(0));
      return good({
        append: async (samples) => {
          const old = files.get(id)!;
          if (old.length + samples.length > room) return bad('storage.diskFull');
          const longer = new Int16Array(old.length + samples.length);
          longer.set(old);
          longer.set(samples, old.length);
          files.set(id, longer);
          return good(undefined);
        },
        close: () => Promise.resolve(),
      });
    },
    read: async (id) => good(files.get(id) ?? new Int16Array(0)),
    frames: async (id) => files.get(id)?.length ?? 0,
    remove: async (id) => {
      files.delete(id);
    },
  };
}

/** As in a browser, a name that is held is waited for. */
export function memoryLocks(): Locks {
  const held = new Map<string, Promise<void>>();
  return {
    hold: async (name) => {
      while (held.has(name)) await held.get(name);
      let release: () => void = () => undefined;
      const released = new Promise<void>((resolve) => {
        release = () => {
          held.delete(name);
          resolve();
        };
      });
      held.set(name, released);
      return release;
    },
    held: async () => new Set(held.keys()),
  };
}

export function takesOn(db: Database, sounds: Sounds, locks: Locks = memoryLocks()): Takes {
  let next = 0;
  return new Takes({ db, sounds, locks, newId: () => `take-${next++}`, askToStay: () => undefined });
}

/** Samples 0, 1, 2, …: any loss or doubling shows. */
export const ramp = (length: number, from = 0): Int16Array => Int16Array.from({ length }, (_, i) => from + i);
