import type { Key } from '../music/chord.ts';
import { fifthsOf } from '../music/keys.ts';
import { CHORD_TYPES, NO_CHORD, rootOf, TYPES, typeOf } from './chord-types.ts';
import { parseChord } from '../music/parse-chord.ts';
import { soundingType } from './changes-model.ts';

const SHARPS = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'];
const FLATS = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'];

/**
 * A chord's number as a chart writes it, its root spelled with the signs of the key.
 * @param key null: with flats
 */
export function nameInKey(chord: number, key: Key | null): string {
  if (chord === NO_CHORD) return 'N.C.';
  const names = key !== null && fifthsOf(key.tonic, key.mode) > 0 ? SHARPS : FLATS;
  return names[rootOf(chord)]! + CHORD_TYPES[typeOf(chord)]!.suffix;
}

/** The number of the chord that a symbol sounds as, or null where none of ours is near. */
export function numberOfSymbol(symbol: string): number | null {
  if (symbol === 'N.C.') return NO_CHORD;
  const chord = parseChord(symbol);
  if (chord === null) return null;
  const type = soundingType(chord);
  return type === null ? null : chord.rootPitchClass * TYPES + type;
}
