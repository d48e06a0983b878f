/** The plain facts of a take in one line. */
import type { Report } from '../../core/take/schema.ts';
import { takenOutWords } from './backing-words.ts';
import { clockWords } from '../parts/sentences.ts';

/** "2:40 · 96 bpm · 214 notes · A = 440.3 Hz" */
export function takeFacts({ source, timeline, notes, tuning }: Report): string {
  return (
    [
      clockWords(source.durationSeconds),
      timeline.bpm === null ? null : `${Math.round(timeline.bpm)} bpm`,
      `${notes.length} ${notes.length === 1 ? 'note' : 'notes'}`,
      takenOutWords(source.backing),
      `A = ${tuning.referenceHz.toFixed(tuning.estimated ? 1 : 0)} Hz`,
    ]
      .filter((fact) => fact !== null)
      // A fact is not parted by a line's end.
      .map((fact) => fact.replaceAll(' ', '\u00a0'))
      .join(' · ')
  );
}
