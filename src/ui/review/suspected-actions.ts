/** What can be done where a take makes its delay, its key or its first beat suspect. */
import type { Review } from '../../state/phase.ts';
import { canTakeSuspected, type SuspectedThing } from '../../state/suspected-take.ts';

export interface SuspectedActions {
  readonly delay: DelayActions;
  /** Grades the take over the chart that it fits better; null where none is suspected, or where that can't be done. */
  readonly onchart: (() => void) | null;
}

export interface DelayActions {
  /** Grades the take with the delay that it makes probable. */
  readonly ontake: () => void;
  /** Whether that delay then counts for the devices, too. */
  readonly stays: boolean;
  /** null for a take that did not come through the microphone. */
  readonly onsoundcheck: (() => void) | null;
}

/** @param take grades the take with what it makes probable */
export const suspectedActions = (
  review: Review,
  take: (what: SuspectedThing) => Promise<void>,
  onsoundcheck: () => void,
): SuspectedActions => ({
  delay: {
    ontake: () => void take('delay'),
    stays: review.playedThrough !== undefined,
    onsoundcheck: review.details.source === 'microphone' ? onsoundcheck : null,
  },
  onchart: canTakeSuspected('chart', review) ? () => void take('chart') : null,
});
