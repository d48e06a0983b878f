/** Where a pitch lies on a neck. */
import type { Instrument } from './instruments.ts';

/** A string and a fret. */
export interface NeckPosition {
  /** As players count them: 1 is the highest string. */
  readonly string: number;
  /** Counted from the nut, under a capo too; the capo's own fret is the open string. */
  readonly fret: number;
}

/**
 * Every place where a sounding whole MIDI number can be played, the lowest fret first; empty where there is none,
 * and for an instrument without a neck. For a left-handed player the picture is mirrored, the numbers are the same.
 *
 * @example positionsOf(48, guitar) // C3: fifth string, fret 3; sixth string, fret 8
 */
export function positionsOf(midi: number, instrument: Instrument): readonly NeckPosition[] {
  const { neck } = instrument;
  if (!neck) return [];
  return neck.openStrings
    .map((open, index) => ({ string: neck.openStrings.length - index, fret: midi - open }))
    .filter(({ fret }) => Number.isInteger(fret) && fret >= neck.capo && fret <= neck.frets)
    .sort((a, b) => a.fret - b.fret || a.string - b.string);
}

/** The place for a pitch that is nearest to the position of the hand, or null; of equally near ones the lower fret. */
export function nearestPosition(
  midi: number,
  instrument: Instrument,
  hand: NeckPosition,
): NeckPosition | null {
  const distance = (at: NeckPosition) => Math.abs(at.fret - hand.fret) + Math.abs(at.string - hand.string);
  return positionsOf(midi, instrument).reduce<NeckPosition | null>(
    (best, here) => (best === null || distance(here) < distance(best) ? here : best),
    null,
  );
}
