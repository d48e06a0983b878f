/**
 * The band's balance before anyone touches a level. Measured over a chorus of each feel with ffmpeg's ebur128
 * (loudness by ITU-R BS.1770), at these gains: bass -23 to -27 LUFS, drums from 2 above to 4 below it, chords
 * level with it to 4 below, the whole -19 to -24 LUFS, its highest peak (a last bar) at -2 dBFS. A laptop's loudspeaker
 * reproduces little of the bass, so that the bass may be the loudest part.
 */
import type { BandPart } from '../band/events.ts';

export interface PartMix {
  readonly gain: number;
  /** -1 left to 1 right. */
  readonly pan: number;
  /** The room's level against the dry sound, as a factor. */
  readonly room: number;
}

/**
 * Chords are panned a little to the side, so that drums and bass keep the middle; the bass has no room, which would
 * only boom.
 */
const parts: Readonly<Record<BandPart, PartMix>> = {
  drums: { gain: 1.07, pan: 0, room: 0.09 },
  bass: { gain: 0.96, pan: 0, room: 0 },
  chords: { gain: 0.64, pan: -0.25, room: 0.1 },
  line: { gain: 0.7, pan: 0.25, room: 0.1 },
  click: { gain: 1, pan: 0, room: 0 },
};

/** The line must be the loudest; the kit's clean guitar is softer than its piano. */
const lineGain: Readonly<Record<number, number>> = { 4: 0.9, 27: 1.5 };

/** Chord instruments are recorded at their own levels; these bring them together. */
const chordGain: Readonly<Record<number, number>> = { 4: 0.76, 17: 0.64, 24: 0.84, 27: 0.52 };

export function mixOf(part: BandPart, program: number): PartMix {
  const mix = parts[part];
  const gains = part === 'chords' ? chordGain : part === 'line' ? lineGain : {};
  return { ...mix, gain: gains[program] ?? mix.gain };
}
