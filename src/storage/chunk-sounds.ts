/** Sounds as numbered chunks in the database, for browsers without private files. Each append is one record. */
import { good, type Outcome } from '../core/base/outcome.ts';
import { attempt, type Database } from './database.ts';
import type { Sounds, SoundWriter } from './sounds.ts';

const rangeOf = (id: string) => IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);

export function chunkSounds(db: Database): Sounds {
  const chunksOf = async (id: string) =>
    (await db.getAll('chunks', rangeOf(id))).filter((chunk) => chunk instanceof Int16Array);
  const frames = async (id: string) => (await chunksOf(id)).reduce((sum, chunk) => sum + chunk.length, 0);
  return {
    create: async (id) => {
      let next = 0;
      const writer: SoundWriter = {
        append: (samples) =>
          attempt(async () => {
            await db.put('chunks', new Int16Array(samples), [id, next]);
            next += 1;
          }),
        close: () => Promise.resolve(),
      };
      return good(writer);
    },
    read: (id): Promise<Outcome<Int16Array>> =>
      attempt(async () => {
        const chunks = await chunksOf(id);
        const whole = new Int16Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
        let at = 0;
        for (const chunk of chunks) {
          whole.set(chunk, at);
          at += chunk.length;
        }
        return whole;
      }),
    frames,
    remove: (id) => db.delete('chunks', rangeOf(id)),
  };
}
