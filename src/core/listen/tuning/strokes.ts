/**
 * Constants of the stage that decides which attacks are strokes, and which pitch a stroke brought. "a → b of F1" is
 * the note F1 on tuning lines without the constant's idea and with it. Clarities are heights of the normalised square
 * difference, 0 to 1.
 */

// One stroke or two?

/** Seconds. A second attack sooner than this is the same stroke; a weaker one even twice as late. */
export const REFRACTORY_SECONDS = 0.035;
/** An attack with less than this share of another's flux is weaker than it. */
export const WEAKER_SHARE = 0.5;
/** Seconds. The same pitch is struck again no sooner than this, unless it is louder (RESTRIKE_ENERGY). */
export const RESTRIKE_SECONDS = 0.09;
/** Struck again on the same pitch: the flux is so many times the local median, and the energy rises by this ratio. */
export const RESTRIKE_RATIO = 3;
export const RESTRIKE_ENERGY = 1.25;
/** So much more energy is a stroke on the same pitch, whatever its flux. */
export const LOUD_RESTRIKE_ENERGY = 2.5;

// Soft attacks.

/** Nepers a bin. A soft attack of this flux is a stroke if it brings another pitch, or the same one louder. */
export const SOFT_FLUX = 0.12;
/** So much more energy with another pitch is a stroke, whatever its flux. */
export const SOFT_ENERGY = 2;
/** In silence a stroke raises the energy by this ratio. */
export const FIRST_ENERGY = 1.5;
/** Over ringing notes a soft stroke is one if what it added makes more than this part of the power, */
export const JOINS_SHARE = 0.12;
/** and is clearer than this. Steel tuning lines of the bank "fluid" 0.795 → 0.868 of F1. */
export const JOINS_CLARITY = 0.85;

// No stroke.

/** MIDI. Under B♭2 a string's own pulses may pass for attacks. Bass tuning lines of the bank "tim" 0.885 → 0.967 of F1. */
export const PULSE_MIDI = 46;
/** Frames before and after an attack in which a period must stand unbroken: a stroke breaks it. */
export const STANDS_FRAMES = 5;
/** The period stands while it is as clear as this. */
export const PULSE_CLARITY = 0.85;
/** Seconds. A pulse follows the pulse before it by whole periods, give or take this, */
export const PULSE_SECONDS = 0.003;
/** by fewer than so many periods, */
export const PULSE_PERIODS = 3.5;
/** and has less than so many times its flux. */
export const PULSE_FLUX = 1.5;
/** A click on a note adds no more than this part of the power, */
export const CLICK_SHARE = 0.3;
/** and the note stays as clear as this. Trumpet tuning lines of the bank "fluid" 0.952 → 0.977 of F1. */
export const CLICK_CLARITY = 0.93;
/** A string that is let go clicks too, but then the level falls so many dB within so many frames (48 ms). */
export const RELEASE_DROP_DB = 8;
export const RELEASE_FRAMES = 6;
/** The energy after a release is less than this times the energy before it. */
export const RELEASE_ENERGY = 1;

// What the path hears after an attack.

/** Seconds. Frames count for the new note from here on, when their windows hold more of it than of the old one, */
export const SETTLE_SECONDS = 0.012;
/** and its pitch is judged up to here, */
export const JUDGE_SECONDS = 0.064;
/** or to so long before the next attack. */
export const BEFORE_NEXT_SECONDS = 0.004;
/** Never on fewer frames than this, though the next attack may be near: a low string's pulses come every 24 ms. */
export const JUDGE_FRAMES = 3;
/** Seconds. The sound about an attack is looked at over the short window where the next attack comes sooner than this. */
export const SHORT_WINDOW_SECONDS = 0.06;

// Which pitch was struck.

/** Semitones. Two candidates nearer than this are one. */
export const SAME_CANDIDATE = 0.35;
/** MIDI. From here on nothing is believed but the path: a burst of noise at an attack has periods too (over E6). */
export const STRUCK_CEILING_MIDI = 89;
/** MIDI. Above D5 the height of a pitch counts for itself too (weight `high`). */
export const STRUCK_HIGH_MIDI = 74;
/** The part of the added power that a pitch leaves unexplained counts as no less than this. */
export const UNEXPLAINED_FLOOR = 0.01;
/** Octaves. A leap from the note before counts up to this. */
export const FARTHEST_OCTAVES = 2;
/** Where the path hears no pitch, what an attack added is believed from this clarity and this part of the power, */
export const ADDED_CLARITY = 0.55;
export const ADDED_SHARE = 0.05;
/** MIDI, from this pitch up (G2): lower, the sound after an attack holds too few periods, */
export const ADDED_FROM = 43;
/** and where the attack raises the energy by no more than this ratio: strings that ring on do not vanish beside it. */
export const RINGING_ENERGY = 6;

// Strings that ring on.

/** So many notes before the stroke may ring on, */
export const RINGING_NOTES = 5;
/** if they ended no longer ago than this, seconds. */
export const RINGING_SECONDS = 1.5;
/** A note rings on under a stroke if more than this part of its power outlives the stroke. */
export const KEEPS = 0.25;
/** So much of it holds the path for long where the path never heard the stroke's own pitch. */
export const KEEPS_ON = 0.5;
/** Semitones. A string that rings on so near draws the path towards it; */
export const DRAWN_SEMITONES = 2.6;
/** then only what lies this near the note counts for its pitch. */
export const DRAWN_REACH = 0.35;
/** Semitones from the centre of a note that count for its pitch where nothing draws the path. */
export const MEASURED_REACH = 1;
