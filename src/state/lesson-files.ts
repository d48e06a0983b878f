/** Files of a lesson read: a sheet, or a teacher's answer; and those that a take carries. */
import { bad, type Outcome } from '../core/base/outcome.ts';
import { decodeText } from '../core/files/bytes/text.ts';
import { ANSWER_LIMITS, isAnswer, readAnswer, type AnswerFile } from '../core/lesson/answer.ts';
import { readSheet, readSheetFile, SHEET_LIMITS, type LessonSheet } from '../core/lesson/sheet.ts';
import type { TakeDetails } from './take.ts';

/** Of a file that is read at all: an answer is the longer one, of up to four bytes a character. */
const MOST_BYTES = 4 * ANSWER_LIMITS.characters;

/** Which of the two a file holds. One that is neither is read as a sheet, and refused as such. */
export type LessonFile =
  | { readonly kind: 'sheet'; readonly sheet: Outcome<LessonSheet> }
  | { readonly kind: 'answer'; readonly answer: Outcome<AnswerFile> };

/** Reads a sheet or an answer. */
export async function readLessonFile(file: File): Promise<LessonFile> {
  const { name } = file;
  if (file.size > MOST_BYTES)
    return { kind: 'sheet', sheet: bad('sheet.tooLong', { name, most: SHEET_LIMITS.bytes }) };
  const text = decodeText(new Uint8Array(await file.arrayBuffer())) ?? '';
  return isAnswer(jsonOf(text))
    ? { kind: 'answer', answer: readAnswer(text, name) }
    : { kind: 'sheet', sheet: readSheet(text, name) };
}

/** The sheet that a take was played for; null for none, and for one that can't be read. */
export function sheetOfTake({ lesson }: Pick<TakeDetails, 'lesson'>): LessonSheet | null {
  if (lesson?.sheet === undefined) return null;
  const sheet = readSheetFile(lesson.sheet, lesson.title);
  return sheet.ok ? sheet.value : null;
}

/** undefined for text that is no JSON; who reads it as a sheet or as an answer says so. */
function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What the teacher answered to a take; null without, and for what can't be read. */
export function answerOfTake({ answer, title }: Pick<TakeDetails, 'answer' | 'title'>): AnswerFile | null {
  const read = answer === undefined ? null : readAnswer(JSON.stringify(answer), title);
  return read?.ok ? read.value : null;
}
