/** The takes on this machine: begun, appended to, finished, found again when they were cut off. */
import * as v from 'valibot';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import { readKeptNotes } from '../core/kept-notes.ts';
import type { TakeDetails } from '../core/take/details-schema.ts';
import { attempt, type Database } from './database.ts';
import { lockName, type Locks } from './locks.ts';
import {
  TakeRecordSchema,
  type StoredTake,
  type TakeCard,
  type TakeId,
  type TakeRecord,
  type TakeSummary,
  type UnfinishedTake,
} from './records.ts';
import { NotesWriter } from './notes-writer.ts';
import { MessagesWriter, readMessages, removeMessages } from './played-messages.ts';
import { bandOf, type Sounds } from './sounds.ts';
import { problem, type Message, type Problem } from '../core/words/problem.ts';
import { TakeWriter } from './take-writer.ts';

/** 16 bits. */
const BYTES_A_FRAME = 2;

export class Takes {
  readonly #db: Database;
  readonly #sounds: Sounds;
  readonly #locks: Locks;
  readonly #newId: () => string;
  readonly #askToStay: () => void;

  constructor(ports: {
    readonly db: Database;
    readonly sounds: Sounds;
    readonly locks: Locks;
    readonly newId: () => string;
    /** Asks the browser not to delete what is stored here; called once there is something. */
    readonly askToStay: () => void;
  }) {
    this.#db = ports.db;
    this.#sounds = ports.sounds;
    this.#locks = ports.locks;
    this.#newId = ports.newId;
    this.#askToStay = ports.askToStay;
  }

  /** Begins a take: its record is safe before the first sample. `onFull` is called at most once. */
  async begin(details: TakeDetails, onFull: (problem: Problem) => void): Promise<Outcome<TakeWriter>> {
    const id = this.#newId();
    const release = await this.#beginRecord(id, details);
    if (!release.ok) return release;
    const sound = await this.#sounds.create(id);
    const band = sound.ok && details.bandKept ? await this.#sounds.create(bandOf(id)) : good(null);
    if (!sound.ok || !band.ok) {
      if (sound.ok) await sound.value.close();
      await this.remove(id);
      release.value();
      return sound.ok ? (band as Outcome<never>) : sound;
    }
    return good(
      new TakeWriter({
        id,
        sound: sound.value,
        band: band.value,
        sampleRate: details.sampleRate,
        onFull,
        onChange: (change) => this.#changeDetails(id, change),
        onFinish: (frames) => this.#change(id, (old) => ({ ...old, finished: true, frames })),
        release: release.value,
      }),
    );
  }

  /** Begins a take on a MIDI instrument: what it sends is kept instead of a sound. */
  async beginNotes(details: TakeDetails, onFull: (problem: Problem) => void): Promise<Outcome<NotesWriter>> {
    const id = this.#newId();
    const release = await this.#beginRecord(id, details);
    if (!release.ok) return release;
    return good(
      new NotesWriter({
        messages: new MessagesWriter(this.#db, id, onFull),
        onChange: (change) => this.#changeDetails(id, change),
        onFinish: (seconds) =>
          this.#change(id, (old) => ({
            ...old,
            finished: true,
            frames: Math.round(seconds * old.details.sampleRate),
          })),
        release: release.value,
      }),
    );
  }

  /**
   * Writes the record of a take that begins. Its lock is held before: another page would take it for one that was cut off,
   * and remove it because it is empty.
   * @returns what releases the lock
   */
  async #beginRecord(id: TakeId, details: TakeDetails): Promise<Outcome<() => void>> {
    const release = await this.#locks.hold(lockName(id));
    const record: TakeRecord = { id, details, finished: false, frames: 0, summary: null };
    const put = await attempt(() => this.#db.put('takes', record, id));
    if (put.ok) return good(release);
    release();
    return put;
  }

  /**
   * Stores the report with its take, and what the grading found; a take that was cut off counts as finished from then
   * on.
   */
  saveReport(
    id: TakeId,
    report: unknown,
    summary: TakeSummary,
    change: Partial<TakeDetails> = {},
  ): Promise<Outcome<void>> {
    return attempt(async () => {
      const frames = await this.#framesOf(id);
      // Both or none: a report never stands beside corrections that it was not made with.
      const tx = this.#db.transaction(['takes', 'reports'], 'readwrite');
      await tx.objectStore('reports').put(report, id);
      await changeRecord(tx.objectStore('takes'), id, (old) => ({
        ...old,
        details: { ...old.details, ...change },
        finished: true,
        frames,
        summary,
      }));
      await tx.done;
      this.#askToStay();
    });
  }

  /** Finished takes, newest first, and a problem for each record that can't be read. */
  async list(): Promise<{ readonly takes: readonly TakeCard[]; readonly messages: readonly Message[] }> {
    const { records, messages } = await this.#records();
    const takes = records
      .filter((record) => record.finished)
      .map(({ id, details, frames, summary }) => ({
        ...details,
        id,
        durationSeconds: frames / details.sampleRate,
        summary,
      }))
      .sort((a, b) => (a.startedAt < b.startedAt ? 1 : -1));
    return { takes, messages };
  }

  /** Takes that were cut off and hold something. Empty ones are removed; one that is being played is not touched. */
  async unfinished(): Promise<readonly UnfinishedTake[]> {
    // Asked before and after: a take may end, and another may begin, while the records are read.
    const before = await this.#locks.held();
    const { records } = await this.#records();
    const after = await this.#locks.held();
    const isHeld = (id: TakeId) => [before, after].some((held) => held.has(lockName(id)));
    const cut: UnfinishedTake[] = [];
    for (const { id, details, arriving } of records.filter((r) => !r.finished && !isHeld(r.id))) {
      if (arriving) {
        // Half of a take that was coming in from a file: the file has it.
        await this.remove(id);
        continue;
      }
      const frames = await attempt(() => this.#framesOf(id));
      if (frames.ok && frames.value === 0) await this.remove(id);
      else if (frames.ok) cut.push({ id, details, durationSeconds: frames.value / details.sampleRate });
    }
    return cut;
  }

  async open(id: TakeId): Promise<Outcome<StoredTake>> {
    const record = await attempt(() => this.#db.get('takes', id));
    if (!record.ok) return record;
    if (record.value === undefined) return bad('take.gone');
    const parsed = v.safeParse(TakeRecordSchema, record.value);
    if (!parsed.success) return bad('take.unreadable', { id });
    const { details } = parsed.output;
    const samples = await this.#sounds.read(id);
    if (!samples.ok) return samples;
    const band = mayHaveBand(details) ? await this.#sounds.read(bandOf(id)) : good(null);
    if (!band.ok) return band;
    const messages = details.source === 'midi' ? await readMessages(this.#db, id) : good(null);
    if (!messages.ok) return messages;
    const report = await attempt(() => this.#db.get('reports', id));
    return good({
      id,
      details,
      samples: samples.value,
      band: band.value?.length ? band.value : null,
      messages: messages.value,
      durationSeconds: (await this.#framesOf(id)) / details.sampleRate,
      report: report.ok ? (report.value ?? null) : null,
    });
  }

  /** What is said of a take: its name, whether it is starred, what a teacher answered. */
  mark(id: TakeId, change: Pick<TakeDetails, 'name' | 'starred' | 'answer'>): Promise<Outcome<void>> {
    return attempt(() => this.#changeDetails(id, change));
  }

  remove(id: TakeId): Promise<Outcome<void>> {
    return attempt(async () => {
      await this.#sounds.remove(id);
      await this.#sounds.remove(bandOf(id));
      await removeMessages(this.#db, id);
      await this.#db.delete('reports', id);
      await this.#db.delete('takes', id);
    });
  }

  /** Removes the sound and keeps all else: details, report and the notes that were heard. */
  async removeSound(id: TakeId): Promise<Outcome<void>> {
    const report = await attempt(() => this.#db.get('reports', id));
    if (!report.ok) return report;
    if (readKeptNotes({ report: report.value }) === null) return bad('storage.soundNeeded');
    return attempt(async () => {
      const frames = await this.#framesOf(id);
      await this.#change(id, (old) => ({
        ...old,
        frames,
        details: { ...old.details, soundRemoved: true, bandKept: false },
      }));
      await this.#sounds.remove(id);
      await this.#sounds.remove(bandOf(id));
    });
  }

  /** Bytes that the sound of each take needs, its band with it. */
  async soundBytes(id: TakeId): Promise<number> {
    const [own, band] = await Promise.all([this.#sounds.frames(id), this.#sounds.frames(bandOf(id))]);
    return BYTES_A_FRAME * (own + band);
  }

  async #records(): Promise<{
    readonly records: readonly TakeRecord[];
    readonly messages: readonly Message[];
  }> {
    const all = await attempt(async () => {
      const tx = this.#db.transaction('takes');
      const [keys, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
      return keys.map((key, i) => [key, values[i]] as const);
    });
    if (!all.ok) return { records: [], messages: [all.problem] };
    const records: TakeRecord[] = [];
    const messages: Message[] = [];
    for (const [key, value] of all.value) {
      const parsed = v.safeParse(TakeRecordSchema, value);
      if (parsed.success) records.push(parsed.output);
      else messages.push(problem('take.unreadable', { id: key }));
    }
    return { records, messages };
  }

  /**
   * What is kept of a take, in frames: of its sound, or, by MIDI, up to its end or the last thing that was played.
   */
  async #framesOf(id: TakeId): Promise<number> {
    const parsed = v.safeParse(TakeRecordSchema, await this.#db.get('takes', id));
    if (!parsed.success) return this.#sounds.frames(id);
    const { written, soundRemoved } = parsed.output.details;
    if (written || soundRemoved) return parsed.output.frames;
    if (parsed.output.details.source !== 'midi') return this.#sounds.frames(id);
    const messages = await readMessages(this.#db, id);
    const last = messages.ok ? (messages.value.at(-1)?.seconds ?? 0) : 0;
    return Math.max(parsed.output.frames, Math.ceil(last * parsed.output.details.sampleRate));
  }

  #changeDetails(id: TakeId, change: Partial<TakeDetails>): Promise<void> {
    return this.#change(id, (old) => ({ ...old, details: { ...old.details, ...change } }));
  }

  /** One record, changed in one transaction. A record that is gone or broken is left as it is. */
  async #change(id: TakeId, change: (old: TakeRecord) => TakeRecord): Promise<void> {
    const tx = this.#db.transaction('takes', 'readwrite');
    await changeRecord(tx.store, id, change);
    await tx.done;
  }
}

/** Older records don't say whether the band was kept: it was, wherever a sound check had measured its path. */
const mayHaveBand = ({ bandKept, path }: TakeDetails): boolean => bandKept ?? path !== undefined;

interface RecordStore {
  get(id: TakeId): Promise<unknown>;
  put(value: unknown, id: TakeId): Promise<unknown>;
}

/** A record that is gone or broken is left as it is. */
async function changeRecord(
  store: RecordStore,
  id: TakeId,
  change: (old: TakeRecord) => TakeRecord,
): Promise<void> {
  const parsed = v.safeParse(TakeRecordSchema, await store.get(id));
  if (parsed.success) await store.put(change(parsed.output), id);
}
