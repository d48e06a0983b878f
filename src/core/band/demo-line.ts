/**
 * The demo take: two choruses of a shuffle in D that a player with good ears and some old habits might play. It
 * lands on most thirds, keeps the minor shape too long over the IV in places, floats over one V, and bends,
 * slides and hammers on. Written for this project.
 */
import type { BandSettings } from './settings.ts';
import type { Move, Stroke } from './line.ts';

export const demoChart = '| D7 | G7 | D7 | D7 | G7 | G7 | D7 | D7 | A7 | G7 | D7 | A7 |';
export const demoKey = 'D';
export const demoProgram = 27;

export const demoSettings: BandSettings = { feel: 'shuffle', bpm: 96, swing: null, seed: 12, countInBars: 1 };

/** The off-beat of a shuffle at this tempo. */
const off = 2 / 3;

const note = (bar: number, beat: number, midi: number, durationBeats: number, velocity = 92): Stroke => ({
  beat: (bar - 1) * 4 + (beat - 1),
  durationBeats,
  midi,
  velocity,
});
const moved = (stroke: Stroke, ...moves: readonly Move[]): Stroke => ({ ...stroke, moves });
const shaken = (stroke: Stroke): Stroke => ({ ...stroke, vibrato: true });
const bend = (midi: number, afterBeats = 0.05): Move => ({ kind: 'bend', midi, afterBeats });
const release = (midi: number, afterBeats: number): Move => ({ kind: 'release', midi, afterBeats });
const slide = (midi: number, afterBeats: number): Move => ({ kind: 'slide', midi, afterBeats });
const hammer = (midi: number, afterBeats: number): Move => ({ kind: 'hammer', midi, afterBeats });
const pull = (midi: number, afterBeats: number): Move => ({ kind: 'pull', midi, afterBeats });

/** Bars 1 to 12: asks and answers; MIDI 62 is D4. */
const firstChorus: readonly Stroke[] = [
  // D7: the minor third hammered to the major, down to the root.
  moved(note(1, 1, 65, 1), hammer(66, 1 / 3)),
  note(1, 2, 69, off),
  note(1, 2 + off, 66, 1 / 3),
  shaken(note(1, 3, 62, 1.5)),
  // G7: lands on its third, B.
  note(2, 1, 71, off, 98),
  note(2, 1 + off, 69, 1 / 3),
  note(2, 2, 67, 1),
  note(2, 3, 65, off),
  note(2, 3 + off, 62, 1),
  // D7: F sharp, slid into from E.
  moved(note(3, 1, 64, 1.5, 96), slide(66, 0.3)),
  note(3, 2 + off, 69, 1 / 3),
  note(3, 3, 72, 1),
  note(3, 4, 69, off),
  shaken(note(4, 1, 66, 1.6)),
  note(4, 3, 62, off),
  note(4, 3 + off, 60, 1 / 3),
  // G7: early by an eighth on B, held over the bar line.
  note(4, 4 + off, 71, 1.2, 98),
  note(5, 2 + off, 74, 1 / 3),
  moved(note(5, 3, 72, 1.2), bend(74)),
  note(6, 1, 71, off),
  note(6, 1 + off, 67, 1 / 3),
  note(6, 2, 65, 1),
  note(6, 3, 62, 1),
  // D7: the flat third that is not resolved: the habit.
  note(7, 1, 65, 1.4, 94),
  note(7, 3, 62, off),
  note(7, 3 + off, 65, 1 / 3),
  note(7, 4, 67, off),
  moved(note(8, 1, 65, 1.8), bend(66)),
  // A7: C sharp, its third.
  note(9, 1, 73, 1, 100),
  note(9, 2, 71, off),
  note(9, 2 + off, 69, 1 / 3),
  moved(note(9, 3, 67, 1), pull(64, 0.5)),
  // G7: a note of the key's shape that is none of the chord's.
  note(10, 1, 69, 1),
  note(10, 2, 67, off),
  note(10, 2 + off, 65, 1 / 3),
  shaken(note(10, 3, 62, 1.2)),
  note(11, 1, 66, 1, 96),
  note(11, 2, 69, off),
  note(11, 2 + off, 71, 1 / 3),
  note(11, 3, 69, 0.9),
  note(12, 1, 64, off),
  note(12, 1 + off, 61, 1 / 3),
  shaken(note(12, 2, 57, 1.6)),
];

/** Bars 13 to 24: higher, busier, and over the V at the end it floats. */
const secondChorus: readonly Stroke[] = [
  moved(note(13, 1, 72, 1.4, 100), bend(74)),
  note(13, 2 + off, 72, 1 / 3),
  note(13, 3, 69, off),
  note(13, 3 + off, 66, 1.2),
  moved(note(14, 1, 69, 1), slide(71, 0.3)),
  note(14, 2, 74, off),
  note(14, 2 + off, 71, 1 / 3),
  note(14, 3, 67, 1),
  note(14, 4, 65, off),
  shaken(note(15, 1, 66, 1.4)),
  moved(note(15, 3, 65, 1), hammer(66, 1 / 3)),
  note(15, 4, 69, off),
  note(15, 4 + off, 72, 1 / 3),
  note(16, 1, 74, off),
  note(16, 1 + off, 72, 1 / 3),
  note(16, 2, 69, off),
  moved(note(16, 2 + off, 67, 1.2), bend(69), release(67, 0.7)),
  // G7: the key's major third, where it clashes.
  note(17, 1, 66, 1.5, 96),
  note(17, 3, 67, off),
  note(17, 3 + off, 71, 1),
  note(18, 1, 74, off),
  note(18, 1 + off, 71, 1 / 3),
  note(18, 2, 69, off),
  note(18, 2 + off, 67, 1 / 3),
  shaken(note(18, 3, 65, 1.5)),
  note(19, 1, 66, off, 98),
  note(19, 1 + off, 69, 1 / 3),
  note(19, 2, 72, off),
  note(19, 2 + off, 74, 1.2),
  moved(note(20, 1, 72, 1.6), bend(74)),
  note(20, 3, 69, 1),
  // A7: D and C over it, the root shape of the key.
  note(21, 1, 74, 1, 98),
  note(21, 2, 72, off),
  note(21, 2 + off, 69, 1 / 3),
  note(21, 3, 67, 1),
  note(22, 1, 71, 1, 96),
  note(22, 2, 67, off),
  note(22, 2 + off, 65, 1 / 3),
  note(22, 3, 62, 0.9),
  moved(note(23, 1, 65, 1.4), hammer(66, 1 / 3)),
  note(23, 3, 69, off),
  note(23, 3 + off, 66, 1 / 3),
  // A7: home too soon, on the fourth of the chord.
  shaken(note(24, 1, 62, 2.5)),
];

export const demoStrokes: readonly Stroke[] = [...firstChorus, ...secondChorus];
