/**
 * What luck alone would give: the player's own notes, scattered over the chart without regard to the chords.
 */
import type { GradedNote } from '../assign/graded-note.ts';

/**
 * The player's own share of each pitch class, by length in seconds; notes over no chord stand outside.
 * @returns twelve shares that add to one, or all zero where nothing was played under a chord
 */
export function pitchClassShares(notes: readonly GradedNote[]): readonly number[] {
  const seconds = new Array<number>(12).fill(0);
  for (const note of notes) {
    if (note.chord === null) continue;
    seconds[note.pitchClass] =
      seconds[note.pitchClass]! + Math.max(0, note.heard.offsetSeconds - note.heard.onsetSeconds);
  }
  const total = seconds.reduce((sum, value) => sum + value, 0);
  return total === 0 ? seconds : seconds.map((value) => value / total);
}
