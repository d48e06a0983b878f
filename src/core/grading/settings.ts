/** What a take is graded by: settings of the caller, constants of the house. */
import type { Instrument } from '../music/instruments.ts';
import type { LostStretch } from '../report/lost-sound.ts';
import type { Aim } from './aim.ts';

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
  /** A rest this long ends a phrase. */
  readonly phraseGapBeats?: number;
  /** The tones that count as colour, a name out of scales.ts. */
  readonly palette?: PaletteName;
  /** What is played, for the places in the advice and for written pitch. */
  readonly instrument?: Instrument;
  /** The aims that this take tries for; the ladder of the house is measured all the same. */
  readonly aims?: readonly Aim[];
}

/** Where a backing lay in the take, and how much of it was taken out. */
export interface BackingFacts {
  /** Take time at which the backing's first sample is heard; negative where its start was cut off. */
  readonly offsetSeconds: number;
  /** How much faster the backing ran in the take than in its file, parts per million. */
  readonly driftPpm: number;
  /** How far the level fell where the player rests, dB (ITU-T G.168's echo return loss enhancement). */
  readonly removedDb: number;
}

/** Scales a player may draw colour from, on the key's tonic. */
export type PaletteName =
  'both pentatonics' | 'minor pentatonic' | 'major pentatonic' | 'blues scale' | 'key';

/** A landing may come up to one beat after its change (the definition of a landing). */
export const LANDING_BEATS = 1;

/** A rest of a beat ends a phrase (the definition of a phrase; settable). */
export const PHRASE_GAP_BEATS = 1;

/** b3 into 3 is one gesture when it takes half a beat or less (the definition of a lean). */
export const LEAN_BEATS = 0.5;

/** A note belongs to a beat when it lies nearer to it than to the eighths around it. */
export const ON_BEAT_BEATS = 0.25;
