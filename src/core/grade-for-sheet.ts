/** A take graded by a lesson sheet: the same settings in the teacher's desk and at the command line. */
import type { GradeSettings } from './grade-settings.ts';
import { grade } from './grade.ts';
import { timelineOfSheet, type LessonSheet } from './lesson/sheet.ts';
import type { HeardNote } from './take/note.ts';
import type { Report } from './take/schema.ts';

/** What is known of a take beside its notes. */
export interface ForSheet {
  readonly source: GradeSettings['source'];
  /** Where the first downbeat lies, from the first sample. */
  readonly firstBeatSeconds: number;
  /** A4 in Hz; left out, it is found from the notes, because nobody said what a recording is tuned to. */
  readonly referenceHz?: number | 'auto';
  readonly corrections?: GradeSettings['corrections'];
}

/** Grades by the sheet's chart, tempo, feel and aims. */
export const gradeForSheet = (
  notes: readonly HeardNote[],
  sheet: LessonSheet,
  { source, firstBeatSeconds, referenceHz = 'auto', corrections }: ForSheet,
): Report =>
  grade(notes, timelineOfSheet(sheet, firstBeatSeconds), {
    source,
    referenceHz,
    aims: sheet.aims,
    ...(sheet.instrument && { instrument: sheet.instrument }),
    ...(corrections && { corrections }),
  });
