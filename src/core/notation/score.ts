/**
 * A line as it is written: measures of notes and rests. Places and lengths are whole ticks, 120 a quarter note, which
 * eighths, triplets, sixteenths, quintuplets, sextuplets and thirty-seconds all divide.
 */

export const TICKS_PER_QUARTER = 120;

/** Names of note values as MusicXML has them (note-type-value). */
export type ValueName = 'whole' | 'half' | 'quarter' | 'eighth' | '16th' | '32nd' | '64th';

/** `actual` notes in the time of `normal` ones, like 3 in the time of 2. */
export interface Ratio {
  readonly actual: number;
  readonly normal: number;
}

/** The group that a written note belongs to, where it is no plain division of the beat. */
export interface InTuplet extends Ratio {
  /** One of the `actual` notes. */
  readonly part: ValueName;
  /** Whether the group begins or ends with this note or rest. */
  readonly starts: boolean;
  readonly stops: boolean;
}

/** One sign on the staff: a note head or a rest. */
export interface Written {
  /** From the start of the measure. */
  readonly atTicks: number;
  /** As it sounds, a tuplet's note shorter than its value. */
  readonly ticks: number;
  readonly value: ValueName;
  readonly dotted: boolean;
  readonly tuplet: InTuplet | null;
  /** Which of the notes that came in; null for a rest. */
  readonly note: number | null;
  /** Tied to the sign before, or on to the one behind. */
  readonly tiedFrom: boolean;
  readonly tiedOn: boolean;
  /** Notes that came in and are written small before this one, in order. */
  readonly graces: readonly number[];
}

export interface Measure {
  /** Counted on through the choruses from the first downbeat, from 0; below 0 before it. */
  readonly bar: number;
  readonly ticks: number;
  /** Together as long as the measure. A measure of silence is one rest. */
  readonly signs: readonly Written[];
}

/** What stands behind the clef: 4 over 4, 12 over 8. */
export interface WrittenMeter {
  readonly beats: number;
  readonly beatType: 4 | 8;
}

export interface WrittenLine {
  readonly meter: WrittenMeter;
  /** Ticks of a beat as it is felt: 120, or 180 where it is a dotted quarter. */
  readonly beatTicks: number;
  readonly measures: readonly Measure[];
  /** Where each note that came in is written, ticks from the first downbeat; a grace stands where its main note does. */
  readonly onsetTicks: readonly number[];
}
