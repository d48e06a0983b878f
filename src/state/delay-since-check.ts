/** How the delay of a take differs from that of the sound check, as the listener measures it while the take is played. */
import { laterPath, type RoomPath } from '../core/room/cancel/band-remover.ts';
import { notice, type Notice } from '../core/words/problem.ts';

/** A delay that changed by less is not worth a word. */
const WORTH_A_NOTICE_SECONDS = 0.005;

export interface DelayChange {
  /** Both against the sound check, seconds. */
  readonly before: number;
  readonly now: number;
  /** The delay was another one before anything was graded, so that the first downbeat is to be placed by it. */
  readonly isFromStart: boolean;
}

export class DelaySinceCheck {
  /** What is allowed for already, or what the player knows of; null until the delay was measured in the take. */
  #known: number | null = null;
  #fromStart = 0;
  #isKnownLate = false;

  /**
   * @param change the delay of now less that of the sound check, seconds; null until it was measured @param beat of now
   * @returns what is new; null where nothing is
   */
  take(change: number | null, beat: number): DelayChange | null {
    if (change === null) return null;
    const isFirst = this.#known === null;
    const before = (this.#known ??= 0);
    if (Math.abs(change - before) < WORTH_A_NOTICE_SECONDS) return null;
    this.#known = change;
    // What the first measurement finds was so from the first sample on; in the count-in nothing is graded yet.
    const isFromStart = isFirst || beat < 0;
    if (isFromStart) {
      this.#fromStart = change;
      this.#isKnownLate = beat >= 0;
    }
    return { before, now: change, isFromStart };
  }

  /** Whether notes were heard by the delay of the sound check before the true one was known: they are to be heard anew. */
  get isKnownLate(): boolean {
    return this.#isKnownLate;
  }

  /** The path by which the whole take is heard. */
  pathOf(swept: RoomPath): RoomPath {
    return this.#isKnownLate ? laterPath(swept, this.#fromStart) : swept;
  }

  /** Said once after the take: while it is played there is nothing to do about it. */
  get notice(): Notice | null {
    if (this.#fromStart === 0) return null;
    return notice('band.otherDelay', {
      ms: Math.round(1000 * Math.abs(this.#fromStart)),
      late: this.#fromStart > 0,
    });
  }
}
