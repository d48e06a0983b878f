/** Constants of the stage frames → notes. Costs are in the path's own unit: OBSERVATION_COST a unit of correlation. */

/** Path: a whole unit of correlation costs this (measured together with the octave cost). */
export const OBSERVATION_COST = 3;
/** Each octave downwards costs this: nearly all pitch errors are downwards. */
export const OCTAVE_DOWN_COST = 0.25;
/** Within this range of pitches; outside it is no likelier error. */
export const OCTAVE_COST_FROM = 36;
export const OCTAVE_COST_TO = 76;
/** Each semitone over E6 costs this: up there a burst of pick or fret noise is as periodic as many a note. */
export const CEILING_MIDI = 88;
export const CEILING_COST = 0.12;
/** A period that is a whole multiple of another candidate's is its subharmonic, and costs this, */
export const SUBHARMONIC_COST = 0.8;
/** if the shorter one's peak is at least this share of its own: twice, three times, four times and more. */
export const SUBHARMONIC_SHARE: readonly number[] = [1, 1, 0.86, 0.9, 0.9];
/** Beyond this multiple any two pitches are nearly harmonic. */
export const HIGHEST_MULTIPLE = 8;
/** Above this pitch (F♯4) few harmonics are left in the band, one strong even one makes the octave look as good: */
export const HIGH_MIDI = 66.5;
/** there, and on the way over so many semitones, the shorter period must be all but equal. */
export const HIGH_RAMP = 4;
export const HIGH_SUBHARMONIC_SHARE = 0.95;
/** A frame with no pitch costs as much as a peak of this height at C4. */
export const UNVOICED_CLARITY = 0.6;
/** From pitch to none and back. */
export const VOICING_COST = 0.35;
/** A jump of half a semitone or more costs this, and so much more a semitone, to at most JUMP_MOST. */
export const JUMP_COST = 0.3;
export const JUMP_SEMITONE_COST = 0.02;
export const JUMP_MOST = 0.7;
/** Just after an attack jumps and voicing cost this share. */
export const ATTACK_EASE = 0.3;
/** Frames from a frame to the answer for it: 64 ms. */
export const PATH_LAG = 8;

/** Frames the note maker sees beyond the frame it decides: 64 ms. */
export const LOOK_AHEAD = 8;
/** Attack: a flux peak above this, in nepers a bin, and above so many times the local median. */
export const ATTACK_FLUX = 0.06;
export const ATTACK_RATIO = 2;
/** The foot of a slow attack: this share of the power it reaches in 40 ms (a tenth of the amplitude). */
export const FOOT_SHARE = 0.01;
/** Struck again on the same pitch: flux three times the median and energy up by a quarter. */
export const RESTRIKE_RATIO = 3;
export const RESTRIKE_ENERGY = 1.25;
/** So strong an attack is a new note whatever its pitch: struck strings and tongued winds have 0.2 to 3, 12 to 600. */
export const STRONG_FLUX = 0.2;
export const STRONG_RATIO = 10;
/** Or a clear rise of both: soft strokes on low strings have 0.08 to 0.2, 12 to 40, and half as much energy again. */
export const CLEAR_FLUX = 0.08;
export const CLEAR_RATIO = 12;
export const CLEAR_ENERGY = 1.4;
/** Without a flux to speak of (flute): a dip so deep, filled again by so much within DIP_FRAMES, is a new breath. */
export const DIP_DB = 4.5;
export const DIP_RISE_DB = 5;
export const DIP_FRAMES = 9;
/** Under this pitch (C2) the level of a steady note ripples with its period. */
export const DIP_MIDI = 36;
/** Frames count for the new note from here on, when their windows hold more of it than of the old one, */
export const SETTLE_SECONDS = 0.012;
/** and its pitch is judged up to here. */
export const JUDGE_SECONDS = 0.064;
/** Never on fewer frames than this, though the next attack be near: a low string's pulses come every 24 ms. */
export const JUDGE_FRAMES = 3;
/** A second attack sooner than this is the same stroke; a weaker one even twice as late. */
export const REFRACTORY_SECONDS = 0.035;
/** The same pitch is struck again no sooner than this, unless louder. */
export const RESTRIKE_SECONDS = 0.09;
/** Live, a note that still sounds is handed out at this age if its pitch rests within so many semitones. */
export const LIVE_COMMIT_SECONDS = 0.1;
export const LIVE_REST = 0.25;
/** A change of pitch by up to so many semitones whose energy stays within this ratio is called legato. */
export const WIDEST_LEGATO = 5.5;
export const LEGATO_ENERGY = 1.3;
/** No legato goes further than this, in semitones: a hand's reach on one string. */
export const WIDEST_MOVE = 8;
/** A legato note is no weaker than this under the peak of the note it leaves. */
export const LEGATO_DROP_DB = 20;
/** Two plateaus this many semitones apart are two notes. */
export const PLATEAU_STEP = 0.6;
/** Frames within so many semitones of the plateau's centre stand on it. */
export const PLATEAU_REACH = 0.45;
/** A new plateau is no wider than this. */
export const PLATEAU_WIDTH = 0.3;
/** A hammer-on, a pull-off or a slur does this share of its way within 24 ms; vibrato and bends do half at most. */
export const HAMMER_SHARE = 0.62;
/** Travel is timed between these shares of the step from either plateau. */
export const TRAVEL_EDGE = 0.1;
/** A slide does this share, from a note that stood this long and flat; a bend leaves sooner or goes slower. */
export const SLIDE_SHARE = 0.5;
/** Downwards it may be this much slower: a string can't be bent down. */
export const SLIDE_DOWN_SHARE = 0.4;
export const SLIDE_STOOD = 0.08;
/** Flat: so few semitones in the 64 ms before the move. */
export const FLAT = 0.2;
/** A release: the level falls so far within 48 ms. */
export const RELEASE_DROP_DB = 8;
/** A note begins this far above the quietest of late. */
export const ABOVE_FLOOR_DB = 9;
/**
 * The quietest before anything was heard: a recording may begin in the middle of a note. At −60 the hum and the room of
 * the tuning set began with notes of their own, at −50 the hum still did.
 */
export const FIRST_FLOOR_DB = -45;
/** Frames a pitch must stand to be a plateau: 32 ms. */
export const PLATEAU_FRAMES = 4;
/** A note may go unvoiced for so many frames before it ends: 56 ms. */
export const GAP_FRAMES = 7;
/** A note ends this far under its own peak, and none begins this far under the loudest of late. */
export const END_DROP_DB = 36;
export const START_DROP_DB = 32;
/** Shortest note, seconds. */
export const SHORTEST_NOTE = 0.04;

/** Strings ring on under an attack that raises the energy by no more than this. */
export const RINGING_ENERGY = 6;
/** What an attack added is believed from this clarity, and this part of the power, where the path is lost. */
export const ADDED_CLARITY = 0.55;
export const ADDED_SHARE = 0.05;
/** Lower than this (G2) the sound after an attack holds too few periods for that. */
export const ADDED_FROM = 43;
/** The sound about an attack is looked at for 43 ms where another comes sooner than this, else for 85 ms. */
export const STROKE_ROOM = 0.06;
/** For so many frames the path may not overrule it: 120 ms. */
export const SURE_FRAMES = 15;

/** An octave up that comes so soon after the attack, and stands so many frames, was there from the start. */
export const OCTAVE_SECONDS = 0.2;
export const OCTAVE_FRAMES = 4;
/** In high notes only if the longer period is then no better than this. */
export const OCTAVE_BELOW = 1.01;
/** The rise is looked for in notes of 64 to 200 ms: of 28 notes like that on tuning lines, all were an octave down. */
export const RISING_FRAMES: readonly [number, number] = [8, 25];
/** Only while the note is no further under its peak than this. */
export const RISING_DROP_DB = 12;

/** Under this pitch (B♭2) a string's own pulses may pass for attacks; a stroke breaks the period within so many frames. */
export const PULSE_MIDI = 46;
export const STANDS_FRAMES = 5;
export const PULSE_CLARITY = 0.85;
/** A pulse follows the one before by a period or a few, give or take this, and has no more than so many times its flux. */
export const PULSE_SECONDS = 0.003;
export const PULSE_PERIODS = 3.5;
export const PULSE_FLUX = 1.5;
/** A click on a note adds less than this part of the power, and the note stays as clear as this. */
export const CLICK_SHARE = 0.3;
export const CLICK_CLARITY = 0.93;
/** Over ringing notes a soft stroke is one if what it added is believed and makes so much of the power. */
export const JOINS_SHARE = 0.12;
export const JOINS_CLARITY = 0.85;
/** A soft stroke is remembered so long, until the note before it has died away. */
export const SOFT_SECONDS = 0.25;

/** So many notes before, no longer ago than this, may ring on. */
export const RINGING_NOTES = 5;
export const RINGING_SECONDS = 1.5;
/** A string that rings on so near draws the path towards it; then only what lies this near the note counts for its pitch. */
export const DRAWN_SEMITONES = 2.6;
export const DRAWN_REACH = 0.35;
/** A note rings on under a stroke if this much of its power outlives it. */
export const KEEPS = 0.25;
/** So much of it holds the path for long where the path never heard the stroke's own pitch. */
export const KEEPS_ON = 0.5;
/** In silence a stroke raises the energy by so much. */
export const FIRST_ENERGY = 1.5;
/** Two notes have a fundamental in common more than an octave below either, by so many semitones. */
export const COMMON_FROM = 13;
