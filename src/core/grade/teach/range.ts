/** How low and how high the line goes, and which way its phrases go. */
import type { Range } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import type { PhraseBounds } from '../assign/phrases.ts';

/** Shorter phrases have no shape to speak of. */
const LEAST_NOTES = 4;
/** A phrase that ends within this of where it began, and goes this far away in between, is an arch. */
const LEVEL_SEMITONES = 2;

export function findRange(notes: readonly GradedNote[], phrases: readonly PhraseBounds[]): Range {
  const pitches = notes.map(({ pitch }) => pitch);
  const shapes = { rising: 0, falling: 0, arched: 0, level: 0 };
  for (const { firstNote, lastNote } of phrases) {
    if (lastNote - firstNote + 1 < LEAST_NOTES) continue;
    shapes[shapeOf(pitches.slice(firstNote, lastNote + 1))]++;
  }
  return {
    lowestNote: pitches.length === 0 ? null : pitches.indexOf(minimum(pitches)),
    highestNote: pitches.length === 0 ? null : pitches.indexOf(-minimum(pitches.map((pitch) => -pitch))),
    semitones: pitches.length === 0 ? null : -minimum(pitches.map((pitch) => -pitch)) - minimum(pitches),
    ...shapes,
  };
}

const minimum = (values: readonly number[]): number =>
  values.reduce((least, value) => Math.min(least, value), Infinity);

/** By where a phrase begins and ends, and by its highest note between. */
function shapeOf(pitches: readonly number[]): 'rising' | 'falling' | 'arched' | 'level' {
  const first = pitches[0]!;
  const last = pitches.at(-1)!;
  const top = -minimum(pitches.map((pitch) => -pitch));
  const over = top - Math.max(first, last);
  if (over > LEVEL_SEMITONES) return 'arched';
  if (last - first > LEVEL_SEMITONES) return 'rising';
  return first - last > LEVEL_SEMITONES ? 'falling' : 'level';
}
