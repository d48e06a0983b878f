/** The messages between page and slowing worker; an answer carries the number of its request. */
import type { Outcome } from '../../core/base/outcome.ts';

export type SlowRequest =
  /** The line that all other requests are about. */
  | {
      readonly id: number;
      readonly kind: 'open';
      readonly samples: Float32Array<ArrayBuffer>;
      readonly sampleRate: number;
      /** Of the answers: pieces at the rate of the player follow one another without a click. */
      readonly wantedRate: number;
    }
  /** The next piece of a run; a run that is new begins. Answer: samples, or null at its end. */
  | { readonly id: number; readonly kind: 'next'; readonly run: SlowRun };

/** A stretch of the line, slower. */
export interface SlowRun {
  /** Tells it from every other; the latest counts. */
  readonly number: number;
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly speed: number;
}

export interface SlowAnswer {
  readonly id: number;
  readonly outcome: Outcome<Float32Array<ArrayBuffer> | null>;
}
