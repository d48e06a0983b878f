/** The ways on from a review: the same again, its bars, another aim, the whole form. */
import type { BarsToTry } from '../../state/tries.svelte.ts';

export interface PlayAgain {
  /** A take of the player's own, somebody else's or a recording, or bars that are being tried. */
  readonly how: 'again' | 'yourself' | 'bars';
  /** Until it is played again by itself; null where it is not. */
  readonly inSeconds: number | null;
  onagain(): void;
  /** Takes the report's next aim, and plays. */
  onnextaim(): void;
  /** Bars go round with the band, to be tried again. */
  ontry(bars: BarsToTry): void;
  /** Ends a trial of bars, and plays the whole form. */
  onwhole(): void;
  /** Shows the line written out as notes. */
  onwritten(): void;
}
