/**
 * Whether a take can be graded at all, counted before the grading begins: its cost grows with the chord changes that go by
 * and with the stretches into which they cut the notes, and a chart with sixty chords a bar, or notes that are never
 * ended, make millions of them out of a small file.
 */
import { MOST_LAID_CHANGES, MOST_NOTE_PARTS } from './base/limits.ts';
import type { Timeline } from './chart/timeline.ts';
import type { HeardNote } from './take/note.ts';
import { problem, type Problem } from './words/problem.ts';

type Placed = Pick<HeardNote, 'onsetSeconds' | 'offsetSeconds'>;

/**
 * @param notes in any order, seconds from the first sample
 * @returns null where it is within the limits
 */
export function tooMuchToGrade(notes: readonly Placed[], timeline: Timeline): Problem | null {
  const changesBefore = changesOf(timeline);
  const { beatMap } = timeline;
  let first = Infinity;
  let last = -Infinity;
  let parts = 0;
  for (const { onsetSeconds, offsetSeconds } of notes) {
    const from = changesBefore(beatMap.beatAt(onsetSeconds));
    const to = changesBefore(beatMap.beatAt(offsetSeconds));
    first = Math.min(first, from);
    last = Math.max(last, to);
    parts += to - from + 1;
  }
  if (last - first > MOST_LAID_CHANGES) return problem('grade.tooManyChanges', { most: MOST_LAID_CHANGES });
  return parts > MOST_NOTE_PARTS ? problem('grade.tooManyParts', { most: MOST_NOTE_PARTS }) : null;
}

/** Counts the chords that begin before a beat, from the first downbeat on. */
function changesOf(timeline: Timeline): (beat: number) => number {
  const { roundBeats, beatMap } = timeline;
  // Beats that were listed do not go round: behind the last one its chord stands on.
  const isListed = beatMap.bpm === null;
  const starts = timeline.spansBetween(0, roundBeats).map(({ startBeat }) => startBeat);
  return (beat) => {
    if (!(beat > 0)) return 0;
    const rounds = isListed ? 0 : Math.floor(beat / roundBeats);
    return rounds * starts.length + countBelow(starts, beat - rounds * roundBeats);
  };
}

/** How many of the rising numbers lie below the limit. */
function countBelow(rising: readonly number[], limit: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle]! < limit) low = middle + 1;
    else high = middle;
  }
  return low;
}
