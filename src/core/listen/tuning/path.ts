/**
 * Constants of the stage frames → path, in the path's own unit of cost: OBSERVATION_COST a unit of correlation. "a →
 * b of F1" is the note F1 on tuning lines without the constant's idea and with it.
 */

// What a candidate costs.

/** A whole unit of correlation costs this (measured together with OCTAVE_DOWN_COST). */
export const OBSERVATION_COST = 3;
/** Each octave downwards costs this: nearly all pitch errors are downwards. Without bound, harmonics of distorted notes win. */
export const OCTAVE_DOWN_COST = 0.25;
/** MIDI. Only within this range of pitches; outside it an error is no likelier. */
export const OCTAVE_COST_FROM = 36;
export const OCTAVE_COST_TO = 76;
/** MIDI. The pitch at which that cost is zero (C4). */
export const OCTAVE_COST_ZERO = 60;
/** MIDI. Over E6 a burst of pick or fret noise is as periodic as many a note: */
export const CEILING_MIDI = 88;
/** each semitone over it costs this. Overdriven tuning lines 0.900 → 0.949 of F1, with HIGHEST_MULTIPLE. */
export const CEILING_COST = 0.12;
/** A period that is a whole multiple of another candidate's is its subharmonic, and costs this, */
export const SUBHARMONIC_COST = 0.8;
/** if the shorter period's peak is at least this share of its own: for twice, three times, four times and more. */
export const SUBHARMONIC_SHARE_2 = 0.86;
export const SUBHARMONIC_SHARE_3 = 0.9;
export const SUBHARMONIC_SHARE_4 = 0.9;
/** Semitones. Two candidates closer than this are not looked at as subharmonic and harmonic. */
export const SUBHARMONIC_LEAST = 11;
/** Semitones. So near a whole multiple a period is one. */
export const SUBHARMONIC_REACH = 0.4;
/** Beyond this multiple any two pitches are nearly harmonic. */
export const HIGHEST_MULTIPLE = 8;
/** MIDI. Above F♯4 few harmonics are left in the band, and one strong even harmonic makes the octave look as good: */
export const HIGH_MIDI = 66.5;
/** there, and on the way over so many semitones, */
export const HIGH_RAMP = 4;
/** the shorter period's peak must reach this share. Tenor tuning lines 0.780 → 0.933 of F1. */
export const HIGH_SUBHARMONIC_SHARE = 0.95;
/** A frame with no pitch costs as much as a peak of this height at C4. */
export const UNVOICED_CLARITY = 0.6;

// What a step from frame to frame costs.

/** From pitch to none and back. */
export const VOICING_COST = 0.35;
/** Semitones. A smaller step is the same note: it costs SMALL_STEP_COST a semitone. */
export const SMALL_STEP = 0.5;
export const SMALL_STEP_COST = 0.2;
/** A larger step costs this, and so much more a semitone, to at most JUMP_MOST. */
export const JUMP_COST = 0.3;
export const JUMP_SEMITONE_COST = 0.02;
export const JUMP_MOST = 0.7;
/** Just after a strong attack, jumps and voicing cost this share. Twelve tuning lines 0.904 → 0.933 of F1, with others. */
export const ATTACK_EASE = 0.3;
/** Seconds on either side of a strong attack that count as just after it, for the frame's middle. */
export const ATTACK_EASE_SECONDS = 0.02;

// The answer, and how long it is kept.

/** Frames from a frame to the path's answer for it: 64 ms. */
export const PATH_LAG = 8;
/** Frames that the path remembers; more than PATH_LAG. */
export const PATH_ROWS = 32;
/** Semitones. The octave above or below is a candidate within this reach. */
export const OCTAVE_REACH = 0.4;
/** Settled frames that are kept: 16 s, a power of two. A longer note is measured on its last 16 s. */
export const TRACK_KEPT = 2048;

// The pitch of the newest frame alone, for the live screen.

/** dBFS. Under this level nothing is shown. */
export const LIVE_LEAST_DB = -66;
/** A lower peak is no pitch, */
export const LIVE_LEAST_CLARITY = 0.75;
/** and the shortest period wins whose peak is this share of the highest (k of McLeod & Wyvill 2005, section 5). */
export const LIVE_SHARE = 0.88;
/** MIDI. Below this (75 Hz) the live pitch waits for the low window. */
export const LIVE_LOW_MIDI = 38.4;

// The contour: plateaus and the way from one to the next.

/** Frames that a pitch must stand to be a plateau: 32 ms. */
export const PLATEAU_FRAMES = 4;
/** Semitones. Frames that agree on one pitch lie within this reach of each other. */
export const AGREE_REACH = 0.5;
/** Frames that must agree on a pitch, at least. */
export const AGREE_LEAST = 2;
/** Semitones. Travel is timed between points this share of the step, but at least so far, from either plateau. */
export const TRAVEL_EDGE = 0.1;
export const TRAVEL_EDGE_LEAST = 0.15;
/** Frames over which the fastest part of a move is taken: 24 ms. Over a gap without pitch it may be so many. */
export const FASTEST_FRAMES = 3;
export const FASTEST_GAP_FRAMES = 8;
/** Frames before the move and after it that belong to its whole reach. */
export const WHOLE_BEFORE = 6;
export const WHOLE_AFTER = 5;
/** Semitones by which the whole reach may exceed the step: more is an overshoot of something else. */
export const WHOLE_OVERSHOOT = 1;
/** Frames before the move in which the old plateau is asked whether it is flat: 64 ms. */
export const FLAT_FRAMES = 9;
/** Semitones. The move ends where the pitch is so near the new plateau. */
export const ARRIVED_REACH = 0.35;
/** Frames before a moment's frame in which the first frame after the moment is looked for. */
export const FRAME_AT_BACK = 6;
/** Semitones from a note to its harmonics 2 to 6: 12 log2(n). */
export const HARMONIC_SEMITONES: readonly number[] = [12, 19.02, 24, 27.86, 31.02];
/** Semitones. A step so near one of them is harmonic. */
export const HARMONIC_REACH = 0.6;
