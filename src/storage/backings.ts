/** Recordings of the player's own: what is known about each, and its file as it was opened. */
import * as v from 'valibot';
import { badSentence, good, type Outcome } from '../core/base/outcome.ts';
import { BackingRecordSchema, type BackingRecord } from './backing-record.ts';
import { attempt, isNamed, type Database } from './database.ts';

const GONE = 'This recording is no longer on this machine: open its file again.';
const NO_ROOM =
  'There is no room on this machine for the recording: it can be played now, and is not kept. Remove takes or recordings that you no longer need.';

export class Backings {
  readonly #db: Database;
  readonly #askToStay: () => void;

  /** @param askToStay asks the browser not to sweep away what is kept here; called once there is something */
  constructor(db: Database, askToStay: () => void = () => undefined) {
    this.#db = db;
    this.#askToStay = askToStay;
  }

  /** By title, and a sentence where a record can't be read. */
  async list(): Promise<{
    readonly backings: readonly BackingRecord[];
    readonly sentences: readonly string[];
  }> {
    const all = await attempt(() => this.#db.getAll('backings'));
    if (!all.ok) return { backings: [], sentences: [all.sentence] };
    const parsed = all.value.map((value) => v.safeParse(BackingRecordSchema, value));
    return {
      backings: parsed
        .flatMap((one) => (one.success ? [one.output] : []))
        .sort((a, b) => a.title.localeCompare(b.title)),
      sentences: parsed.some((one) => !one.success)
        ? ['What is known about a recording could not be read; the others are not touched.']
        : [],
    };
  }

  /** Writes what is known; the file stays as it lies. */
  save(record: BackingRecord): Promise<Outcome<void>> {
    return attempt(async () => {
      await this.#db.put('backings', record, record.id);
    });
  }

  /** Keeps a recording's file. Fails, with its own sentence, where there is no room. */
  async keepFile(id: string, file: Blob): Promise<Outcome<void>> {
    try {
      const bytes = await file.arrayBuffer();
      await this.#db.put('backingFiles', bytes, id);
      this.#askToStay();
      return good(undefined);
    } catch (error) {
      if (isNamed(error, 'QuotaExceededError')) return badSentence(NO_ROOM);
      return attempt(() => Promise.reject(error as Error));
    }
  }

  async file(id: string): Promise<Outcome<Blob>> {
    const bytes = await attempt(() => this.#db.get('backingFiles', id));
    if (!bytes.ok) return bytes;
    return bytes.value instanceof ArrayBuffer ? good(new Blob([bytes.value])) : badSentence(GONE);
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
