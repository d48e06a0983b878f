/** Constants of the stage network outputs → notes, in frames of 16 ms and semitones. Tuned on the development recordings. */

/** A note begins where the onset probabilities of three frames and three semitones sum to this. */
export const LEAST_ONSET = 0.33;
/** A peak stands out over so many frames on either side. */
export const PEAK_REACH = 3;
/** Frames over which what sounds after an onset is averaged (its body), and the least of it. */
export const BODY_FRAMES = 4;
export const LEAST_BODY = 0.15;
/** A note needs onset + BODY_WEIGHT · body of at least this: palm-muted notes have a sure onset and die at once. */
export const BODY_WEIGHT = 0.8;
export const LEAST_BOTH = 1;
/** Onsets of different pitches this near are one stroke: a line has one voice, and the surest pitch counts. */
export const STROKE_FRAMES = 3;
/** The same pitch struck again this soon is one note; the first counts unless it is so much weaker. */
export const REPEAT_FRAMES = 4;
export const REPEAT_SHARE = 0.6;
/** A frame sounds from here on; after more silent frames than MOST_QUIET in a row the note has ended. */
export const LEAST_SOUND = 0.5;
export const MOST_QUIET = 2;
/** The last frames of a note lean towards what follows. */
export const LAST_FRAMES = 2;
/** A note's pitch is the median from this share of it on. */
export const REST_SHARE = 0.33;
/** A bend: the pitch goes by at least this from start to end, hardly back (BEND_DETOUR times the way), in small steps, and stays. */
export const BEND_SEMITONES = 0.6;
export const BEND_DETOUR = 1.5;
export const BEND_STEP = 0.45;
export const BEND_STAY_FRAMES = 5;
export const BEND_STAY_SHARE = 0.25;
/** A note that starts this far from where it comes to rest begins where it arrives, if it arrives this soon. */
export const SETTLE_SEMITONES = 0.7;
export const SETTLE_FRAMES = 6;
/** … and leaps there: a bend that was struck rises in smaller steps a frame, and begins where it was struck. */
export const SETTLE_JUMP = 0.5;
/** While a note's own semitone sounds this surely, the line does not pass on to a louder neighbour that rings. */
export const STAY_SOUND = 0.3;
/** A short unsure note that runs into a surer one from close by is that note's scoop. */
export const SCOOP_FRAMES = 6;
export const SCOOP_NEAREST = 0.5;
export const SCOOP_FARTHEST = 2.6;
export const SCOOP_ONSET = 0.75;
export const SCOOP_LEAD = 0.2;
/** A recording that begins within a note: what sounds in frames 4 to 11 on average. */
export const BEGUN_SOUND = 0.6;
export const BEGUN_ONSET = 0.7;
/** … at this level in dBFS: hum and rustle are softer than a note that was cut into. */
export const BEGUN_DB = -42;
export const BEGUN_FROM = 4;
export const BEGUN_TO = 12;
/** No onset this early makes the recording begin within a note. */
export const BEGUN_CLEAR = 10;

/**
 * Confidence: the odds in nepers that a note was played, fitted on the recordings of eight instruments, each counting alike; with
 * any one of them left out of the fit, notes given 0.75 on average were right in 0.79 of cases, those given 0.86 in 0.88.
 */
export const ODDS = { always: -3.489, onset: 3.993, body: 1.573, length: 0.433, longSeconds: 0.2 };

/** A note that ends no more than so many frames before the next one begins was cut off by it. */
export const CUT_FRAMES = 2;
/** Rise of the bright part within 24 ms of an onset, in dB, from which on it is struck. */
export const STRUCK_DB = 6;
/** Vibrato: from this half width in cents, of these rates in hertz. */
export const VIBRATO_CENTS = 12;
export const VIBRATO_WIDEST_CENTS = 150;
export const VIBRATO_SLOWEST_HZ = 3;
export const VIBRATO_FASTEST_HZ = 10;
/** Below this a bend is none, in semitones. */
export const LEAST_BEND = 0.35;
/** The fine pitch of a frame counts where it lies this near the network's own, in semitones. */
export const FINE_REACH = 0.4;

/** A reed or a flute may speak an octave low for a moment: a note that stops there and sounds an octave up this surely goes on, if so soon. */
export const RISE_SOUND = 0.5;
export const RISE_FRAMES = 12;

/** A pitch stands still while it stays within ± so many semitones for so many frames (96 ms). */
export const STILL_SEMITONES = 0.2;
export const STILL_FRAMES = 6;
/** What a note says that ends by itself before it could stand still, between 0 (stands) and 1 (glides): a palm-muted note does so, too. */
export const SHORT_TALK = 0.4;
/** The share of syllables among the last notes: at first, what each note moves it by, and from where on it is talk. */
export const TALK_AT_FIRST = 0.3;
export const TALK_STEP = 0.2;
export const LEAST_TALK = 0.4;
/** In talk a note that stands still counts from this confidence on. */
export const SURE_IN_TALK = 0.85;
/** A note whose pitch does not come to rest is handed over after so many frames. */
export const WAIT_FRAMES = 20;

/** A tone whose onset nothing told: so little sounds there three frames before, so much on average in so many frames from it on. */
export const SOFT_BEFORE = 0.2;
export const SOFT_BODY = 0.75;
export const SOFT_FRAMES = 8;
/** It began so many frames before it sounded by LEAST_SOUND. */
export const SOFT_EARLIER = 0.5;
/** … and it is no softer than the loudest of the last second by more than this: a band in the background gives no notes. */
export const SOFT_RANGE_DB = 12;

/** A slide down takes at most so many frames (80 ms) between pitches that stand still and lie so far apart; its note is told this surely. */
export const SLIDE_FRAMES = 5;
export const SLIDE_SEMITONES = 0.7;
export const SLIDE_ONSET = 0.7;
