/** Stores for a browser that keeps nothing: every method returns that problem. */
import { failure, type Outcome } from '../core/base/outcome.ts';
import type { BackingRecord } from './backing-record.ts';
import type { Message, Problem } from '../core/words/problem.ts';
import type { ChartRecord, TakeCard, UnfinishedTake } from './records.ts';

/** Stands in for `Takes`. */
export function nothingKept(problem: Problem) {
  const refuse = (): Promise<Outcome<never>> => Promise.resolve(failure(problem));
  return {
    begin: refuse,
    beginNotes: refuse,
    saveReport: refuse,
    open: refuse,
    mark: refuse,
    remove: refuse,
    removeSound: refuse,
    soundBytes: () => Promise.resolve(0),
    list: () => Promise.resolve({ takes: [] as readonly TakeCard[], messages: [problem] }),
    unfinished: () => Promise.resolve([] as readonly UnfinishedTake[]),
  };
}

/** Stands in for `Charts`. */
export const noCharts = (problem: Problem) => ({
  list: () => Promise.resolve({ charts: [] as readonly ChartRecord[], messages: [] as readonly Message[] }),
  save: (): Promise<Outcome<never>> => Promise.resolve(failure(problem)),
  remove: (): Promise<Outcome<never>> => Promise.resolve(failure(problem)),
});

/** Stands in for `Backings`. */
export const noBackings = (problem: Problem) => ({
  list: () =>
    Promise.resolve({ backings: [] as readonly BackingRecord[], messages: [] as readonly Message[] }),
  save: (): Promise<Outcome<never>> => Promise.resolve(failure(problem)),
  keepFile: (): Promise<Outcome<never>> => Promise.resolve(failure(problem)),
  file: (): Promise<Outcome<never>> => Promise.resolve(failure(problem)),
  remove: (): Promise<Outcome<never>> => Promise.resolve(failure(problem)),
});

/** Stands in for a `SettingsStore`: the usual settings each time. */
export const nothingRemembered = <T>(usual: T) => ({
  load: () => Promise.resolve({ value: usual, messages: [] as readonly Message[] }),
  save: () => undefined,
});

/** Stands in for `Arrivals`. */
export const noArrivals = (problem: Problem) => ({
  bringIn: (): Promise<Outcome<never>> => Promise.resolve(failure(problem)),
});
