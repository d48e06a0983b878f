/** The player's own recordings: which are kept, and which one is chosen. */
import type { BarRange } from '../core/beats/round.ts';
import type { Outcome } from '../core/base/outcome.ts';
import type { BackingRun, BackingsPort, BackingSource, SettingsPort } from './ports.ts';
import type { Setup } from './setup.svelte.ts';
import type { Message } from '../core/words/problem.ts';
import { withMessage } from './messages.ts';
import { chosenBackingRun, backingSource, readChosenBacking, type BackingRecord } from './chosen-backing.ts';

/** Which recording was chosen when the page was closed. */
export interface StandSettings {
  readonly backing: string | null;
}
export const emptyStand: StandSettings = { backing: null };

/** How a recording is played, as far as it can be changed on the open page. */
export interface BackingPlay {
  readonly speed: number;
  readonly cents: number;
  readonly bars: BarRange | null;
}

export class Backings {
  readonly #store: BackingsPort;
  readonly #setup: Setup;
  readonly #stand: SettingsPort<StandSettings>;
  readonly #prepare: (run: BackingRun) => void;
  #kept = $state.raw<readonly BackingRecord[]>([]);
  #notices = $state.raw<readonly Message[]>([]);
  #remembered: string | null = null;
  /** Files of recordings that there is no room to keep: they last as long as the page. */
  #unkept: Readonly<Record<string, Blob>> = {};

  constructor(ports: {
    readonly backings: BackingsPort;
    readonly setup: Setup;
    readonly stand: SettingsPort<StandSettings>;
    /** Renders ahead what will be played. */
    readonly prepare: (run: BackingRun) => void;
  }) {
    this.#store = ports.backings;
    this.#setup = ports.setup;
    this.#stand = ports.stand;
    this.#prepare = ports.prepare;
  }

  /** By title. */
  get kept(): readonly BackingRecord[] {
    return this.#kept;
  }

  /** What could not be read, and why the last action failed, if it did. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  /** Reads what is kept, and chooses the recording that was chosen at the last visit. */
  async load(): Promise<void> {
    await this.#read();
    const { value } = await this.#stand.load();
    this.#remembered = value.backing;
    const record = this.#kept.find(({ id }) => id === value.backing);
    if (record) this.choose(record.id);
  }

  /** Chooses a recording: takes are played over its chart and its beats. */
  choose(id: string): void {
    const record = this.#kept.find((kept) => kept.id === id);
    if (!record) return;
    const standing = readChosenBacking(record, this.backingSource(record));
    this.#noticeFailure(standing);
    if (!standing.ok) return;
    this.#setup.setBacking(standing.value);
    this.#prepare(chosenBackingRun(standing.value));
  }

  /** Remembers the chosen recording for the next visit; null where the band plays. */
  remember(id: string | null): void {
    if (id === this.#remembered) return;
    this.#remembered = id;
    this.#stand.save({ backing: id });
  }

  /** Changes how it is played (speed, pitch, bars), and writes that at once. */
  async play(id: string, change: Partial<BackingPlay>): Promise<void> {
    const record = this.#kept.find((kept) => kept.id === id);
    if (record) await this.save({ ...record, ...change, bars: copied(change.bars, record.bars) });
  }

  /** Writes what is known about a recording, and chooses it. */
  async save(record: BackingRecord): Promise<void> {
    const before = this.#kept.filter(({ id }) => id !== record.id);
    this.#kept = [...before, record].toSorted((a, b) => a.title.localeCompare(b.title));
    this.choose(record.id);
    // Without the file, the list would show a recording that can't be opened.
    if (!(record.id in this.#unkept)) this.#noticeFailure(await this.#store.save(record));
  }

  /** Keeps the file of a new recording; where there is no room it lasts as long as the page, and that is said. */
  async keepFile(id: string, file: Blob): Promise<void> {
    const kept = await this.#store.keepFile(id, file);
    if (!kept.ok) this.#unkept = { ...this.#unkept, [id]: file };
    this.#noticeFailure(kept);
  }

  async remove(id: string): Promise<void> {
    if (this.#setup.backing?.record.id === id) this.#setup.setBacking(null);
    const removed = await this.#store.remove(id);
    await this.#read();
    this.#noticeFailure(removed);
  }

  backingSource(record: Pick<BackingRecord, 'id' | 'title'>): BackingSource {
    const unkept = this.#unkept[record.id];
    if (!unkept) return backingSource(this.#store, record);
    return { id: record.id, name: record.title, file: () => Promise.resolve({ ok: true, value: unkept }) };
  }

  async #read(): Promise<void> {
    const { backings, messages } = await this.#store.list();
    this.#kept = backings;
    this.#notices = messages;
  }

  #noticeFailure(outcome: Outcome<unknown>): void {
    if (!outcome.ok) this.#notices = withMessage(this.#notices, outcome.problem);
  }
}

const copied = (
  wanted: BarRange | null | undefined,
  before: BackingRecord['bars'],
): BackingRecord['bars'] => {
  if (wanted === undefined) return before;
  return wanted === null ? null : { ...wanted };
};
