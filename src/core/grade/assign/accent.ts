/** How much a note weighs by its length alone. */

/** Accent saturates with this time constant (Parncutt 1994). */
const SATURATION_SECONDS = 0.5;
/** The accent index of the same paper. */
const ACCENT_INDEX = 2;

/**
 * Durational accent (1 - e^(-IOI / 0.5 s))^2 of R. Parncutt, Music Perception 11, 1994: 0 for no length, towards 1.
 * @param ioiSeconds from this onset to the next; a last note's own length stands for it
 * @throws RangeError for a negative interval
 */
export function durationalAccent(ioiSeconds: number): number {
  if (!(ioiSeconds >= 0)) throw new RangeError(`an inter-onset interval is 0 s or more, found ${ioiSeconds}`);
  return (1 - Math.exp(-ioiSeconds / SATURATION_SECONDS)) ** ACCENT_INDEX;
}
