/**
 * Constants of the stage traces → attacks. "a → b of F1" is the note F1 on tuning lines without the constant's idea
 * and with it.
 */

// Which peaks of the flux are attacks.

/** Nepers a bin. The flux at an attack is at least this. */
export const ATTACK_FLUX = 0.06;
/** The flux at an attack is at least so many times the local median. */
export const ATTACK_RATIO = 2;
/** The local median counts as no less than this (nepers a bin): in silence it is next to nothing. */
export const LEAST_MEDIAN_FLUX = 0.004;
/** Ticks (4 ms) on each side in which a peak must be the highest: 16 ms. */
export const PEAK_REACH = 4;
/** Ticks of the local median before the peak and after it: 120 ms and 32 ms. */
export const MEDIAN_BEFORE = 30;
export const MEDIAN_AFTER = 8;
/** Blocks (1 ms) over which energy is taken before and after an attack: one period of E1. */
export const ENERGY_BLOCKS = 25;

// When the attack begins.

/** The steepest rise of the bright part is looked for in so many blocks (1 ms) before the end of the peak's tick. */
export const STEEPEST_BLOCKS = 20;
/** Where nothing rises, the attack is so many blocks before the end of the tick. */
export const NO_RISE_BLOCKS = 8;
/** Blocks averaged on each side of a moment when its rise is taken. */
export const RISE_BLOCKS = 4;
/** Rises count above this share of the bright part's mean over so many blocks, which begin so many before the end. */
export const RISE_FLOOR_SHARE = 0.02;
export const RISE_FLOOR_BLOCKS = 24;
export const RISE_FLOOR_BACK = 22;
/** A slow attack begins at its foot: this share of the power that it reaches (a tenth of the amplitude), */
export const FOOT_SHARE = 0.01;
/** above the power before it times this. */
export const FOOT_ABOVE = 1.5;
/** The power before it: the mean of so many blocks, which begin so many blocks before the steepest rise. */
export const FOOT_BEFORE_BLOCKS = 16;
export const FOOT_BEFORE_BACK = 40;
/** The power that it reaches: the highest mean of so many blocks, looked for in so many blocks, step by step. */
export const FOOT_PEAK_BLOCKS = 8;
export const FOOT_PEAK_WITHIN = 40;
export const FOOT_PEAK_STEP = 4;
/** The foot lies no more than so many blocks before the steepest rise: 30 ms, */
export const FOOT_REACH = 30;
/** and is found by the mean of so many blocks. */
export const FOOT_BLOCKS = 3;

// Kinds of attack.

/** A strong attack is a new note whatever its pitch. Struck strings and tongued winds have a flux of 0.2 to 3, */
export const STRONG_FLUX = 0.2;
/** and 12 to 600 times the local median. */
export const STRONG_RATIO = 10;
/** A clear rise of flux, ratio and energy together is strong too. Soft strokes on low strings have 0.08 to 0.2, */
export const CLEAR_FLUX = 0.08;
/** 12 to 40 times the median, */
export const CLEAR_RATIO = 12;
/** and half as much energy again. */
export const CLEAR_ENERGY = 1.4;
/** A change of pitch whose energy stays within this ratio, up or down, is legato: the string was not struck anew. */
export const LEGATO_ENERGY = 1.3;
