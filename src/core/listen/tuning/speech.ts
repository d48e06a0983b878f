/**
 * Constants of the stage that tells playing from speaking. The weights themselves lie in ../weights/speech.json.
 */

// What is measured of one note.

/** Frames (48 ms) within which the stillest part of a note is looked for. */
export const STILL_FRAMES = 6;
/** Frames (24 ms) over which the change of pitch is taken. */
export const STEP_FRAMES = 3;
/** Semitones added before a logarithm is taken, so that a pitch without any change has one. */
export const LEAST_SEMITONES = 0.02;
/** Semitones. Frames so near the median rest. */
export const REST_SEMITONES = 0.15;
/** Frames. A note of this length says all that it can about its pitch; a shorter one in proportion. */
export const LONG_ENOUGH = 16;
/** Frames. A longer note counts as this long. */
export const LONGEST = 50;
/** Frames. A note with fewer frames of pitch than this says nothing of itself, */
export const LEAST_FRAMES = 4;
/** and so many nepers for speech. */
export const TOO_SHORT = 0.5;

// How the odds of the notes add up, in nepers.

/** No note says more than this, either way. */
export const MOST = 2.5;
/** What the notes before said is multiplied by this at every note, */
export const FADE = 0.9;
/** and fades with this time constant, seconds. */
export const FADE_SECONDS = 30;
/** The odds never promise more than this for playing, or for speech. */
export const SUREST_PLAYING = -4;
export const SUREST_SPEECH = 6;
/** From these odds on it is speech, */
export const SPEECH = 0.3;
/** and then only a note with odds below this passes. */
export const CLEARLY_PLAYED = -1.4;

// One grid of semitones.

/** The grid is that of the last half dozen notes: the notes before are multiplied by this at every note. */
export const GRID_FADE = 0.85;
/** Seconds. A note weighs its length, up to this. */
export const GRID_MOST_SECONDS = 0.3;
/** Before anything is heard: a grid of this strength, with this weight. */
export const GRID_BEFORE_STRENGTH = 0.1;
export const GRID_BEFORE_WEIGHT = 0.125;
