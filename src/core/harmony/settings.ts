/** Constants of the chord finding, with their reasons. */

/** What carries the harmony lies below 5 kHz. */
export const HARMONY_HZ = 12_000;
export const PASS_HZ = 4500;
export const STOP_HZ = 7500;
/** 341 ms at 12 kHz: bins of 2.9 Hz, a semitone at 50 Hz; about a beat at 180 a minute. */
export const WINDOW = 4096;
/** 64 ms: five frames in a beat at 180 a minute. */
export const HOP = 768;

/** The lowest and the highest tone that is looked at: E1, the bass's lowest string, to D#7. */
export const LOWEST_MIDI = 28;
export const HIGHEST_MIDI = 99;
export const TONES = HIGHEST_MIDI - LOWEST_MIDI + 1;

/** Magnitudes are compressed by this power, so that soft inner voices count beside a loud bass (as loudness does, Stevens 1957). */
export const COMPRESSION = 0.4;
/** The mean of so many tones either way is taken off each: noise of drums is as broad as that, a tone is not. */
export const WHITENING_TONES = 9;

/** Registers whose tones are folded into twelve pitch classes each: bass, low and middle and high chords. The first MIDI number of each. */
export const REGISTERS = [28, 48, 60, 76] as const;
export const FOLDED = 12 * REGISTERS.length;

/** A bar is shown as sure from this probability on; the folder's README says how often such bars are right. */
export const SURE = 0.999;
