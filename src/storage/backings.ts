/** Recordings of the player's own: what is known about each, and its file as it was opened. */
import * as v from 'valibot';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import { BackingRecordSchema, type BackingRecord } from './backing-record.ts';
import { problem, type Message } from '../core/words/problem.ts';
import { attempt, isNamed, type Database } from './database.ts';

export class Backings {
  readonly #db: Database;
  readonly #askToStay: () => void;

  /** @param askToStay asks the browser not to delete what is stored here; called once there is something */
  constructor(db: Database, askToStay: () => void = () => undefined) {
    this.#db = db;
    this.#askToStay = askToStay;
  }

  /** By title, and a problem where a record can't be read. */
  async list(): Promise<{
    readonly backings: readonly BackingRecord[];
    readonly messages: readonly Message[];
  }> {
    const all = await attempt(() => this.#db.getAll('backings'));
    if (!all.ok) return { backings: [], messages: [all.problem] };
    const parsed = all.value.map((value) => v.safeParse(BackingRecordSchema, value));
    return {
      backings: parsed
        .flatMap((one) => (one.success ? [one.output] : []))
        .sort((a, b) => a.title.localeCompare(b.title)),
      messages: parsed.some((one) => !one.success) ? [problem('backing.recordsUnreadable')] : [],
    };
  }

  /** Writes what is known; the file is not changed. */
  save(record: BackingRecord): Promise<Outcome<void>> {
    return attempt(async () => {
      await this.#db.put('backings', record, record.id);
    });
  }

  /** Stores a recording's file. Fails, with a problem of its own, where there is no space. */
  async keepFile(id: string, file: Blob): Promise<Outcome<void>> {
    try {
      const bytes = await file.arrayBuffer();
      await this.#db.put('backingFiles', bytes, id);
      this.#askToStay();
      return good(undefined);
    } catch (error) {
      if (isNamed(error, 'QuotaExceededError')) return bad('backing.noSpace');
      return attempt(() => Promise.reject(error as Error));
    }
  }

  async file(id: string): Promise<Outcome<Blob>> {
    const bytes = await attempt(() => this.#db.get('backingFiles', id));
    if (!bytes.ok) return bytes;
    return bytes.value instanceof ArrayBuffer ? good(new Blob([bytes.value])) : bad('backing.gone');
  }

  remove(id: string): Promise<Outcome<void>> {
    return attempt(async () => {
      const tx = this.#db.transaction(['backings', 'backingFiles'], 'readwrite');
      await Promise.all([
        tx.objectStore('backings').delete(id),
        tx.objectStore('backingFiles').delete(id),
        tx.done,
      ]);
    });
  }
}
