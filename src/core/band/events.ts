/**
 * What the band plays, with no sound in it: notes on a grid of beats. Beat 0 is the first downbeat; the
 * count-in has negative beats. Key numbers follow the MIDI table (middle C = C4 = 60); drum keys follow the
 * General MIDI percussion map.
 */

/** Each part has its own level and mute; `line` is the example in the band's turns, `click` the count-in. */
export type BandPart = 'drums' | 'bass' | 'chords' | 'line' | 'click';

export const bandParts: readonly BandPart[] = ['drums', 'bass', 'chords', 'line', 'click'];

/** One note of the band. */
export interface BandEvent {
  readonly beat: number;
  readonly durationBeats: number;
  readonly part: BandPart;
  readonly midi: number;
  /** 1 to 127. */
  readonly velocity: number;
}

/** A finished arrangement: count-in, choruses, and an ending where one was asked for; sorted by beat. */
export interface Arrangement {
  readonly events: readonly BandEvent[];
  /** Beats of one chorus. */
  readonly chorusBeats: number;
  /** The ending, where there is one, comes after them. */
  readonly choruses: number;
  /** Zero or below: where the count-in begins. */
  readonly startBeat: number;
  /** Where the last chorus, or the ending after it, is over. Notes may ring on. */
  readonly endBeat: number;
}
