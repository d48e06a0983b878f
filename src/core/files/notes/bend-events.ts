/** The bend, the vibrato and the exact pitch of a heard note as pitch bends of MIDI. */
import type { HeardNote } from '../../take/note.ts';

/** What of a note is written. */
export type NoteToWrite = Pick<
  HeardNote,
  'onsetSeconds' | 'offsetSeconds' | 'midi' | 'bendSemitones' | 'vibrato' | 'levelDb'
>;

/** An octave both ways: beyond any string, and a step is 0.15 cents. */
export const BEND_RANGE_SEMITONES = 12;
const FULL_BEND = 8192;
/** A bend arrives after this long, or in this share of a short note: common practice of players, from memory. */
const ARRIVES_SECONDS = 0.25;
const ARRIVES_SHARE = 0.4;
const STEP_SECONDS = 0.01;

export interface Bend {
  readonly seconds: number;
  /** -8192 to 8191. */
  readonly value: number;
}

/** @param noteNumber the key that the note is written with */
export function bendEvents(note: NoteToWrite, noteNumber: number, endSeconds: number): readonly Bend[] {
  const { onsetSeconds, midi, bendSemitones, vibrato } = note;
  const length = endSeconds - onsetSeconds;
  const arrives = bendSemitones === 0 ? 0 : Math.min(ARRIVES_SECONDS, length * ARRIVES_SHARE);
  const at = (after: number): number => {
    const below = after >= arrives ? 0 : bendSemitones * (1 - after / arrives);
    const wave =
      vibrato === null || after < arrives
        ? 0
        : (vibrato.depthCents / 100) * Math.sin(2 * Math.PI * vibrato.rateHz * (after - arrives));
    const semitones = midi - noteNumber - below + wave;
    const value = Math.round((semitones / BEND_RANGE_SEMITONES) * FULL_BEND);
    return Math.min(FULL_BEND - 1, Math.max(-FULL_BEND, value));
  };
  const until = vibrato === null ? arrives : length;
  const bends: Bend[] = [{ seconds: onsetSeconds, value: at(0) }];
  for (let step = 1; (step - 1) * STEP_SECONDS < until; step++) {
    const after = Math.min(step * STEP_SECONDS, until);
    const value = at(after);
    if (value !== bends.at(-1)!.value && after < length) bends.push({ seconds: onsetSeconds + after, value });
  }
  return bends;
}
