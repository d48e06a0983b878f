import type { AttackSpectra } from '../frames/attack-spectra.ts';
import type { HeardNote } from '../../take/note.ts';
import { soundsBeside, type PartialsAt } from '../measure/second.ts';
import { SHORTEST_STRETCH } from '../tuning/frames.ts';
import { PLATEAU_STEP } from '../tuning/notes.ts';
import * as S from '../tuning/strokes.ts';

/** A note before that may ring on beside the one that was struck. */
interface RingingNote {
  /** Fractional MIDI number. */
  readonly midi: number;
  /** How much of its power outlived the stroke. */
  readonly kept: number;
}

/** The strings that may ring on beside a note that was struck, and what they do to the path. */
export class Ringing {
  readonly #notes: readonly RingingNote[];
  /** Those that surely do, as fractional MIDI numbers. */
  readonly #sounding: readonly number[];

  /** @param before notes that ended, in order; `spectra` are those of the stroke at `seconds` that brought `midi` */
  constructor(before: readonly HeardNote[], spectra: AttackSpectra, seconds: number, midi: number) {
    this.#notes = before
      .slice(-S.RINGING_NOTES)
      .filter((note) => note.offsetSeconds > seconds - S.RINGING_SECONDS)
      .filter((note) => Math.abs(note.midi - midi) > PLATEAU_STEP)
      .map((note) => ({ midi: note.midi, kept: spectra.keeps(note.midi, midi) }));
    this.#sounding = this.#notes.filter(({ kept }) => kept > S.KEEPS).map((note) => note.midi);
  }

  /** Does anything ring on? */
  get sounds(): boolean {
    return this.#sounding.length > 0;
  }

  /** Does a neighbour ring on that draws the path away from `pitch`, and, where it is given, towards `midi`? */
  draws(pitch: number, midi?: number): boolean {
    return this.#sounding.some(
      (note) =>
        Math.abs(note - pitch) < S.DRAWN_SEMITONES &&
        (midi === undefined || (note - pitch) * (midi - pitch) > 0),
    );
  }

  /**
   * Has the path gone over to a string that rings on, which the struck note sounds beside? Where the stroke's own pitch was not
   * the path's (`pitchFromAttack`), what outlived it is enough; else the struck note's partials must be there at `seconds`.
   */
  passesFor(
    arrival: number,
    pitch: number,
    pitchFromAttack: boolean,
    seconds: number,
    partialsAt: PartialsAt,
  ): boolean {
    const note = this.#notes.find(({ midi }) => Math.abs(midi - arrival) < PLATEAU_STEP);
    if (!note) return false;
    if (pitchFromAttack && note.kept > S.KEEPS_ON) return true;
    const partials = partialsAt(seconds, SHORTEST_STRETCH);
    return partials !== null && soundsBeside(partials, pitch, arrival);
  }
}
