/** The one database of this machine: opened once, migrated step by step, its errors turned into sentences. */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { badSentence, good, type Outcome } from '../core/base/outcome.ts';

/** Values are `unknown` on purpose: whoever reads one puts it through its schema. */
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
      // A newer page wants to migrate: let it. This one's next write fails with a sentence.
      blocking: () => db.close(),
    });
    return good(db);
  } catch (error) {
    return badSentence(
      isNamed(error, 'VersionError')
        ? 'The takes on this machine were written by a newer Landfall. Reload the page to get it.'
        : 'This browser keeps nothing for this page (a private window?). You can play; export a take to keep it.',
    );
  }
}

export const isNamed = (error: unknown, name: string): boolean =>
  typeof error === 'object' && error !== null && 'name' in error && error.name === name;

export const DISK_FULL =
  'The disk is full: the rest of this take is in memory only. It will be graded; export it before you close the page.';

/** What went wrong while storing, as a sentence. */
export const storageSentence = (error: unknown): string =>
  isNamed(error, 'QuotaExceededError')
    ? DISK_FULL
    : 'This browser could not reach its storage. Reload the page; what is on the screen can still be exported.';

/** Runs something against storage; whatever it throws comes back as a sentence. */
export async function attempt<T>(act: () => Promise<T>): Promise<Outcome<T>> {
  try {
    return good(await act());
  } catch (error) {
    return badSentence(storageSentence(error));
  }
}
