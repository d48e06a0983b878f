/** The player's own charts. */
import * as v from 'valibot';
import type { Outcome } from '../core/base/outcome.ts';
import { attempt, type Database } from './database.ts';
import { problem, type Message } from '../core/words/problem.ts';
import { ChartRecordSchema, type ChartRecord } from './records.ts';

export class Charts {
  readonly #db: Database;

  constructor(db: Database) {
    this.#db = db;
  }

  /** By title, and a problem for each record that can't be read. */
  async list(): Promise<{ readonly charts: readonly ChartRecord[]; readonly messages: readonly Message[] }> {
    const all = await attempt(() => this.#db.getAll('charts'));
    if (!all.ok) return { charts: [], messages: [all.problem] };
    const parsed = all.value.map((value) => v.safeParse(ChartRecordSchema, value));
    return {
      charts: parsed
        .flatMap((one) => (one.success ? [one.output] : []))
        .sort((a, b) => a.title.localeCompare(b.title)),
      messages: parsed.some((one) => !one.success) ? [problem('storage.chartUnreadable')] : [],
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
