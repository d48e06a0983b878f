/** What takes need that come in from files, and large files that go out. */
import type { Outcome } from '../core/base/outcome.ts';
import type { Arrival, ArrivingTake } from '../storage/arrivals.ts';

export type { Arrival } from '../storage/arrivals.ts';

/** Takes that come in from files. */
export interface ArrivalsPort {
  /** Whole or not at all; one that is here already stays as it is. */
  bringIn(take: ArrivingTake): Promise<Outcome<Arrival>>;
}

/** A file that is written piece by piece; the player has it once it is closed. */
export interface FileSink {
  write(parts: readonly Uint8Array<ArrayBuffer>[]): Promise<Outcome<void>>;
  close(): Promise<Outcome<void>>;
  /** Leaves no file behind. */
  giveUp(): Promise<void>;
}

/** Files that are too large for memory. */
export interface LargeFilesPort {
  /** A file that is written piece by piece; null where the player does not want it after all. Needs a user's gesture. */
  open(fileName: string): Promise<Outcome<FileSink | null>>;
}
