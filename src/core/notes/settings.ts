/** Constants of the stage frames → notes. Costs are in the path's own unit: OBSERVATION_COST a unit of correlation. */

/** Path: a whole unit of correlation costs this (stack.md: measured together with the octave cost). */
export const OBSERVATION_COST = 3;
/** Each octave downwards costs this: nearly all pitch errors are downwards. */
export const OCTAVE_DOWN_COST = 0.3;
/** A frame with no pitch costs as much as a peak of this height at C4. */
export const UNVOICED_CLARITY = 0.6;
/** From pitch to none and back. */
export const VOICING_COST = 0.35;
/** A jump of half a semitone or more costs this, and so much more a semitone, to at most JUMP_MOST. */
export const JUMP_COST = 0.3;
export const JUMP_SEMITONE_COST = 0.02;
export const JUMP_MOST = 0.7;
/** Frames from a frame to the answer for it: 64 ms. */
export const PATH_LAG = 8;

/** Frames the note maker sees beyond the frame it decides: 64 ms. */
export const LOOK_AHEAD = 8;
/** Attack: a flux peak above this, in nepers a bin, and above so many times the local median. */
export const ATTACK_FLUX = 0.06;
export const ATTACK_RATIO = 2;
/** Struck again on the same pitch: flux three times the median and energy up by a quarter (stack.md). */
export const RESTRIKE_RATIO = 3;
export const RESTRIKE_ENERGY = 1.25;
/** Two plateaus this many semitones apart are two notes. */
export const PLATEAU_STEP = 0.6;
/** Frames a pitch must stand to be a plateau: 32 ms. */
export const PLATEAU_FRAMES = 4;
/** A note may go unvoiced for so many frames before it ends: 56 ms. */
export const GAP_FRAMES = 7;
/** A note ends this far under its own peak, and none begins this far under the loudest of late. */
export const END_DROP_DB = 36;
export const START_DROP_DB = 32;
/** Shortest note, seconds. */
export const SHORTEST_NOTE = 0.035;
