/** The one database of this machine: opened once, migrated step by step, its errors turned into problems. */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { problem, type Problem } from '../core/words/problem.ts';
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';

/** Values are `unknown` on purpose: each reader checks them by a schema. */
export interface LandfallDb extends DBSchema {
  /** Key: take id. */
  takes: { key: string; value: unknown };
  reports: { key: string; value: unknown };
  /** Sound where the machine has no private files: key [take id, number of the chunk]. */
  chunks: { key: [string, number]; value: unknown };
  /** What a MIDI instrument sent, in the order played: key [take id, number of the record]. */
  messages: { key: [string, number]; value: unknown };
  charts: { key: string; value: unknown };
  settings: { key: string; value: unknown };
  /** Recordings that are played to: what is known about each, and its file's bytes. Key: id of the recording. */
  backings: { key: string; value: unknown };
  backingFiles: { key: string; value: unknown };
}

export type Database = IDBPDatabase<LandfallDb>;

/** Step n brings a database of version n to version n + 1. Never change one that has shipped: add another. */
const MIGRATIONS: readonly ((db: Database) => void)[] = [
  (db) => {
    for (const name of ['takes', 'reports', 'chunks', 'charts', 'settings'] as const)
      db.createObjectStore(name);
  },
  (db) => {
    db.createObjectStore('messages');
  },
  (db) => {
    for (const name of ['backings', 'backingFiles'] as const) db.createObjectStore(name);
  },
];

export const DATABASE_VERSION = MIGRATIONS.length;

/** Opens the database. Fails where the browser allows none (some private windows) or a newer app has been here. */
export async function openDatabase(name = 'landfall'): Promise<Outcome<Database>> {
  try {
    const db: Database = await openDB<LandfallDb>(name, DATABASE_VERSION, {
      upgrade: (opened, from) => {
        for (const migrate of MIGRATIONS.slice(from)) migrate(opened);
      },
      // A newer version of the page, in another tab, migrates the database. The next write of this page fails with a problem.
      blocking: () => db.close(),
    });
    return good(db);
  } catch (error) {
    return bad(isNamed(error, 'VersionError') ? 'storage.newer' : 'storage.none');
  }
}

export const isNamed = (error: unknown, name: string): boolean =>
  typeof error === 'object' && error !== null && 'name' in error && error.name === name;

/** What went wrong while storing. */
export const storageProblem = (error: unknown): Problem =>
  problem(isNamed(error, 'QuotaExceededError') ? 'storage.diskFull' : 'storage.unreachable');

/** Runs something against storage; whatever it throws comes back as a problem. */
export async function attempt<T>(act: () => Promise<T>): Promise<Outcome<T>> {
  try {
    return good(await act());
  } catch (error) {
    return failure(storageProblem(error));
  }
}
