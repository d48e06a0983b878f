/**
 * The smallest types of harmony. A pitch class is a whole number 0 to 11, C being 0.
 * A degree is written as players write it: "1", "b3", "3", "#11".
 */

/** What a chord tone does in its chord. The sixth of a 6 chord sits with the sevenths. */
export type ToneRole = 'root' | 'third' | 'fifth' | 'seventh' | 'extension';

/** One tone that a chord symbol names. */
export interface ChordTone {
  readonly pitchClass: number;
  /** From the root, spelled the way the chord spells it: "b3" and "#9" are told apart by the chord. */
  readonly degree: string;
  readonly role: ToneRole;
  /** Spelled note name, ASCII accidentals: "Bb". */
  readonly name: string;
}

/** A chord as its symbol names it. */
export interface Chord {
  /** As written in the chart, white space trimmed. */
  readonly symbol: string;
  /** Spelled root, ASCII accidentals: "Eb". */
  readonly root: string;
  readonly rootPitchClass: number;
  /** Spelled bass after a slash, else null. The bass is no extra chord tone. */
  readonly bass: string | null;
  /** In the order root, third, fifth, seventh, extensions. */
  readonly tones: readonly ChordTone[];
}

/** The key that gives every note its second reading. */
export interface Key {
  /** Spelled tonic, ASCII accidentals: "F#". */
  readonly tonic: string;
  readonly tonicPitchClass: number;
  readonly mode: 'major' | 'minor';
}
