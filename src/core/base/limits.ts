/**
 * How much is taken in at once. What is longer is refused by a sentence before any work is done on it; the same table
 * stands in src/pages/limits.md. All are generous: nobody plays for six hours or writes a form of four thousand bars.
 */

/** A take, a recording, a list of notes or beats, in seconds from its beginning. */
export const MOST_TAKE_SECONDS = 6 * 3600;
/** Notes of a list, a MIDI file or a take. */
export const MOST_NOTES = 100_000;
/** Rows of a list of beats: six hours at 270 beats a minute. */
export const MOST_BEATS = 100_000;
/** Bars of a chart, as written and as played once round. */
export const MOST_BARS = 4000;
/** Bytes of a score, also as unpacked. */
export const MOST_SCORE_BYTES = 20_000_000;
/** Bytes of a table or a MIDI file: a hundred thousand notes take a few million. */
export const MOST_LIST_BYTES = 16_000_000;
/** Bytes of a MIDI file: a hundred thousand notes take one million, their bends a few. */
export const MOST_MIDI_BYTES = 4_000_000;
/** Characters of one row of a table. */
export const MOST_ROW_CHARACTERS = 100_000;
/**
 * Elements, attributes and entities of a score, counted by their signs: 4,000 bars with a chord and eight notes have
 * 450,000, and 600,000 are read within a second.
 */
export const MOST_SCORE_SIGNS = 600_000;
/** Chords of one bar: twelve beats with five each. */
export const MOST_BAR_CHORDS = 60;
/** Chords of a chart as written. */
export const MOST_CHART_CHORDS = 20_000;
/** Chords that go by in a take: six hours at 400 beats a minute with one a beat are 144,000. */
export const MOST_LAID_CHANGES = 200_000;
/** Stretches into which those chords cut the notes of a take: a line has as many as notes and chords together. */
export const MOST_NOTE_PARTS = 1_000_000;
/** Bends of a MIDI file that pass under its notes, counted note by note: a bend each ten milliseconds for six hours is two million. */
export const MOST_NOTE_BENDS = 5_000_000;
/** Characters of a chord symbol. */
export const MOST_SYMBOL = 40;
/** Blocks before the sound of a WAV or FLAC file. */
export const MOST_BLOCKS_BEFORE_SOUND = 10_000;
