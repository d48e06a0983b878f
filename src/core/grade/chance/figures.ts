/**
 * Figures: what comes back in a line. Landings that end the same figure are not separate evidence, since a riff that
 * fits once fits wherever the chords come round again.
 */
import { toleranceBeats } from '../assign/tolerance.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { GradedNote } from '../assign/graded-note.ts';

/** A figure is a note with so many before it. */
const NOTES_BEFORE = 2;
/** The line's first notes have fewer before them; they are known again by so many after them. */
const NOTES_AFTER = 2;

/**
 * The figure that ends at a note: its pitch class and the two before it. Rhythm is left aside, because hands blur it. The
 * first two notes of the line have none or one before them: where they come again with the same notes before and after
 * them, as at the start of a riff, they end the figure that ends there.
 * @example figureAt(notes, 7) // '3 0 4'
 */
export function figureAt(notes: readonly Pick<GradedNote, 'pitchClass'>[], index: number): string {
  const end = index < NOTES_BEFORE ? (nextLike(notes, index) ?? index) : index;
  return notes
    .slice(Math.max(0, end - NOTES_BEFORE), end + 1)
    .map((note) => note.pitchClass)
    .join(' ');
}

/** Where the line's beginning up to the notes after this one is played again: the place that is then this note's. */
function nextLike(notes: readonly Pick<GradedNote, 'pitchClass'>[], index: number): number | null {
  const beginning = notes.slice(0, index + NOTES_AFTER + 1);
  for (let end = NOTES_BEFORE; end + NOTES_AFTER < notes.length; end++) {
    const isLike = beginning.every(({ pitchClass }, i) => notes[end - index + i]!.pitchClass === pitchClass);
    if (isLike) return end;
  }
  return null;
}

/** The bar of every note, from the first downbeat on; one that is a little early counts to the bar that it begins. */
export const barsOfNotes = (
  notes: readonly Pick<GradedNote, 'onsetBeat'>[],
  timeline: Timeline,
  toleranceSeconds: number,
): readonly number[] =>
  notes.map(({ onsetBeat }) => {
    const late = toleranceBeats(timeline, onsetBeat, toleranceSeconds);
    return Math.floor((onsetBeat + late) / timeline.beatsPerBar + 1e-9);
  });

/** For every note the number of its bar, where bars with the same pitch classes in the same order have the same number. */
export function differentBars(
  notes: readonly GradedNote[],
  timeline: Timeline,
  toleranceSeconds: number,
): readonly number[] {
  const bars = barsOfNotes(notes, timeline, toleranceSeconds);
  const contents = new Map<number, string>();
  notes.forEach(({ pitchClass }, i) => {
    contents.set(bars[i]!, `${contents.get(bars[i]!) ?? ''} ${pitchClass}`);
  });
  const numbers = new Map<string, number>();
  for (const content of contents.values()) if (!numbers.has(content)) numbers.set(content, numbers.size);
  return bars.map((bar) => numbers.get(contents.get(bar)!)!);
}
