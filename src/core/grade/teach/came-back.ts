/**
 * Figures that come back: runs of pitch classes that the line plays again, where, and what was changed. They are the
 * figures of the chance reckoning (rhythm left aside), drawn out as far as they stay the same.
 */
import type { Timeline } from '../../chart/timeline.ts';
import type { Figure } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';

/** Shorter runs come back by themselves; longer ones are told by their beginning. */
const LEAST_NOTES = 4;
const MOST_NOTES = 16;
/** A figure is one when it has been heard this often. */
const LEAST_TIMES = 3;
const MOST_FIGURES = 3;

/** The figures that fill most of the line, at most three, none inside another. */
export function findFigures(
  notes: readonly GradedNote[],
  { beatsPerBar }: Pick<Timeline, 'beatsPerBar'>,
): readonly Figure[] {
  const classes = notes.map(({ pitchClass }) => pitchClass);
  const taken = new Array<boolean>(notes.length).fill(false);
  const found: { readonly length: number; readonly starts: readonly number[] }[] = [];
  for (let length = Math.min(MOST_NOTES, notes.length); length >= LEAST_NOTES; length--) {
    for (const starts of repeatedRuns(classes, length)) {
      const free = apart(starts, length).filter((start) => !taken.slice(start, start + length).some(Boolean));
      if (free.length < LEAST_TIMES || isOneNote(classes.slice(free[0]!, free[0]! + length))) continue;
      for (const start of free) taken.fill(true, start, start + length);
      found.push({ length, starts: free });
    }
  }
  return found
    .sort((a, b) => b.length * b.starts.length - a.length * a.starts.length || a.starts[0]! - b.starts[0]!)
    .slice(0, MOST_FIGURES)
    .map((figure) => describeFigure(figure, notes, beatsPerBar));
}

/**
 * Places of every run of so many numbers that stands more than once.
 * @example repeatedRuns([0, 4, 7, 0, 4, 9], 2) // [[0, 3]]
 */
export function repeatedRuns(values: readonly number[], length: number): readonly (readonly number[])[] {
  const places = new Map<string, number[]>();
  for (let start = 0; start + length <= values.length; start++) {
    const run = values.slice(start, start + length).join(' ');
    const known = places.get(run);
    if (known === undefined) places.set(run, [start]);
    else known.push(start);
  }
  return [...places.values()].filter((starts) => starts.length > 1);
}

/** Places that do not overlap, the earlier kept. */
function apart(starts: readonly number[], length: number): readonly number[] {
  const kept: number[] = [];
  for (const start of starts) if (start >= (kept.at(-1) ?? -Infinity) + length) kept.push(start);
  return kept;
}

const isOneNote = (classes: readonly number[]): boolean => new Set(classes).size === 1;

function describeFigure(
  { length, starts }: { readonly length: number; readonly starts: readonly number[] },
  notes: readonly GradedNote[],
  beatsPerBar: number,
): Figure {
  const placeInBar = (start: number) => {
    const half = Math.round(notes[start]!.onsetBeat * 2) / 2;
    return ((half % beatsPerBar) + beatsPerBar) % beatsPerBar;
  };
  const first = starts[0]!;
  const others = starts.slice(1);
  return {
    length,
    starts,
    movedInBar: others.filter((start) => placeInBar(start) !== placeInBar(first)).length,
    otherOctave: others.filter((start) => notes[start]!.pitch !== notes[first]!.pitch).length,
    otherChord: others.filter((start) => lastChord(notes, start, length) !== lastChord(notes, first, length))
      .length,
    otherEnd: otherEnds(notes, first, length),
  };
}

const lastChord = (notes: readonly GradedNote[], start: number, length: number): string | null =>
  notes[start + length - 1]!.chord?.symbol ?? null;

/** How often all but the last note of the figure come, and another last note. */
function otherEnds(notes: readonly GradedNote[], first: number, length: number): number {
  const figure = notes.slice(first, first + length).map(({ pitchClass }) => pitchClass);
  let count = 0;
  for (let start = 0; start + length <= notes.length; start++) {
    const isSame = (place: number) => notes[start + place]!.pitchClass === figure[place]!;
    let same = 0;
    while (same < length && isSame(same)) same++;
    if (same === length - 1) count++;
  }
  return count;
}
