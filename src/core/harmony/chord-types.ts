/** The kinds of chord that are told apart in a recording. What a chart adds (9, 13, alterations) sounds as one of these. */

export interface ChordType {
  /** As it is written behind the root in a chart. */
  readonly suffix: string;
  /** Semitones from the root. */
  readonly tones: readonly number[];
}

export const CHORD_TYPES: readonly ChordType[] = [
  { suffix: '', tones: [0, 4, 7] },
  { suffix: 'm', tones: [0, 3, 7] },
  { suffix: '7', tones: [0, 4, 7, 10] },
  { suffix: 'maj7', tones: [0, 4, 7, 11] },
  { suffix: 'm7', tones: [0, 3, 7, 10] },
  { suffix: 'm7b5', tones: [0, 3, 6, 10] },
  { suffix: 'dim7', tones: [0, 3, 6, 9] },
  { suffix: '7sus', tones: [0, 5, 7, 10] },
];

export const TYPES = CHORD_TYPES.length;
/** Chords are numbered root by root: `TYPES · root + type`; the number behind the last is no chord. */
export const CHORDS = 12 * TYPES;
export const NO_CHORD = CHORDS;

export const rootOf = (chord: number): number => Math.floor(chord / TYPES);
export const typeOf = (chord: number): number => chord % TYPES;
