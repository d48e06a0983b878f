/** Constants of the stage samples → frames. Times are given in samples of the inner rate. */

/** Every input is brought to this rate: the highest string note (E6, 1319 Hz) keeps three harmonics. */
export const INNER_RATE = 12000;
/** The resampler's edges in Hz: what folds back lies above 4 kHz, beyond the harmonics that carry pitch. */
export const PASS_HZ = 4000;
export const STOP_HZ = 8000;

/** One pitch frame every 8 ms. */
export const FRAME_HOP = 96;
/** Flux and fine energy every 4 ms: two to a frame, sharing one transform. */
export const TICK_HOP = 48;
/** Blocks of fine energy, 1 ms: they date an attack. */
export const BLOCK = 12;

/** 29 ms: four periods of E3, two of E2; the windows of two frames share one transform of PAIR_SIZE. */
export const WINDOW = 352;
export const PAIR_SIZE = 512;
/** 85 ms at half the inner rate, for the bass. */
export const LOW_WINDOW = 512;
export const LOW_FACTOR = 2;

/** Shortest and longest period: 2.4 kHz (D7) and 38 Hz (below E1). */
export const SHORTEST_LAG = 5;
export const LONGEST_LAG = 316;
/** The window holds two periods up to here, and PAIR_SIZE − WINDOW must not be less. */
export const WINDOW_LONGEST_LAG = 160;
/** The low window is asked for periods from here (150 Hz down). */
export const LOW_SHORTEST_LAG = 80;

/** Candidates kept a frame. */
export const CANDIDATES = 6;
/** A candidate counts from this share of the frame's best peak (measured together with OCTAVE_DOWN_COST). */
export const CANDIDATE_SHARE = 0.75;
