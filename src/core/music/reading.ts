/**
 * At what pitch a player reads: as it sounds, or as it is written for a transposing instrument. An octave is no other
 * name: guitar and bass read their chords as everybody does.
 */
import type { Key } from './chord.ts';
import type { Instrument } from './instruments.ts';
import { keyOn } from './keys.ts';
import { SHARP_NAMES, moveByInterval, wrapPitchClass } from './spelling.ts';

export interface Reading {
  /** From what sounds to what is read: 14 for a tenor saxophone, 0 at concert pitch. */
  readonly semitones: number;
  /** The same within an octave, as a spelled interval: "2M". */
  readonly interval: string;
}

export const CONCERT: Reading = { semitones: 0, interval: '1P' };

/** By semitones up within an octave; instruments stand in the plainer of two names (F, not E#). */
const INTERVALS = ['1P', '2m', '2M', '3m', '3M', '4P', '4A', '5P', '6m', '6M', '7m', '7M'] as const;

/** The notes that instruments are named after. */
const PITCHED_IN = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B'] as const;

/**
 * How the player of an instrument reads; concert pitch where none is known.
 * @example readingOf(instrumentOf('tenor-sax'), 'written') // a major ninth up: { semitones: 14, interval: '2M' }
 */
export function readingOf(instrument: Instrument | null, pitch: 'written' | 'concert'): Reading {
  const up = wrapPitchClass(-(instrument?.soundingFromWritten ?? 0));
  if (instrument === null || pitch === 'concert' || up === 0) return CONCERT;
  return { semitones: -instrument.soundingFromWritten, interval: INTERVALS[up] ?? '1P' };
}

/** The note that sounds where C is written, ASCII: "Bb" for a trumpet; null where the names are concert names. */
export function pitchedIn({ soundingFromWritten }: Instrument): string | null {
  const sounding = wrapPitchClass(soundingFromWritten);
  return sounding === 0 ? null : (PITCHED_IN[sounding] ?? null);
}

/** A key as it is read, in a signature that is in use: Gb major for a tenor is Ab, F# major is Ab too. */
export const keyAsRead = (key: Key, { semitones, interval }: Reading): Key =>
  semitones === 0
    ? key
    : keyOn(wrapPitchClass(key.tonicPitchClass + semitones), key.mode, moveByInterval(key.tonic, interval));

/**
 * A whole MIDI number from a name with its octave, as the report has it: "E4" is 64, "Cb4" is 59.
 * @throws RangeError for what is no such name
 */
export function midiOfName(name: string): number {
  const match = /^([A-G])(b*|#*)(-?\d+)$/.exec(name);
  if (match === null) throw new RangeError(`"${name}" is no note with its octave, like F#4`);
  const [, letter = 'C', signs = '', octave = '0'] = match;
  const moved = [...signs].reduce((sum, sign) => sum + (sign === '#' ? 1 : -1), 0);
  return 12 * (Number(octave) + 1) + SHARP_NAMES.indexOf(letter as 'C') + moved;
}
