/** Opens everything that is stored on this machine; what can't be opened gives a problem. */
import type { GenericSchema } from 'valibot';
import { Backings } from './backings.ts';
import { Charts } from './charts.ts';
import { chunkSounds } from './chunk-sounds.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import { openDatabase } from './database.ts';
import { opfsSounds } from './opfs-sounds.ts';
import { SettingsStore } from './settings.ts';
import { firstOf } from './sounds.ts';
import type { ArrivalPorts } from './arrivals.ts';
import { browserLocks } from './locks.ts';
import { Takes } from './takes.ts';

export interface LocalStorage {
  readonly takes: Takes;
  /** What `Arrivals` needs of it. */
  readonly arrivalPorts: ArrivalPorts;
  readonly charts: Charts;
  readonly backings: Backings;
  settings<T extends object>(
    name: string,
    fields: { readonly [K in keyof T]: GenericSchema<unknown, T[K]> },
    usual: T,
  ): SettingsStore<T>;
}

/** Fails, with the problem, where this browser keeps nothing at all. */
export async function openStorage(): Promise<Outcome<LocalStorage>> {
  const opened = await openDatabase();
  if (!opened.ok) return opened;
  const db = opened.value;
  const files = await opfsSounds();
  const chunks = chunkSounds(db);
  const askToStay = () => void navigator.storage?.persist?.();
  const sounds = files === null ? chunks : firstOf(files, chunks);
  const locks = browserLocks();
  return good({
    arrivalPorts: { db, sounds, locks, askToStay },
    takes: new Takes({
      db,
      sounds,
      locks,
      newId: () => crypto.randomUUID(),
      askToStay,
    }),
    charts: new Charts(db),
    backings: new Backings(db, askToStay),
    settings: (name, fields, usual) => new SettingsStore(db, name, fields, usual),
  });
}
