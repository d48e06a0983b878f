/** The player's own charts. */
import * as v from 'valibot';
import type { Outcome } from '../core/base/outcome.ts';
import { attempt, type Database } from './database.ts';
import { ChartRecordSchema, type ChartRecord } from './records.ts';

export class Charts {
  readonly #db: Database;

  constructor(db: Database) {
    this.#db = db;
  }

  /** By title, and a sentence for each record that can't be read. */
  async list(): Promise<{ readonly charts: readonly ChartRecord[]; readonly sentences: readonly string[] }> {
    const all = await attempt(() => this.#db.getAll('charts'));
    if (!all.ok) return { charts: [], sentences: [all.sentence] };
    const parsed = all.value.map((value) => v.safeParse(ChartRecordSchema, value));
    return {
      charts: parsed
        .flatMap((one) => (one.success ? [one.output] : []))
        .sort((a, b) => a.title.localeCompare(b.title)),
      sentences: parsed.some((one) => !one.success)
        ? ['A stored chart could not be read; the others are not touched.']
        : [],
    };
  }

  save(chart: ChartRecord): Promise<Outcome<void>> {
    return attempt(async () => {
      await this.#db.put('charts', chart, chart.id);
    });
  }

  remove(id: string): Promise<Outcome<void>> {
    return attempt(() => this.#db.delete('charts', id));
  }
}
