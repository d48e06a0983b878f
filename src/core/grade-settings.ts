/** What a take is graded by: the settings of the caller. The constants of the definitions are in grade/assign/settings.ts. */
import type { Correction } from './take/correction.ts';
import type { Instrument } from './music/instruments.ts';
import type { Aim } from './grade/aims/aim.ts';
import type { PaletteName } from './grade/assign/settings.ts';
import type { BackingFacts } from './take/backing-facts.ts';
import type { LostStretch } from './take/lost-sound.ts';

/** What the caller knows or chooses. Everything but the source and the reference has a default. */
export interface GradeSettings {
  readonly source: {
    readonly kind: 'audio' | 'notes' | 'microphone';
    /** Whole length of the input in seconds. */
    readonly durationSeconds: number;
    /** In Hz; null for a list of notes. */
    readonly sampleRate: number | null;
    /** The backing that was taken out before listening; null where it was looked for and not heard. */
    readonly backing?: BackingFacts | null;
    /** Where sound was lost while recording, in order. */
    readonly lost?: readonly LostStretch[];
  };
  /** A4 in Hz, or 'auto' to estimate it from the notes. */
  readonly referenceHz: number | 'auto';
  /** How early a note may anticipate a change; an eighth note of the timeline's feel unless given. */
  readonly anticipationBeats?: number;
  /** How inexact hands may be before a change, in seconds: 0 to 0.1; see grade/assign/tolerance.ts. */
  readonly toleranceSeconds?: number;
  /** A rest this long ends a phrase. */
  readonly phraseGapBeats?: number;
  /** The tones that count as colour, a name out of scales.ts. */
  readonly palette?: PaletteName;
  /** What is played, for the places in the advice and for written pitch. */
  readonly instrument?: Instrument;
  /** The aims that this take tries for; the ladder of the house is measured all the same. */
  readonly aims?: readonly Aim[];
  /** What the player has corrected of the notes, in order. */
  readonly corrections?: readonly Correction[];
}
