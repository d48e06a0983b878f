/** What the review says of the lesson sheet that a take was played for, and of the teacher's answer. */
import type { AnswerFile } from '../../core/lesson/answer.ts';
import { TAKE_FILE_ENDING } from '../../core/take-file/schema.ts';
import { safeFileName } from '../../state/file-names.ts';
import { answerOfTake } from '../../state/lesson-files.ts';
import type { Review } from '../../state/phase.ts';
import type { Words } from '../../core/words/words.ts';

export interface LessonOfTake {
  readonly title: string;
  readonly student: string;
  readonly tryNumber: number;
  /** Of the take when it is given back. */
  readonly fileName: string;
}

/** null for a take that was played for no sheet. */
export function lessonOfTake({ details }: Pick<Review, 'details'>, words: Words): LessonOfTake | null {
  if (details.lesson === undefined) return null;
  const { title, student, tryNumber } = details.lesson;
  const parts = [student, title, words.sheets.oneTry({ tryNumber })];
  return { title, student, tryNumber, fileName: safeFileName(parts, TAKE_FILE_ENDING) };
}

/** null where nobody answered. */
export const answerToTake = ({ details }: Pick<Review, 'details'>): AnswerFile | null =>
  answerOfTake(details);
