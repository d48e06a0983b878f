/** What a worker of a batch does with one file: listens, grades, and answers with plain data. */
import { failure, good, type Outcome } from '../core/base/outcome.ts';
import { gradeReturned } from '../core/take-file/grade-returned.ts';
import type { ReturnedTake } from '../core/lesson/returned-take.ts';
import { readSheet, type LessonSheet } from '../core/lesson/sheet.ts';
import type { Report } from '../core/take/schema.ts';
import { wordsOf } from '../core/words/catalogues.ts';
import type { Language } from '../core/words/languages.ts';
import { problem, type Notice, type Problem } from '../core/words/problem.ts';
import type { GradeOrder } from './orders.ts';
import { diskProblem, openFile } from './file-source.ts';
import { reportFor } from './grade-command.ts';

/** A file to grade, and by what. Everything in it can be cloned and written as JSON. */
export type BatchJob =
  | { readonly kind: 'grade'; readonly order: GradeOrder; readonly language: Language }
  | {
      readonly kind: 'class';
      readonly file: string;
      /** Text and name of each lesson sheet. */
      readonly sheets: readonly { readonly text: string; readonly name: string }[];
      /** Where the first downbeat lies in a plain recording, in seconds. */
      readonly firstBeatSeconds: number;
    };

export type BatchResult =
  | { readonly kind: 'report'; readonly report: Report; readonly warnings: readonly Notice[] }
  | { readonly kind: 'row'; readonly row: ReturnedTake; readonly warnings: readonly Notice[] }
  | { readonly kind: 'problem'; readonly problem: Problem };

const SILENT = { at: () => undefined, dispose: () => undefined };

export const fileOf = (job: BatchJob): string => (job.kind === 'grade' ? job.order.file : job.file);

async function rowFor(job: Extract<BatchJob, { kind: 'class' }>): Promise<Outcome<BatchResult>> {
  const sheets: LessonSheet[] = [];
  for (const { text, name } of job.sheets) {
    const sheet = readSheet(text, name);
    if (!sheet.ok) return sheet;
    sheets.push(sheet.value);
  }
  const source = openFile(job.file);
  if (!source.ok) return source;
  try {
    const { firstBeatSeconds } = job;
    const order = { sheets, firstBeatSeconds, progress: () => undefined };
    const graded = await gradeReturned(source.value, job.file, order);
    return graded.ok
      ? good({ kind: 'row', row: graded.value.row, warnings: graded.value.warnings })
      : failure(graded.problem);
  } finally {
    source.value.dispose();
  }
}

async function reportJob({
  order,
  language,
}: Extract<BatchJob, { kind: 'grade' }>): Promise<Outcome<BatchResult>> {
  const graded = await reportFor(order, SILENT, wordsOf(language));
  return graded.ok
    ? good({ kind: 'report', report: graded.value.report, warnings: graded.value.warnings })
    : failure(graded.problem);
}

/** Does a job. It never throws: whatever a file brings about is the problem of this file alone. */
export async function doJob(job: BatchJob): Promise<BatchResult> {
  try {
    const done = await (job.kind === 'grade' ? reportJob(job) : rowFor(job));
    return done.ok ? done.value : { kind: 'problem', problem: done.problem };
  } catch (error) {
    const told =
      diskProblem(fileOf(job), error) ??
      problem('cli.fault', { reason: error instanceof Error ? error.message : String(error) });
    return { kind: 'problem', problem: told };
  }
}
