/** How the band is asked to play. */

export type FeelName = 'shuffle' | 'swing' | 'straight' | 'slow-blues' | 'funk' | 'bossa' | 'rock' | 'ballad';

export const feelNames: readonly FeelName[] = [
  'shuffle',
  'swing',
  'straight',
  'slow-blues',
  'funk',
  'bossa',
  'rock',
  'ballad',
];

export const slowestBpm = 40;
export const fastestBpm = 280;

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
}
