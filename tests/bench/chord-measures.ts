/**
 * How alike two rows of chords are, as mir_eval's `chord.majmin` and `chord.sevenths` measure it: each stretch of time
 * counts by its length, chords outside the vocabulary of the measure are left out where they are the truth, no chord
 * counts. `tests/bench/chord-measures.test.ts` checks the numbers against mir_eval.
 */
import { CHORD_TYPES, NO_CHORD, TYPES } from '../../src/core/harmony/chord-types.ts';

/** Stretches of one chord, in seconds; each begins where the one before it ends. */
export type Stretches = readonly { readonly from: number; readonly to: number; readonly chord: number }[];

const MINOR = new Set(['m', 'm7']);
const SEVENTHS = new Set(['', 'm', '7', 'maj7', 'm7']);
const suffixOf = (chord: number) => CHORD_TYPES[chord % TYPES]!.suffix;

/** Root and third; null outside the vocabulary. */
export const majmin = (chord: number): number | null =>
  chord === NO_CHORD
    ? -1
    : SEVENTHS.has(suffixOf(chord))
      ? 2 * Math.floor(chord / TYPES) + (MINOR.has(suffixOf(chord)) ? 1 : 0)
      : null;

/** Root, third and seventh; null outside the vocabulary. */
export const sevenths = (chord: number): number | null =>
  chord === NO_CHORD ? -1 : SEVENTHS.has(suffixOf(chord)) ? chord : null;

/** Root alone. */
export const root = (chord: number): number | null => (chord === NO_CHORD ? -1 : Math.floor(chord / TYPES));

/** Seconds that are right, and seconds that count. What is found outside the truth's stretches counts neither way. */
export function secondsRight(
  truth: Stretches,
  found: Stretches,
  reduce: (chord: number) => number | null,
): readonly [right: number, all: number] {
  let [right, all, at] = [0, 0, 0];
  for (const stretch of truth) {
    const wanted = reduce(stretch.chord);
    if (wanted === null) continue;
    all += stretch.to - stretch.from;
    while (at > 0 && (at >= found.length || found[at]!.from > stretch.from)) at--;
    for (; at < found.length && found[at]!.from < stretch.to; at++) {
      const overlap = Math.min(stretch.to, found[at]!.to) - Math.max(stretch.from, found[at]!.from);
      if (overlap > 0 && reduce(found[at]!.chord) === wanted) right += overlap;
      if (found[at]!.to > stretch.to) break;
    }
  }
  return [right, all];
}
