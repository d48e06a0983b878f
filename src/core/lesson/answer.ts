/**
 * A teacher's answer to one take, as one small readable JSON file: a note, and comments that are pinned to bars. The
 * student opens it beside the take that it answers.
 */
import * as v from 'valibot';
import { bad, good, type Outcome } from '../base/outcome.ts';
import { takeIdSchema } from '../take/take-id.ts';

/** Written limits: an answer is read by people. */
export const ANSWER_LIMITS = {
  noteCharacters: 4000,
  commentCharacters: 600,
  comments: 200,
  nameCharacters: 120,
  /** Of chorus and bar, as no form goes on for longer. */
  count: 9999,
  /** Of the whole file, in characters. */
  characters: 400_000,
} as const;

/** Whose the answer is told by its `format`; the ending only helps people. */
export const ANSWER_FILE_ENDING = '.answer.json';

const countFromZero = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(ANSWER_LIMITS.count));
const name = v.pipe(v.string(), v.maxLength(ANSWER_LIMITS.nameCharacters));

/** A comment on one bar. */
const commentSchema = v.strictObject({
  /** The time through the form, from 0, as in the report. */
  chorus: countFromZero,
  /** Bar of the form, from 0, as in the report. */
  bar: countFromZero,
  text: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(ANSWER_LIMITS.commentCharacters)),
});

/** The file, as JSON. */
export const answerSchema = v.strictObject({
  format: v.literal('landfall-answer'),
  version: v.literal(1),
  /** `id` of the take file that is answered; null for a recording, which has none. */
  takeId: v.nullable(takeIdSchema),
  /** Mark of the lesson sheet that the take was played for; null without one. */
  mark: v.nullable(v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/))),
  /** Of the sheet, or of what was played. */
  title: name,
  student: name,
  /** Which try it was, from 1; null where that is not known. */
  tryNumber: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(1))),
  /** About the whole take; may be empty. */
  note: v.pipe(v.string(), v.maxLength(ANSWER_LIMITS.noteCharacters)),
  comments: v.pipe(v.array(commentSchema), v.maxLength(ANSWER_LIMITS.comments), v.readonly()),
});
export type AnswerFile = Readonly<v.InferOutput<typeof answerSchema>>;
export type BarComment = Readonly<v.InferOutput<typeof commentSchema>>;

const inOrder = (a: BarComment, b: BarComment) => a.chorus - b.chorus || a.bar - b.bar;

/** The text of an answer as it is sent: its fields in their order, its comments in the order of their bars. */
export function writeAnswer(file: AnswerFile): string {
  const fields = Object.keys(answerSchema.entries) as (keyof AnswerFile)[];
  const whole = { ...file, comments: [...file.comments].sort(inOrder) };
  return `${JSON.stringify(Object.fromEntries(fields.map((field) => [field, whole[field]])), null, 2)}\n`;
}

/** Whether JSON that was read calls itself an answer. */
export const isAnswer = (json: unknown): boolean =>
  typeof json === 'object' && json !== null && 'format' in json && json.format === 'landfall-answer';

/**
 * Reads an answer; its comments come in the order of their bars.
 * @param text the file
 * @param name of the file, for the problem
 */
export function readAnswer(text: string, name: string): Outcome<AnswerFile> {
  if (text.length > ANSWER_LIMITS.characters)
    return bad('answer.tooLong', { name, most: ANSWER_LIMITS.characters });
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return bad('answer.notJson', { name });
  }
  if (!isAnswer(json)) return bad('answer.notAnswer', { name });
  const { version } = json as { version?: unknown };
  if (typeof version !== 'number') return bad('answer.field', { name, field: 'version' });
  if (version !== 1) return bad('answer.version', { name, found: String(version) });
  const read = v.safeParse(answerSchema, json);
  if (!read.success) return bad('answer.field', { name, field: v.getDotPath(read.issues[0]) ?? '' });
  return good({ ...read.output, comments: [...read.output.comments].sort(inOrder) });
}
