/** The takes that are kept, and those that were cut off. */
import type { Outcome } from '../core/outcome.ts';
import type { FilesPort, TakesPort } from './ports.ts';
import type { TakeCard, TakeId, UnfinishedTake } from './take.ts';

export declare class Library {
  constructor(ports: { readonly takes: TakesPort; readonly files: FilesPort });
  /** Newest first. */
  get takes(): readonly TakeCard[];
  /** Takes that were cut off and can still be graded (`session.openTake`). */
  get unfinished(): readonly UnfinishedTake[];
  /** Sentences about records that could not be read, or verbs that failed. */
  get notices(): readonly string[];
  load(): Promise<void>;
  rename(id: TakeId, title: string): Promise<void>;
  remove(id: TakeId): Promise<void>;
  /** Downloads the sound as WAV; the first downbeat is marked by a cue point. */
  exportSound(id: TakeId): Promise<Outcome<void>>;
  /** Downloads the report as JSON. */
  exportReport(id: TakeId): Promise<Outcome<void>>;
  /** The words that grade the exported sound at the command line. */
  commandLine(card: TakeCard, fileName: string): string;
}
