/** Constants of the pitch of the newest frame, for the live screen. */

/** dBFS. Under this level nothing is shown. */
export const LIVE_LEAST_DB = -66;
/** A lower peak is no pitch, */
export const LIVE_LEAST_CLARITY = 0.75;
/** and the shortest period wins whose peak is this share of the highest (k of McLeod & Wyvill 2005, section 5). */
export const LIVE_SHARE = 0.88;
/** MIDI. Below this (75 Hz) the live pitch waits for the low window. */
export const LIVE_LOW_MIDI = 38.4;
