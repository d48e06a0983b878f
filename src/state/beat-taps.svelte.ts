/** The beats that a player taps to a recording while it plays. */
import { bpmOfTaps } from '../core/beats/taps.ts';

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

  add(seconds: number): void {
    this.#seconds = [...this.#seconds, seconds];
  }

  forget(): void {
    this.#seconds = [];
  }
}
