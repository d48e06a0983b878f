/** Notes that came as a list: of a table, a MIDI file or a lesson sheet. */
import type { HeardNote } from './note.ts';

/** A note from a list: struck, without bend or vibrato, and certain, because it was not recognised from sound. */
export function listedNote(onsetSeconds: number, durationSeconds: number, midi: number): HeardNote {
  return {
    onsetSeconds,
    offsetSeconds: onsetSeconds + durationSeconds,
    midi,
    confidence: 1,
    levelDb: null,
    attack: 'struck',
    bendSemitones: 0,
    vibrato: null,
    second: null,
  };
}
