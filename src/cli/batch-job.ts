/** What a worker of a batch does with one file: listens, grades, and answers with plain data. */
import { failure, good, type Outcome } from '../core/base/outcome.ts';
import type { ByteSource } from '../core/files/bytes/bytes.ts';
import { gradeForSheet } from '../core/grade-for-sheet.ts';
import { returnedTake, type ReturnedTake } from '../core/lesson/returned-take.ts';
import { readSheet, type LessonSheet } from '../core/lesson/sheet.ts';
import { correctionsOf } from '../core/take/correction.ts';
import { isTakeFile } from '../core/take-file/read-take-file.ts';
import type { Report } from '../core/take/schema.ts';
import { wordsOf, type Language } from '../core/words/languages.ts';
import { problem, type Notice, type Problem } from '../core/words/problem.ts';
import type { GradeOrder } from './orders.ts';
import { diskProblem, openFile } from './file-source.ts';
import { reportFor } from './grade-command.ts';
import { gradedTakeFile } from './read-take-file.ts';
import { readTake } from './read-take.ts';
import { studentOfPath, tryOfPath } from './student-of-path.ts';

/** A file to grade, and by what. Everything in it can be cloned and written as JSON. */
export type BatchJob =
  | { readonly kind: 'grade'; readonly order: GradeOrder; readonly language: Language }
  | {
      readonly kind: 'class';
      readonly file: string;
      /** Text and name of the lesson sheet. */
      readonly sheet: { readonly text: string; readonly name: string };
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
  const sheet = readSheet(job.sheet.text, job.sheet.name);
  if (!sheet.ok) return sheet;
  const source = openFile(job.file);
  if (!source.ok) return source;
  try {
    if (await isTakeFile(source.value)) return await rowForTakeFile(source.value, sheet.value);
    const take = await readTake(source.value, null, SILENT);
    if (!take.ok) return take;
    const report = gradeForSheet(take.value.notes, sheet.value, {
      source: take.value.source,
      firstBeatSeconds: job.firstBeatSeconds,
    });
    const row = returnedTake(report, {
      student: studentOfPath(job.file),
      file: job.file,
      sheet: 'none',
      tryNumber: tryOfPath(job.file),
      startedAt: null,
      corrections: 0,
    });
    return good({ kind: 'row', row, warnings: take.value.warnings });
  } finally {
    source.value.dispose();
  }
}

/**
 * A student's take file: it says who played it, for which sheet, and when. Its notes are heard anew in its sound, and what
 * the student has corrected by hand is told and not taken over.
 */
async function rowForTakeFile(source: ByteSource, sheet: LessonSheet): Promise<Outcome<BatchResult>> {
  const graded = await gradedTakeFile(source, SILENT);
  if (!graded.ok) return graded;
  const { details, heard, report, warnings } = graded.value;
  const { lesson } = details;
  const again = gradeForSheet(heard, sheet, {
    source: report.source,
    firstBeatSeconds: details.firstBeatSeconds ?? 0,
    referenceHz: details.reference,
  });
  const row = returnedTake(again, {
    student: lesson?.student ?? studentOfPath(source.name),
    file: source.name,
    sheet: lesson === undefined ? 'none' : lesson.mark === sheet.mark ? 'this one' : 'another',
    tryNumber: lesson?.tryNumber ?? tryOfPath(source.name),
    startedAt: details.startedAt,
    corrections: correctionsOf(details).length,
  });
  return good({ kind: 'row', row, warnings });
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
