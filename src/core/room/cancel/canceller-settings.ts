/** What a canceller is made with, and the constants of its filter. */

export interface CancellerSettings {
  /** Samples of a block, a power of two; the output is delayed by one block. */
  readonly blockSize: number;
  /** Blocks of the path that are modelled. */
  readonly partitions: number;
  /** For each channel of the band the path that a sweep measured, index 0 at no delay; null where none is known. */
  readonly path: readonly (Float32Array | null)[];
  /**
   * The player's power is taken to be this many times what was measured, while learning; by default it depends on what
   * is known.
   */
  readonly caution?: number;
  /** Power that the path may have beyond what is known, as a ratio to the power of what is known; by default 0. */
  readonly beyond?: number;
  /** By how many parts per million the two clocks may differ; by default 200. */
  readonly clockPpm?: number;
  /** By how many samples the delay may be wrong at the start; by default a tenth. */
  readonly delayDoubt?: number;
}

/**
 * Where a note of the player and one of the band share a bin, they keep a constant phase to each other for many blocks,
 * so that the blocks are no independent measurements. The player is therefore taken to be louder than measured. Level of
 * the band that is left after 8 s, relative to the player, eight tuning lines, after a sweep: factor 1 −30.8 dB, factor 4
 * −34.8 dB, factor 10 −36.8 dB; with a path that is wrong by 20 dB: −30.0, −32.2 and −32.0 dB.
 */
export const KNOWN_CAUTION = 4;
/**
 * While the path is unknown, most of what is taken for the player is the band. The same lines without a sweep: factor 4
 * −9.3 dB, factor 1 −14.2 dB, factor 0.3 −15.6 dB, factor 0.1 −15.0 dB.
 */
export const BLANK_CAUTION = 0.3;
/** Growth a block, from BLANK_CAUTION to KNOWN_CAUTION within 12 s in which the band plays. */
export const CAUTION_GROWTH = 1.0023;
/** Smoothing of the player's spectrum, a time constant of about 5 blocks: an attack must count at once. */
export const NEAR_SMOOTHING = 0.8;
/** Blocks between two corrections of the clock by what the path has learned: half a second. */
export const GIVING_BLOCKS = 48;
/** Smoothing of the band's power in each bin. */
export const SOUNDING_SMOOTHING = 0.995;
/** A change of delay of more samples than this within half a second is no drift of the clocks but another path. */
export const MOST_LATENESS = 0.5;
/** A block of the band whose spectrum has less power than this (−100 dB of full scale) is silent and skipped. */
export const SILENT = 1e-6;
