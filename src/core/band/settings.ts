/** How the band is asked to play. */
import type { FeelName } from '../chart/feel-names.ts';
import type { TempoRise } from '../chart/timeline.ts';

export interface BandSettings {
  readonly feel: FeelName;
  /** Beats a minute, 40 to 280. */
  readonly bpm: number;
  /** Share of the beat that the first eighth takes, 0.5 to 0.8; null: what players take at this tempo. */
  readonly swing: number | null;
  /** Any whole number: the same seed plays the same notes. */
  readonly seed: number;
  /** Bars of clicks before the first downbeat, 0 to 4. */
  readonly countInBars: number;
  /** Chords are left out in every second chorus, so that the player must hear them; not where left out. */
  readonly chordsRest?: boolean;
  /** A metronome on the second and fourth beat all through; not where left out. */
  readonly backbeatClick?: boolean;
  /** The tempo rises as the form goes round; where left out it stays. */
  readonly rise?: TempoRise;
  /** Player and band take turns; where left out the player plays all through. */
  readonly trade?: Trade;
  /** One chord of one or two notes in place of bass and chords. */
  readonly drone?: Drone;
}

/** Turns of so many bars, the player's first, counted from the first downbeat. In its own the band plays a line. */
export interface Trade {
  /** 1 or more. */
  readonly bars: number;
  /** Id of the aim (`grade/aims/targets.ts`) that the line is an example of. */
  readonly aim: string;
}

export interface Drone {
  readonly tones: DroneTones;
  /** Above the form's tonic, one for each equal part of the chorus: [0] where the key stays. */
  readonly semitones: readonly number[];
}

export type DroneTones = 'root' | 'root and fifth';
