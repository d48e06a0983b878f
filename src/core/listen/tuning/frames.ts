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
/** Taps of the half-band filter before the bass window: the middle one, its neighbours, and the outer ones (Hamming's 7). */
export const HALF_BAND_MIDDLE = 0.5;
export const HALF_BAND_NEAR = 0.28125;
export const HALF_BAND_FAR = -0.03125;

// The grid of time.

/** Inner samples from one pitch frame to the next: 8 ms. */
export const FRAME_HOP = 96;
/** Frames in a second, from FRAME_HOP. */
export const FRAMES_A_SECOND = INNER_RATE / FRAME_HOP;
/** Inner samples from one tick of the flux to the next: 4 ms. Two ticks belong to a frame and share one transform. */
export const TICK_HOP = 48;
/** Inner samples of a block of fine energy: 1 ms. Blocks date an attack. */
export const BLOCK = 12;

// How much is remembered.

/** Ticks and blocks that the traces hold: 33 s, a power of two. */
export const TICKS_KEPT = 8192;
export const BLOCKS_KEPT = 4 * TICKS_KEPT;
/** Inner samples of the working buffer: 1.4 s. */
export const BUFFER = 16384;
/** Inner samples before the newest that stay in the working buffer: longer than every window of a frame. */
export const KEEP = 2048;
/** Inner samples remembered for partials and attack spectra: 10.9 s, a power of two. One push overwrites the oldest part. */
export const MEMORY = 131072;

// The two windows of the pitch.

/** Inner samples of the middle window: 29 ms, four periods of E3 and two of E2. */
export const WINDOW = 352;
/** Points of the transform that two middle windows share. */
export const PAIR_SIZE = 512;
/** Samples of the low window at INNER_RATE / LOW_FACTOR: 85 ms, for the bass. */
export const LOW_WINDOW = 512;
/** How many times slower the low window is sampled. */
export const LOW_FACTOR = 2;
/** Inner samples of the shortest period: 2.4 kHz (D7). */
export const SHORTEST_LAG = 5;
/** Inner samples of the longest period: 38 Hz (below E1). */
export const LONGEST_LAG = 316;
/** Inner samples: the middle window holds two periods up to here. PAIR_SIZE − WINDOW must not be less. */
export const WINDOW_LONGEST_LAG = 160;
/** Inner samples: the low window is asked for periods from here on (150 Hz and lower). */
export const LOW_SHORTEST_LAG = 80;
/** dBFS (RMS). A window below this is empty and is not correlated. */
export const EMPTY_DB = -90;
/** Inner samples left out on each side of the window for its level: the middle 21 ms are where its pitch is. */
export const LEVEL_MARGIN = 48;
/** Clarity. A candidate above 150 Hz that is clearer than this makes the low window needless. */
export const CLEAR = 0.92;
/** Frames by which the middle of the low window trails that of the middle window, to 3 ms. */
export const LOW_TRAIL = 4;

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

/** Inner samples of the window of the flux: 21 ms, bins of 47 Hz. */
export const FLUX_SIZE = 256;
/** The highest bin of the flux: 5.2 kHz. */
export const FLUX_BINS = 112;
/** The lowest bin of the flux. Bins below it (94 Hz) carry hum and the beating of fundamentals, not attacks. */
export const FLUX_FIRST_BIN = 2;
/** Ticks that the flux looks back: 12 ms, as long as the window takes to rise over an attack. */
export const FLUX_BACK = 3;
/** Magnitudes are compressed as log(1 + m / floor). The floor is this share of the loudest bin of late. */
export const FLUX_FLOOR_SHARE = 1 / 300;
/** The loudest bin is multiplied by this at every tick: a time constant of 4 s. */
export const FLUX_FORGET = 0.999;
/** The floor is never less: −90 dB of a full-scale sine, whose bin is 64 (Hann window, FLUX_SIZE / 4). */
export const FLUX_LEAST_FLOOR = 64 * 3e-5;

// The sound before an attack and after it.

/** Inner samples looked at before an attack and after it: 85 ms, or 43 ms where the next attack is near. */
export const LONG_ATTACK_WINDOW = 1024;
export const SHORT_ATTACK_WINDOW = 512;
/** Inner samples between the attack and either window: 4 ms. */
export const ATTACK_GAP = 48;
/** Points of the transform that both windows share. */
export const ATTACK_SIZE = 2048;
/** The lowest bin that may hold a pitch: 18 Hz. */
export const ATTACK_FIRST_BIN = 3;
/** Bins by which a partial that sounded before the attack may have moved. */
export const BLUR_BINS = 2;
/** A harmonic takes so many bins of the window on each side, but no more than this share of the fundamental. */
export const HARMONIC_BINS = 1.6;
export const HARMONIC_SHARE = 0.25;
/** Harmonics that the fundamental is compared with. */
export const FUNDAMENTAL_HARMONICS = 10;
/** A fundamental under this share of the strongest harmonic's amplitude counts as missing. */
export const MISSING_FUNDAMENTAL = 1e-3;
/**
 * A candidate's peak reaches this share of the highest. Two notes that are struck together share the power: the period of
 * each has half the height of the period that both have in common. With 0.5 double stops' upper notes gain 0.005 and
 * ringing strings lose 0.007 of F1.
 */
export const ATTACK_CANDIDATE_SHARE = 0.62;
/** The peak at a period is looked for within this part of the period. */
export const ATTACK_LAG_REACH = 0.02;
/** The curve of what was added is noisy far out: a period is refined within so many periods. */
export const ADDED_PERIODS = 3.5;
/** A harmonic that is nearer than so many bins of the window to a harmonic of another note is hidden by it. */
export const HIDDEN_BINS = 2;
/** A note whose harmonics hold less than this part of the strongest bin's power did not sound before the attack. */
export const LEAST_KEPT = 0.01;

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
