/** The messages between page and backing worker; an answer carries the number of its request. */
import type { Notice } from '../../core/words/problem.ts';
import type { DetectedBeats } from '../../core/beats/detect-beats.ts';
import type { FoundChart } from '../../core/harmony/chart-of-recording.ts';
import type { Outcome } from '../../core/base/outcome.ts';
import type { BakedRound, RoundOrder } from './bake-round.ts';

export type BackingRequest =
  /** Reads a file and keeps it; all other requests are about that file. Answer: `BackingFacts`. */
  | { readonly id: number; readonly kind: 'open'; readonly file: Blob; readonly name: string }
  /** Answer: `DetectedBeats`. */
  | { readonly id: number; readonly kind: 'beats' }
  /** Answer: `FoundChart`, over these beats in seconds, or over the ones that are found (null). */
  | { readonly id: number; readonly kind: 'chords'; readonly beats: readonly number[] | null }
  /** Answer: the whole recording as `BakedRound`, without a seam. */
  | { readonly id: number; readonly kind: 'whole' }
  /** Answer: `BakedRound`. */
  | { readonly id: number; readonly kind: 'round'; readonly order: RoundOrder };

export type BackingAnswer =
  | { readonly kind: 'answer'; readonly id: number; readonly outcome: Outcome<unknown> }
  | { readonly kind: 'progress'; readonly share: number };

/** A recording as it is drawn and described. */
export interface BackingFacts {
  readonly durationSeconds: number;
  readonly sampleRate: number;
  /** Loudest sample of each stretch of 1 / `peaksPerSecond`. */
  readonly peaks: Float32Array<ArrayBuffer>;
  readonly peaksPerSecond: number;
  readonly warnings: readonly Notice[];
}

export type { BakedRound, DetectedBeats, FoundChart, RoundOrder };
