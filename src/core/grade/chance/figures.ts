/**
 * Figures: what comes back in a line. Landings that end the same figure are not separate evidence, since a riff that
 * fits once fits wherever the chords come round again.
 */
import { toleranceBeats } from '../assign/tolerance.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { GradedNote } from '../assign/graded-note.ts';

/** A figure is a note with so many before it. */
const NOTES_BEFORE = 2;

/**
 * The figure that ends at a note: its pitch class and the two before it. Rhythm is left aside, because hands blur it.
 * @example figureAt(notes, 7) // '3 0 4'
 */
export function figureAt(notes: readonly Pick<GradedNote, 'pitchClass'>[], index: number): string {
  const from = Math.max(0, index - NOTES_BEFORE);
  return notes
    .slice(from, index + 1)
    .map((note) => note.pitchClass)
    .join(' ');
}

/** The bar of every note, by what the bar holds: bars with the same pitch classes in the same order have one number. */
export function figureOfBars(
  notes: readonly GradedNote[],
  timeline: Timeline,
  toleranceSeconds: number,
): readonly number[] {
  const bars = notes.map(({ onsetBeat }) => {
    const late = toleranceBeats(timeline, onsetBeat, toleranceSeconds);
    return Math.floor((onsetBeat + late) / timeline.beatsPerBar + 1e-9);
  });
  const contents = new Map<number, string>();
  notes.forEach(({ pitchClass }, i) => {
    contents.set(bars[i]!, `${contents.get(bars[i]!) ?? ''} ${pitchClass}`);
  });
  const numbers = new Map<string, number>();
  for (const content of contents.values()) if (!numbers.has(content)) numbers.set(content, numbers.size);
  return bars.map((bar) => numbers.get(contents.get(bar)!)!);
}
