/**
 * Constants of the stage samples → frames. "Inner samples" are samples at INNER_RATE, 1/12 ms each. "a → b of F1" is
 * the note F1 on tuning lines without the constant's idea and with it.
 */

// The inner rate and the resampler.

/** Hz. Every input is brought to this rate: the highest string note (E6, 1319 Hz) keeps three harmonics. */
export const INNER_RATE = 12000;
/** Hz. The resampler passes everything below this: the harmonics that carry pitch. */
export const PASS_HZ = 4000;
/** Hz. The resampler stops everything above this. What folds back lies between 4 kHz and 6 kHz. */
export const STOP_HZ = 8000;
/** Pole of the filter that removes a constant offset: y[n] = x[n] − x[n−1] + pole · y[n−1], 20 Hz at the inner rate. */
export const DC_POLE = 0.9896;

// The two windows of the pitch.

/** Inner samples of the middle window: 29 ms, four periods of E3 and two of E2. */
export const WINDOW = 352;

/** Inner samples of the shortest period: 2.4 kHz (D7). */
export const SHORTEST_LAG = 5;

/** Inner samples: the middle window holds two periods up to here. PAIR_SIZE − WINDOW must not be less. */
export const WINDOW_LONGEST_LAG = 160;

/** dBFS (RMS). A window below this is empty and is not correlated. */
export const EMPTY_DB = -90;
/** Inner samples left out on each side of the window for its level: the middle 21 ms are where its pitch is. */
export const LEVEL_MARGIN = 48;

// Candidates: peaks of the normalised square difference.

/** Candidates kept for a frame. */
export const CANDIDATES = 6;
/**
 * A candidate's peak reaches this share of the highest peak of its frame. Measured together with OCTAVE_DOWN_COST; with
 * 0.6 the ringing tuning lines gain 0.002 of F1 and the listener is slower.
 */
export const CANDIDATE_SHARE = 0.75;
/** Peaks looked at before CANDIDATE_SHARE is applied. */
export const PEAKS_SEEN = 24;
/** On whole lags a narrow peak may stand at this share of its true height. */
export const ON_LAG_SHARE = 0.75;
/** Taps on each side, and steps a lag, of the interpolation between lags. */
export const SINC_REACH = 4;
export const SINC_STEPS = 32;
/** A period is refined at its multiples: the peak is looked for within this part of a period, */
export const REFINE_REACH = 1 / 5;
/** is at least so high, */
export const REFINE_LEAST = 0.5;
/** and moves the period by no more than this part of it. */
export const REFINE_MOST = 0.03;

// Spectral flux.

// The sound before an attack and after it.

// Partials of a steady stretch.

/** Inner samples of the longest and the shortest stretch: 171 and 85 ms. */
export const LONGEST_STRETCH = 2048;
export const SHORTEST_STRETCH = 1024;
/** Points of the transform: zero-padded twice at least, so that three points about a peak lie on one lobe. */
export const PARTIAL_SIZE = 4096;
/** Hz of the lowest partial. */
export const PARTIAL_LEAST_HZ = 36;
/** A partial has at least this share of the strongest one's amplitude (−40 dB), */
export const PARTIAL_LEAST_SHARE = 0.01;
/** and stands so many times above the valleys on both sides (6 dB), */
export const PARTIAL_PROMINENCE = 2;
/** which lie within so many bins of the window. */
export const PARTIAL_VALLEY_BINS = 2.5;
/** Within so many bins of a stronger partial, one under this share of its amplitude (−24 dB) is its side lobe. */
export const LOBE_BINS = 3.5;
export const LOBE_SHARE = 0.06;
