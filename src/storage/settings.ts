/** One record of settings. What was stored may be older than the app, or broken: each field is mended alone. */
import * as v from 'valibot';
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

  /** Fields that are missing take their default; fields that can't be read too, with a sentence. */
  async load(): Promise<{ readonly value: T; readonly sentences: readonly string[] }> {
    const stored = await attempt(() => this.#db.get('settings', this.#name));
    if (!stored.ok) return { value: this.#defaults, sentences: [stored.sentence] };
    if (stored.value === undefined) return { value: this.#defaults, sentences: [] };
    const record = v.safeParse(v.record(v.string(), v.unknown()), stored.value);
    if (!record.success)
      return {
        value: this.#defaults,
        sentences: ['The settings could not be read; the usual ones are set.'],
      };
    const value = { ...this.#defaults } as Record<string, unknown>;
    const broken: string[] = [];
    for (const [name, schema] of Object.entries(this.#fields)) {
      if (!(name in record.output)) continue;
      const field = v.safeParse(schema, record.output[name]);
      if (field.success) value[name] = field.output;
      else broken.push(name);
    }
    const sentences =
      broken.length > 0
        ? [`A stored setting could not be read (${broken.join(', ')}); the usual one is set.`]
        : [];
    return { value: value as unknown as T, sentences };
  }

  /** Writes behind; the last value wins. */
  save(value: T): void {
    this.#tail = this.#tail.then(() => attempt(() => this.#db.put('settings', value, this.#name)));
  }

  /** Answers when everything saved so far is written. */
  async settled(): Promise<void> {
    await this.#tail;
  }
}
