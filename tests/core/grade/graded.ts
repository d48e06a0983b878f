/** Notes set against a chart, for tests of the rules that work on graded notes. At 120 bpm a beat lasts half a second. */
import type { Timeline } from '../../../src/core/chart/timeline.ts';
import { gradeNotes, type NoteRules } from '../../../src/core/grade/assign/grade-notes.ts';
import type { GradedNote } from '../../../src/core/grade/assign/graded-note.ts';
import { paletteOver } from '../../../src/core/grade/assign/scales.ts';
import { chart, line, type Played } from './line.ts';

export const rulesFor = (timeline: Timeline): NoteRules => ({
  referenceHz: 440,
  anticipation: 'an eighth',
  palette: paletteOver('both pentatonics', timeline),
});

/** The notes of a line over a chart, graded. */
export const gradedOver = (text: string, played: readonly Played[], key = ''): readonly GradedNote[] => {
  const timeline = chart(text, { key });
  return gradeNotes(line(played), timeline, rulesFor(timeline));
};
