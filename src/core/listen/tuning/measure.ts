/**
 * Constants of the stage that measures a note: its pitch, bend and vibrato, the octave of a reed, and the second note
 * of a double stop. "a → b of F1" is the note F1 on tuning lines without the constant's idea and with it.
 */

// Pitch, bend and vibrato.

// A reed that speaks an octave down.

// A second note that sounds with the main one.

/** Seconds. The stretch begins so long after the attack or after the pitch came to rest: pick and old note are gone. */
export const LEAD_SECONDS = 0.045;
/** Cents. A note that shakes by more than this has partials too broad to be told apart. */
export const WIDEST_SHAKE = 20;
/** Harmonics looked at. */
export const HARMONICS = 10;
/** A partial belongs to a harmonic within so many bins of the window, or this part of its frequency (stiff strings). */
export const REACH_BINS = 1.1;
export const REACH_SHARE = 0.008;
/** Harmonics of its own, away from the main note's, that make a second note sure, */
export const LEAST_OWN = 3;
/** the share of those below its highest that must be there, */
export const LEAST_FOUND = 0.7;
/** and the share of the power that the main note leaves over. */
export const LEAST_OF_REST = 0.5;
/** Its own harmonics hold no less than this part of the main note's power (−12 dB). */
export const LEAST_POWER = 0.063;
/** Harmonics of the main note that must be found, or nothing is sure. */
export const LEAST_MAIN = 2;
/** Bins. A partial that lies nearer than this to a harmonic of the main note may be hidden by it. */
export const SECOND_HIDDEN_BINS = 3;
/** Hz. A fundamental between these two, on the low strings of a guitar, may be too weak to be found. */
export const WEAK_FROM_HZ = 75;
export const WEAK_TO_HZ = 130;
/** A weak fundamental that is missing counts as so many missing harmonics. */
export const WEAK_MISSING = 2;
/** A partial is tried as a fundamental, and as a harmonic up to this one of a fundamental that is hidden. */
export const DEEPEST = 3;
/** A fundamental is lower than another where its frequency is under this share of the other's. */
export const LOWER_SHARE = 0.8;
/** A lower fundamental is preferred to a higher one where it explains so many times its power, */
export const MORE_POWER = 1.1;
/** and so many more partials. */
export const MORE_OWN = 2;
/** Semitones. A fundamental that moves further than this when its frequency is refined by its harmonics is rejected. */
export const ASTRAY = 0.35;
/** Two notes may share a fundamental that does not sound. They are taken for two where they are its harmonics up to this one, */
export const HIGHEST_OF_TWO = 8;
/** where both together hold at least this share of all power; */
export const TWO_SHARE = 0.97;
/** the upper one is the main note unless the lower one has so many times its power (6 dB). */
export const LOUDER = 4;
/** Semitones. A ratio so near a whole number is the main note's own overtone or its misreading. */
export const WHOLE_RATIO = 0.4;
