/** What is known about a take besides its sound, as plain data: kept beside it, listed, shown. */
import type { FeelName } from '../core/band/settings.ts';
import type { Report } from '../core/report/schema.ts';

export type TakeId = string;

/** Written when a take begins, so that one cut off in the middle can still be graded. */
export interface TakeDetails {
  readonly title: string;
  readonly startedAt: string;
  readonly source: 'microphone' | 'recording' | 'demo';
  /** The chart in our own text form, already in its key. */
  readonly chartText: string;
  readonly key: string;
  readonly bpm: number;
  readonly feel: FeelName;
  readonly swing: number;
  readonly reference: number | 'auto';
  readonly sampleRate: number;
  /** Where the first downbeat lies, seconds from the first sample, round trip included; null until it is known. */
  readonly firstBeatSeconds: number | null;
}

/** A row of the list of takes. */
export interface TakeCard extends TakeDetails {
  readonly id: TakeId;
  readonly durationSeconds: number;
  readonly summary: Report['summary'] | null;
}

/** A take with its sound. */
export interface StoredTake {
  readonly id: TakeId;
  readonly details: TakeDetails;
  readonly audio: { readonly samples: Int16Array; readonly sampleRate: number };
  readonly report: Report | null;
}

/** A take whose page was closed, or whose machine stopped, while it was being played. */
export interface UnfinishedTake {
  readonly id: TakeId;
  readonly details: TakeDetails;
  readonly durationSeconds: number;
}
