/**
 * Constants of the stage path and strokes → notes: where notes begin without a stroke, go over into each other, and
 * end. "a → b of F1" is the note F1 on tuning lines without the constant's idea and with it.
 */

/** Frames that the note maker sees beyond the frame that it decides: 64 ms. */
export const LOOK_AHEAD = 8;
/** Seconds. A shorter note is none. */
export const SHORTEST_NOTE = 0.04;

// Beginnings.

/** dB. A note begins this far above the quietest level of late, */
export const ABOVE_FLOOR_DB = 9;
/** and no further than this under the loudest level of late. */
export const START_DROP_DB = 32;
/** Frames after a note's first within which its level may still rise to that. */
export const QUIET_FRAMES = 2;
/** dB a frame by which the loudest level of late falls: 10 dB a second. */
export const RECENT_FALL_DB = 0.08;
/** The quietest level of late falls by this share of the difference a frame (in 50 ms), and rises so many dB (3 a second). */
export const FLOOR_FALL = 0.3;
export const FLOOR_RISE_DB = 0.024;
/**
 * dBFS. The quietest level before anything was heard: a recording may begin in the middle of a note. At −60 the hum and
 * the room of the tuning set began with notes of their own; at −50 the hum still did.
 */
export const FIRST_FLOOR_DB = -45;
/** dBFS. The loudest level before anything was heard: silence. */
export const SILENT_DB = -120;
/** Semitones. In silence the pitch of a new note may wander so far within its first plateau. */
export const FIRST_PLATEAU_WIDTH = 1;
/** Seconds. A stroke whose pitch was still to come begins the note that is heard within this time. */
export const PENDING_SECONDS = 0.1;
/** Without a stroke the level must have risen by so many dB, from the lowest of so many frames before to this one after. */
export const SWELL_DB = 6;
export const SWELL_BEFORE_FRAMES = 10;
export const SWELL_AFTER_FRAMES = 3;

// Ends.

/** dB. A note ends this far under its own peak. */
export const END_DROP_DB = 36;
/** Frames. A note may go without pitch for so long before it ends: 56 ms. */
export const GAP_FRAMES = 7;

// The note that goes on.

/** Semitones. Frames so near the plateau's centre stand on it. */
export const PLATEAU_REACH = 0.45;
/** The centre follows the pitch over so many frames at most, from so many on: an intonation that drifts, not a bend. */
export const CENTRE_FRAMES = 12;
export const CENTRE_FIRST_FRAMES = 2;
/** Frames. For so long the path may not overrule a pitch that comes from the sound about the attack: 120 ms. */
export const SURE_FRAMES = 15;
/** Seconds. An attack so soon after a frame decides for itself what happens there. */
export const ATTACK_NEAR_SECONDS = 0.045;

// A new breath or bow: the level dips and fills again.

/** dB that the level dips, and that it rises again, */
export const DIP_DB = 4.5;
export const DIP_RISE_DB = 5;
/** within so many frames. */
export const DIP_FRAMES = 9;
/** MIDI. Under C2 the level of a steady note ripples with its period. */
export const DIP_MIDI = 36;
/** Frames. No new breath comes sooner after a note's beginning than this. */
export const BREATH_AFTER_FRAMES = 4;
/** Frames after the dip from which on its pitch is judged. */
export const BREATH_SETTLE_FRAMES = 2;

// From plateau to plateau without a stroke.

/** Semitones. Two plateaus this far apart are two pitches. */
export const PLATEAU_STEP = 0.6;
/** Semitones. A new plateau is no wider than this. */
export const PLATEAU_WIDTH = 0.3;
/** Semitones. A soft attack that brings a change of pitch up to this, at even energy, is legato. */
export const WIDEST_LEGATO = 5.5;
/** Semitones. No legato goes further than this: a hand's reach on one string. Ringing tuning lines 0.893 → 0.904 of F1. */
export const WIDEST_MOVE = 8;
/** dB. A legato note is no weaker than this under the peak of the note that it leaves, so many frames after it begins. */
export const LEGATO_DROP_DB = 20;
export const LEGATO_DROP_FRAMES = 2;
/**
 * A hammer-on, a pull-off or a slur does this share of its way within 24 ms; vibrato and bends do half at most. Twelve
 * tuning lines 0.928 → 0.948 of F1, with the flat plateau on arrival.
 */
export const HAMMER_SHARE = 0.62;
/** A slide does this share within 24 ms; */
export const SLIDE_SHARE = 0.5;
/** downwards it may be this much slower, for a string can't be bent down. Plucked tuning lines 0.976 → 0.982 of F1. */
export const SLIDE_DOWN_SHARE = 0.4;
/** Seconds. It leaves a note that stood this long (a bend leaves sooner), */
export const SLIDE_STOOD = 0.08;
/** Semitones, which was flat within this in the 64 ms before, */
export const FLAT = 0.2;
/** and goes at least so many semitones. */
export const SLIDE_LEAST = 0.85;
/** Frames. So many off the plateau, and more than on it, and the note was misread before; fewer, and it is misread now. */
export const MISREAD_FRAMES = 5;
/** Semitones. Two notes have a fundamental in common that lies more than this under either. */
export const COMMON_FROM = 13;
/** Seconds. A soft stroke is remembered so long, until the note before it has died away. */
export const SOFT_SECONDS = 0.25;

// Live.

/** Seconds. A note that still sounds is handed out at this age, */
export const LIVE_COMMIT_SECONDS = 0.1;
/** if its pitch has stayed within so many semitones since so many frames before its last. */
export const LIVE_REST = 0.25;
export const LIVE_REST_FRAMES = 4;
