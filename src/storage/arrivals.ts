/**
 * Takes that come in from files. Each is here whole or not at all: until its last byte is written its record says that it
 * is arriving, and one that was broken off is removed at the next start. A take that is here already stays as it is.
 */
import * as v from 'valibot';
import { failure, good, type Outcome } from '../core/base/outcome.ts';
import type { PlayedMessage } from '../core/midi/played-notes.ts';
import type { TakeDetails } from '../core/take/details-schema.ts';
import type { Problem } from '../core/words/problem.ts';
import { attempt, storageProblem, type Database } from './database.ts';
import { lockName, type Locks } from './locks.ts';
import { removeMessages } from './played-messages.ts';
import { TakeRecordSchema, type TakeId, type TakeRecord, type TakeSummary } from './records.ts';
import { bandOf, type Sounds } from './sounds.ts';

export interface ArrivingTake {
  readonly id: string;
  readonly details: TakeDetails;
  readonly frames: number;
  readonly messages: readonly PlayedMessage[] | null;
  /** null for a take that was never graded. */
  readonly report: unknown;
  readonly summary: TakeSummary | null;
  /** Pieces of the sound; null for a take without. */
  readonly line: AsyncIterable<Int16Array> | null;
  readonly band: AsyncIterable<Int16Array> | null;
}

export interface Arrival {
  readonly id: TakeId;
  /** It came in, or only its sound did, which had been removed here, or it was here already. */
  readonly was: 'new' | 'without sound' | 'here';
}

/** Carries a problem out of the writing; never seen outside. */
class Stopped extends Error {
  readonly problem: Problem;
  constructor(told: Problem) {
    super(told.code);
    this.problem = told;
  }
}

/** What takes that come in are written with. */
export interface ArrivalPorts {
  readonly db: Database;
  readonly sounds: Sounds;
  readonly locks: Locks;
  /** Asks the browser not to delete what is stored here. */
  readonly askToStay: () => void;
}

export class Arrivals {
  readonly #db: Database;
  readonly #sounds: Sounds;
  readonly #locks: Locks;
  readonly #askToStay: () => void;

  constructor(ports: ArrivalPorts) {
    this.#db = ports.db;
    this.#sounds = ports.sounds;
    this.#locks = ports.locks;
    this.#askToStay = ports.askToStay;
  }

  /** Fails, with nothing left of it, where it can't be written. A take that another page is bringing in is waited for. */
  async bringIn(take: ArrivingTake): Promise<Outcome<Arrival>> {
    const release = await this.#locks.hold(`landfall arrival ${take.id}`);
    const arrived = await this.#bringIn(take);
    release();
    return arrived;
  }

  async #bringIn(take: ArrivingTake): Promise<Outcome<Arrival>> {
    const found = await attempt(() => this.#placeFor(take));
    if (!found.ok) return found;
    const { id, here } = found.value;
    if (here !== null && !(here.details.soundRemoved && take.line)) return good({ id, was: 'here' });
    const release = await this.#locks.hold(lockName(id));
    try {
      if (here !== null) await this.#putSoundBack(here, take);
      else await this.#putAll(id, take);
      this.#askToStay();
      return good({ id, was: here === null ? 'new' : 'without sound' });
    } catch (error) {
      const told = error instanceof Stopped ? error.problem : storageProblem(error);
      await attempt(() => (here === null ? this.#takeBack(id) : this.#removeSounds(id)));
      return failure(told);
    } finally {
      release();
    }
  }

  /** Under which id it is to stand, and what stands there. An id that another take has here is made another's. */
  async #placeFor(take: ArrivingTake): Promise<{ readonly id: TakeId; readonly here: TakeRecord | null }> {
    const { startedAt, source } = take.details;
    for (let id = take.id; ; id = `${id}-${Date.parse(startedAt).toString(36)}`) {
      const value = await this.#db.get('takes', id);
      if (value === undefined) return { id, here: null };
      const read = v.safeParse(TakeRecordSchema, value);
      const isSame =
        read.success && read.output.details.startedAt === startedAt && read.output.details.source === source;
      if (isSame && !read.output.arriving) return { id, here: read.output };
    }
  }

  async #putAll(id: TakeId, take: ArrivingTake): Promise<void> {
    const { frames, summary, messages, report } = take;
    const details: TakeDetails = { ...take.details, bandKept: take.band !== null };
    const record: TakeRecord = { id, details, finished: false, arriving: true, frames, summary };
    await this.#db.put('takes', record, id);
    await this.#putSounds(id, take);
    // All at once: what is in the list is whole.
    const tx = this.#db.transaction(['takes', 'reports', 'messages'], 'readwrite');
    if (messages !== null) await tx.objectStore('messages').put(messages, [id, 0]);
    if (report !== null) await tx.objectStore('reports').put(report, id);
    await tx.objectStore('takes').put({ id, details, finished: true, frames, summary }, id);
    await tx.done;
  }

  async #putSoundBack(here: TakeRecord, take: ArrivingTake): Promise<void> {
    await this.#putSounds(here.id, take);
    const { soundRemoved: _, ...details } = here.details;
    await this.#db.put('takes', { ...here, details: { ...details, bandKept: take.band !== null } }, here.id);
  }

  async #putSounds(id: TakeId, { line, band }: ArrivingTake): Promise<void> {
    if (line) await this.#putSound(id, line);
    if (band) await this.#putSound(bandOf(id), band);
  }

  async #putSound(name: string, pieces: AsyncIterable<Int16Array>): Promise<void> {
    const writer = await this.#sounds.create(name);
    if (!writer.ok) throw new Stopped(writer.problem);
    try {
      for await (const piece of pieces) {
        const written = await writer.value.append(piece);
        if (!written.ok) throw new Stopped(written.problem);
      }
    } finally {
      await writer.value.close();
    }
  }

  async #takeBack(id: TakeId): Promise<void> {
    await this.#removeSounds(id);
    await removeMessages(this.#db, id);
    await this.#db.delete('takes', id);
  }

  async #removeSounds(id: TakeId): Promise<void> {
    await this.#sounds.remove(id);
    await this.#sounds.remove(bandOf(id));
  }
}
