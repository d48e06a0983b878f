/** What a MIDI instrument sent, as numbered records of the database: each is safe as soon as it is written. */
import * as v from 'valibot';
import type { PlayedMessage } from '../core/midi/played-notes.ts';
import type { Outcome } from '../core/base/outcome.ts';
import { attempt, type Database } from './database.ts';
import type { Problem } from '../core/words/problem.ts';
import { MessagesSchema } from './records.ts';

const rangeOf = (id: string) => IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);

/** In the order played; a record that can't be read is left out. */
export function readMessages(db: Database, id: string): Promise<Outcome<readonly PlayedMessage[]>> {
  return attempt(async () =>
    (await db.getAll('messages', rangeOf(id))).flatMap((record) => {
      const parsed = v.safeParse(MessagesSchema, record);
      return parsed.success ? parsed.output : [];
    }),
  );
}

export const removeMessages = (db: Database, id: string): Promise<void> => db.delete('messages', rangeOf(id));

/** Appends what is played; while one record is being written, the messages of the next are collected. */
export class MessagesWriter {
  readonly id: string;
  readonly #db: Database;
  readonly #onFull: (problem: Problem) => void;
  #waiting: PlayedMessage[] = [];
  #records = 0;
  #stopped: Problem | null = null;
  #tail: Promise<void> = Promise.resolve();

  /** @param onFull called once when nothing more can be written */
  constructor(db: Database, id: string, onFull: (problem: Problem) => void) {
    this.#db = db;
    this.id = id;
    this.#onFull = onFull;
  }

  append(message: PlayedMessage): void {
    this.#waiting.push(message);
    if (this.#waiting.length === 1) this.#tail = this.#tail.then(() => this.#write());
  }

  /** Resolves when all is written, with the problem that stopped the writing, or null. */
  async finish(): Promise<Problem | null> {
    await this.#tail;
    return this.#stopped;
  }

  async #write(): Promise<void> {
    const messages = this.#waiting;
    this.#waiting = [];
    if (this.#stopped !== null) return;
    const put = await attempt(() => this.#db.put('messages', messages, [this.id, this.#records]));
    if (put.ok) this.#records += 1;
    else {
      this.#stopped = put.problem;
      this.#onFull(put.problem);
    }
  }
}
