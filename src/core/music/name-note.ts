/** A sounding pitch, named at the reference that the player is tuned to. */
import { SHARP_NAMES, wrapPitchClass } from './spelling.ts';
import { centsAboveStandard } from './temperament.ts';

/** A pitch as a tuner would show it. */
export interface NamedNote {
  /** With sharps; spelling by chord or key is for music/pitch-names. */
  readonly name: string;
  /** 4 for the octave from middle C up. */
  readonly octave: number;
  /** The key number that the note stands for. */
  readonly nearestMidi: number;
  /** From that key at the reference: −50 up to, not including, 50. */
  readonly cents: number;
}

/**
 * Names a pitch. `midi` is fractional and counted against A4 = 440 Hz whatever the reference; the name and the
 * cents are at `referenceHz`.
 *
 * @example nameNote(68.68, 432) // { name: 'A', octave: 4, nearestMidi: 69, cents: -0.2 }
 */
export function nameNote(midi: number, referenceHz: number): NamedNote {
  if (!Number.isFinite(midi)) throw new RangeError(`a MIDI number is finite, not ${midi}`);
  const atReference = midi - centsAboveStandard(referenceHz) / 100;
  const nearestMidi = Math.floor(atReference + 0.5);
  return {
    name: SHARP_NAMES[wrapPitchClass(nearestMidi)] ?? 'C',
    octave: Math.floor(nearestMidi / 12) - 1,
    nearestMidi,
    cents: (atReference - nearestMidi) * 100,
  };
}
