/** One record of settings. What was stored may be older than the app, or broken: each field is mended alone. */
import * as v from 'valibot';
import { problem, type Message } from '../core/words/problem.ts';
import { attempt, type Database } from './database.ts';

type Entries = Readonly<Record<string, v.GenericSchema>>;

export class SettingsStore<T extends object> {
  readonly #db: Database;
  readonly #name: string;
  readonly #fields: Entries;
  readonly #defaults: T;
  #tail: Promise<unknown> = Promise.resolve();

  /** @param fields a schema for each field of the settings */
  constructor(
    db: Database,
    name: string,
    fields: { readonly [K in keyof T]: v.GenericSchema<unknown, T[K]> },
    defaults: T,
  ) {
    this.#db = db;
    this.#name = name;
    this.#fields = fields as Entries;
    this.#defaults = defaults;
  }

  /** Fields that are missing take their default; fields that can't be read too, with a problem. */
  async load(): Promise<{ readonly value: T; readonly messages: readonly Message[] }> {
    const stored = await attempt(() => this.#db.get('settings', this.#name));
    if (!stored.ok) return { value: this.#defaults, messages: [stored.problem] };
    if (stored.value === undefined) return { value: this.#defaults, messages: [] };
    const record = v.safeParse(v.record(v.string(), v.unknown()), stored.value);
    if (!record.success)
      return {
        value: this.#defaults,
        messages: [problem('storage.settingsUnreadable')],
      };
    const value = { ...this.#defaults } as Record<string, unknown>;
    const broken: string[] = [];
    for (const [name, schema] of Object.entries(this.#fields)) {
      if (!(name in record.output)) continue;
      const field = v.safeParse(schema, record.output[name]);
      if (field.success) value[name] = field.output;
      else broken.push(name);
    }
    const messages = broken.length > 0 ? [problem('storage.settingUnreadable', { fields: broken })] : [];
    return { value: value as unknown as T, messages };
  }

  /** Writes later; of several values the last one is written. */
  save(value: T): void {
    this.#tail = this.#tail.then(() => attempt(() => this.#db.put('settings', value, this.#name)));
  }

  /** Resolves when everything saved so far is written. */
  async settled(): Promise<void> {
    await this.#tail;
  }
}
