/** The rests in a line: their share, lengths of phrases, the longest run without a rest, where phrases start. */
import { largest } from '../../base/extremes.ts';
import { median } from '../../base/statistics.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Space } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import type { PhraseBounds } from '../assign/phrases.ts';

/** A silence this long is heard as a rest; shorter ones are how notes are let go. */
const REST_BEATS = 0.5;

/** @param phrases of the notes, in order */
export function findSpace(
  notes: readonly GradedNote[],
  phrases: readonly PhraseBounds[],
  { beatsPerBar }: Pick<Timeline, 'beatsPerBar'>,
): Space {
  const runs = soundingRuns(notes);
  const first = runs[0];
  const last = runs.at(-1);
  if (first === undefined || last === undefined) return NO_SPACE;
  const whole = last.to - Math.min(0, first.from);
  const sounding = runs.reduce((sum, run) => sum + run.to - run.from, 0);
  const lengths = phrases.map(
    ({ firstNote, lastNote }) =>
      (endOf(notes, firstNote, lastNote) - notes[firstNote]!.onsetBeat) / beatsPerBar,
  );
  return {
    restShare: whole <= 0 ? 0 : Math.min(1, Math.max(0, 1 - sounding / whole)),
    phrases: phrases.length,
    medianPhraseBars: median(lengths),
    longestRunBars: largest(runs.map((run) => run.to - run.from)) / beatsPerBar,
    starts: commonestStart(phrases, notes, beatsPerBar),
  };
}

const NO_SPACE: Space = {
  restShare: null,
  phrases: 0,
  medianPhraseBars: null,
  longestRunBars: null,
  starts: null,
};

interface Run {
  readonly from: number;
  readonly to: number;
}

/** Stretches in which no silence is as long as a rest. */
function soundingRuns(notes: readonly GradedNote[]): readonly Run[] {
  const runs: Run[] = [];
  for (const { onsetBeat, offsetBeat } of notes) {
    const run = runs.at(-1);
    if (run === undefined || onsetBeat - run.to >= REST_BEATS - 1e-9)
      runs.push({ from: onsetBeat, to: offsetBeat });
    else runs[runs.length - 1] = { from: run.from, to: Math.max(run.to, offsetBeat) };
  }
  return runs;
}

const endOf = (notes: readonly GradedNote[], firstNote: number, lastNote: number): number =>
  notes.slice(firstNote, lastNote + 1).reduce((latest, note) => Math.max(latest, note.offsetBeat), -Infinity);

/** The beat of the bar, from 0 and rounded to halves, at which most phrases start. */
function commonestStart(
  phrases: readonly PhraseBounds[],
  notes: readonly GradedNote[],
  beatsPerBar: number,
): Space['starts'] {
  const counts = new Map<number, number>();
  for (const { firstNote } of phrases) {
    const half = Math.round(notes[firstNote]!.onsetBeat * 2) / 2;
    const ofBar = ((half % beatsPerBar) + beatsPerBar) % beatsPerBar;
    counts.set(ofBar, (counts.get(ofBar) ?? 0) + 1);
  }
  const [most] = [...counts].sort(([beat, count], [otherBeat, other]) => other - count || beat - otherBeat);
  return most === undefined ? null : { beatOfBar: most[0], count: most[1] };
}
