/** A note with everything that the chord under it says about it: what all later rules work on. */
import type { Chord } from '../../music/chord.ts';
import type { Attribution } from './attribute.ts';
import type { HeardNote } from '../../take/note.ts';
import type { Role } from '../../take/schema.ts';

export interface GradedNote {
  readonly index: number;
  readonly heard: HeardNote;
  /** Nearest whole MIDI number at the reference, and what is left over. */
  readonly pitch: number;
  readonly pitchClass: number;
  readonly cents: number;
  /** Nearest whole MIDI number of a second note that sounds with it, or null. */
  readonly second: number | null;
  readonly onsetBeat: number;
  readonly offsetBeat: number;
  /** The chord it is graded against; null over none. */
  readonly chord: Chord | null;
  /**
   * The change whose chord it has before that arrives, as a beat: an anticipation, or a note so little early that it is
   * played on the change. null when its chord is the one at its onset.
   */
  readonly anticipates: number | null;
  /** The change across which the note sounds, where it is early enough for it, whether or not it fits the new chord. */
  readonly early: { readonly beat: number; readonly chord: Chord; readonly from: Chord | null } | null;
  /** The chord that arrives at the next change, where the note still sounds there; null when it ends before. */
  readonly heldInto: Chord | null;
  readonly degree: string | null;
  readonly role: Role | null;
  readonly keyDegree: string;
  /** Which rule gave it its chord. */
  readonly rule: Attribution['rule'];
  /** How far it runs ahead of its chord, in beats; null where it does not. */
  readonly aheadBeats: number | null;
}
