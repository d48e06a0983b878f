/** The band's balance before anyone touches a level. Measured with `tests/audio/band-balance.test.ts`. */
import type { BandPart } from '../../core/band/events.ts';

export const partGain: Readonly<Record<BandPart, number>> = {
  drums: 0.6,
  bass: 0.8,
  chords: 0.5,
  click: 0.6,
};

/** -1 left to 1 right: chords a little aside, so that drums and bass keep the middle. */
export const partPan: Readonly<Record<BandPart, number>> = { drums: 0, bass: 0, chords: -0.25, click: 0 };
