/** Constants of the network's input and output. The training script holds the same ones (fixtures/network/features.py). */

/** Sound is brought to this rate first, in Hz. */
export const INNER_RATE = 12000;
/** Samples from one frame to the next: 16 ms. */
export const HOP = 192;
/** The two windows end at the frame's end: 85 ms tells low pitches apart, 43 ms follows fast notes. */
export const LONG = 1024;
export const SHORT = 512;

/** The network answers for the semitones LOW_MIDI to LOW_MIDI + PITCHES − 1 (E1 to D♯7). */
export const LOW_MIDI = 28;
export const PITCHES = 72;
/** Bins of a third of a semitone, the first a third below LOW_MIDI, the last at 4.3 kHz where the resampler closes. */
export const PER_SEMITONE = 3;
export const EDGE = 1;
export const BINS = 243;
/** Empty bins on either side, so that no harmonic falls outside. */
export const PAD = 100;
export const ROW = BINS + 2 * PAD;
/** Numbers that a frame gives beside its bins. */
export const GLOBALS = 9;
/** Blocks of 4 ms to a frame, whose energy dates attacks. */
export const BLOCKS = 4;

/** The level that all else is relative to never lies lower (dBFS), and falls by no more than this a frame (2 dB a second). */
export const FLOOR_DB = -60;
export const FALL_DB = 0.032;
/** Lags kept of the two autocorrelations. */
export const LONG_LAGS = 400;
export const SHORT_LAGS = 200;

/** Frame n answers for the moment (n − DELAY_FRAMES) · HOP / INNER_RATE: 64 ms before its own end. */
export const DELAY_FRAMES = 3;
