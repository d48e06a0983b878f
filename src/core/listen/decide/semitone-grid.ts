import * as S from '../tuning/speech.ts';

/** How well the notes of late lie on one grid of semitones, wherever that grid is. */
export class SemitoneGrid {
  #x = 0;
  #y = 0;
  #weight = 0;

  /** Takes a note: its pitch as a fractional MIDI number and its length. */
  take(midi: number, seconds: number): void {
    const weight = Math.min(seconds, S.GRID_MOST_SECONDS);
    const angle = 2 * Math.PI * midi;
    this.#x = S.GRID_FADE * this.#x + weight * Math.cos(angle);
    this.#y = S.GRID_FADE * this.#y + weight * Math.sin(angle);
    this.#weight = S.GRID_FADE * this.#weight + weight;
  }

  /** 0 (anywhere) to 1 (all on the grid): the mean resultant length (Mardia 1972). */
  get strength(): number {
    return (Math.hypot(this.#x, this.#y) + S.GRID_BEFORE_STRENGTH) / (this.#weight + S.GRID_BEFORE_WEIGHT);
  }
}
