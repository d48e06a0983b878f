/** The beats that a player taps to a recording while it plays. */
import { bpmOfTaps } from '../core/beats/tapped-tempo.ts';
import { beatsOfTaps } from '../core/beats/taps.ts';

export class BeatTaps {
  #seconds = $state.raw<readonly number[]>([]);

  /** Where in the recording they were tapped. */
  get seconds(): readonly number[] {
    return this.#seconds;
  }

  /** Tempo of the taps so far, in beats a minute; null for fewer than four. */
  get bpm(): number | null {
    return bpmOfTaps(this.#seconds);
  }

  /** The beats that were tapped; none for too few taps. @param attacks of the recording, rising, in seconds */
  beats(attacks: readonly number[]): readonly number[] {
    return beatsOfTaps(this.#seconds, attacks);
  }

  add(seconds: number): void {
    this.#seconds = [...this.#seconds, seconds];
  }

  forget(): void {
    this.#seconds = [];
  }
}
