/** The constants of the definitions, and the palettes by name. */

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
