/** A take outside of the app, as it is written into a file and read from one. */
import type { PlayedMessage } from '../midi/played-notes.ts';
import type { TakeDetails } from '../take/details-schema.ts';

/** What there is of a take besides its sounds. */
export interface TakeFacts {
  readonly id: string;
  readonly details: TakeDetails;
  /** Samples of the sound; of a take without sound its length at `details.sampleRate`. */
  readonly frames: number;
  /** What a MIDI instrument sent; null for a take that was heard. */
  readonly messages: readonly PlayedMessage[] | null;
  /** The report and every note that was heard, as `readKeptReport` takes it; null where it was never graded. */
  readonly report: unknown;
}

/** A take to be written. */
export interface TakeToWrite extends TakeFacts {
  /** Mono, 16-bit; empty for a take without sound. */
  readonly samples: Int16Array;
  /** What the band played on the same frames; null where it is not kept. */
  readonly band: Int16Array | null;
}

/** A take that was read and checked; its sounds are read again when they are wanted. */
export interface TakeFile extends TakeFacts {
  readonly line: SoundPart | null;
  readonly band: SoundPart | null;
}

export interface SoundPart {
  /** The samples piece by piece: mono, 16-bit. */
  samples(): AsyncIterable<Int16Array>;
}
