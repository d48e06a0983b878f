/** Where a browser keeps nothing: every verb of the stores answers, and says so. */
import { badSentence, type Outcome } from '../core/base/outcome.ts';
import type { BackingRecord } from './backing-record.ts';
import type { ChartRecord, TakeCard, UnfinishedTake } from './records.ts';

/** Stands in for `Takes`. */
export function nothingKept(sentence: string) {
  const refuse = (): Promise<Outcome<never>> => Promise.resolve(badSentence(sentence));
  return {
    begin: refuse,
    beginNotes: refuse,
    saveReport: refuse,
    open: refuse,
    rename: refuse,
    remove: refuse,
    list: () => Promise.resolve({ takes: [] as readonly TakeCard[], sentences: [sentence] }),
    unfinished: () => Promise.resolve([] as readonly UnfinishedTake[]),
  };
}

/** Stands in for `Charts`. */
export const noCharts = (sentence: string) => ({
  list: () => Promise.resolve({ charts: [] as readonly ChartRecord[], sentences: [] as readonly string[] }),
  save: (): Promise<Outcome<never>> => Promise.resolve(badSentence(sentence)),
  remove: (): Promise<Outcome<never>> => Promise.resolve(badSentence(sentence)),
});

/** Stands in for `Backings`. */
export const noBackings = (sentence: string) => ({
  list: () =>
    Promise.resolve({ backings: [] as readonly BackingRecord[], sentences: [] as readonly string[] }),
  save: (): Promise<Outcome<never>> => Promise.resolve(badSentence(sentence)),
  keepFile: (): Promise<Outcome<never>> => Promise.resolve(badSentence(sentence)),
  file: (): Promise<Outcome<never>> => Promise.resolve(badSentence(sentence)),
  remove: (): Promise<Outcome<never>> => Promise.resolve(badSentence(sentence)),
});

/** Stands in for a `SettingsStore`: the usual settings each time. */
export const nothingRemembered = <T>(usual: T) => ({
  load: () => Promise.resolve({ value: usual, sentences: [] as readonly string[] }),
  save: () => undefined,
});
