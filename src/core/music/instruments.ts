/**
 * Instruments as data: strings and frets, compass, and where the written note stands against the sounding one.
 * Tunings and transpositions are *common practice*; compasses are the usual ones, from memory of orchestration
 * handbooks, and are used for display only.
 */

export interface Instrument {
  /** For storage and choice lists; never changes. */
  readonly id: string;
  readonly name: string;
  /** Semitones from the written to the sounding note: −12 for a guitar, −14 for a tenor sax. */
  readonly soundingFromWritten: number;
  /** Usual compass, sounding MIDI numbers. */
  readonly lowestMidi: number;
  readonly highestMidi: number;
  /** Strings and frets, or null for an instrument without. */
  readonly neck: Neck | null;
}

export interface Neck {
  /** Sounding MIDI numbers of the open strings, the lowest string first. */
  readonly openStrings: readonly number[];
  readonly frets: number;
  /** Fret the capo lies on; 0 without. */
  readonly capo: number;
}

const GUITAR_FRETS = 22;
const BASS_FRETS = 20;

const fretted = (
  id: string,
  name: string,
  openStrings: readonly number[],
  frets: number = GUITAR_FRETS,
): Instrument => ({
  id,
  name,
  soundingFromWritten: -12,
  lowestMidi: Math.min(...openStrings),
  highestMidi: Math.max(...openStrings) + frets,
  neck: { openStrings, frets, capo: 0 },
});

const plain = (
  id: string,
  name: string,
  soundingFromWritten: number,
  lowestMidi: number,
  highestMidi: number,
): Instrument => ({ id, name, soundingFromWritten, lowestMidi, highestMidi, neck: null });

/** The guitar first, as the most common one. Comments give the open strings from the lowest up. */
export const INSTRUMENTS: readonly Instrument[] = [
  fretted('guitar', 'Guitar', [40, 45, 50, 55, 59, 64]), // E2 A2 D3 G3 B3 E4
  fretted('guitar-24', 'Guitar, 24 frets', [40, 45, 50, 55, 59, 64], 24),
  fretted('guitar-drop-d', 'Guitar, drop D', [38, 45, 50, 55, 59, 64]), // D2 A2 D3 G3 B3 E4
  fretted('guitar-half-down', 'Guitar, a half step down', [39, 44, 49, 54, 58, 63]), // Eb2 Ab2 Db3 Gb3 Bb3 Eb4
  fretted('guitar-open-g', 'Guitar, open G', [38, 43, 50, 55, 59, 62]), // D2 G2 D3 G3 B3 D4
  fretted('guitar-dadgad', 'Guitar, D A D G A D', [38, 45, 50, 55, 57, 62]), // D2 A2 D3 G3 A3 D4
  fretted('guitar-7', 'Guitar, 7 strings', [35, 40, 45, 50, 55, 59, 64], 24), // B1, then as six strings
  fretted('guitar-8', 'Guitar, 8 strings', [30, 35, 40, 45, 50, 55, 59, 64], 24), // F#1 B1, then as six strings
  fretted('bass', 'Bass', [28, 33, 38, 43], BASS_FRETS), // E1 A1 D2 G2
  fretted('bass-5', 'Bass, 5 strings', [23, 28, 33, 38, 43], BASS_FRETS), // B0 E1 A1 D2 G2
  plain('violin', 'Violin', 0, 55, 100),
  plain('flute', 'Flute', 0, 60, 96),
  plain('clarinet', 'B♭ clarinet', -2, 50, 94),
  plain('trumpet', 'B♭ trumpet', -2, 52, 82),
  plain('soprano-sax', 'Soprano sax (B♭)', -2, 56, 87),
  plain('alto-sax', 'Alto sax (E♭)', -9, 49, 80),
  plain('tenor-sax', 'Tenor sax (B♭)', -14, 44, 75),
  plain('baritone-sax', 'Baritone sax (E♭)', -21, 36, 68),
  plain('trombone', 'Trombone', 0, 40, 72),
  plain('piano', 'Piano', 0, 21, 108),
  plain('voice', 'Voice', 0, 40, 84),
];

/** The instrument with an id, or null. */
export const instrumentOf = (id: string): Instrument | null =>
  INSTRUMENTS.find((instrument) => instrument.id === id) ?? null;

/** The same instrument with a capo on a fret, 0 to take it off. Throws for one without a neck or off its frets. */
export function withCapo(instrument: Instrument, fret: number): Instrument {
  const { neck } = instrument;
  if (!neck) throw new RangeError(`${instrument.name} has no frets for a capo`);
  if (!Number.isInteger(fret) || fret < 0 || fret >= neck.frets) {
    throw new RangeError(`a capo lies on fret 1 to ${neck.frets - 1}, or 0 for none, not ${fret}`);
  }
  return {
    ...instrument,
    lowestMidi: Math.min(...neck.openStrings) + fret,
    neck: { ...neck, capo: fret },
  };
}

/** What the player reads, for a sounding MIDI number. */
export const writtenMidi = (soundingMidi: number, instrument: Instrument): number =>
  soundingMidi - instrument.soundingFromWritten;
