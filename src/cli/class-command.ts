/** `landfall class`, and `landfall grade` of several files: files spread over worker threads, pages as they are done. */
import { availableParallelism } from 'node:os';
import { readReport } from '../core/take/schema.ts';
import { classCsv } from '../core/lesson/class-csv.ts';
import { classHtml } from '../core/lesson/class-html.ts';
import { classRows } from '../core/lesson/class-table.ts';
import { classText } from '../core/lesson/class-text.ts';
import type { ReturnedTake } from '../core/lesson/returned-take.ts';
import { readSheet } from '../core/lesson/sheet.ts';
import type { Language } from '../core/words/languages.ts';
import { describeNotice, describeProblem, problem, type Problem } from '../core/words/problem.ts';
import type { Words } from '../core/words/words.ts';
import { onOneLine } from '../core/words/one-line.ts';
import { failure, good } from '../core/base/outcome.ts';
import type { Answer } from './answer.ts';
import type { BatchOrder, ClassOrder, GradeOrder } from './orders.ts';
import { fileOf, type BatchJob, type BatchResult } from './batch-job.ts';
import { runJobs } from './batch-pool.ts';
import { findTakes, isFolder } from './find-takes.ts';
import { pageOf } from './grade-command.ts';
import { KeptResults, programMark, resultKey, resultsFolder } from './kept-results.ts';
import type { BatchProgress } from './progress.ts';
import { textOfFile } from './read-timeline.ts';

/** What a batch needs of the process that it runs in. */
export interface BatchPort {
  /** The built command line, for the workers. */
  readonly script: string;
  readonly version: string;
  readonly language: Language;
  readonly words: Words;
  readonly progress: BatchProgress;
  /** Standard output and standard error, a line break behind each text. */
  readonly say: (text: string) => void;
  readonly tell: (text: string) => void;
}

/** True where `grade` was given more than one file, or a folder, or asked for lines. */
export const isBatch = ({ file, moreFiles, lines }: GradeOrder): boolean =>
  lines || moreFiles.length > 0 || isFolder(file);

interface Done {
  readonly file: string;
  readonly result: BatchResult;
}

/** Only what was graded is kept: a file that could not be read may be mended. */
const readKept = (value: unknown): BatchResult | null => {
  if (typeof value !== 'object' || value === null || !('kind' in value)) return null;
  if (value.kind === 'row' && 'row' in value) return value as BatchResult;
  return value.kind === 'report' && 'report' in value && readReport(value.report).ok
    ? (value as BatchResult)
    : null;
};

/** The results in the order of the jobs: kept ones at once, the others as the workers bring them. */
async function* resultsOf(
  jobs: readonly BatchJob[],
  { threads, anew }: BatchOrder,
  { script, progress }: BatchPort,
): AsyncGenerator<Done> {
  const kept = new KeptResults(resultsFolder(), readKept);
  const program = programMark(script);
  const keys = jobs.map((job) => keyOf(job, program));
  const known = (i: number): BatchResult | null => {
    const key = keys[i] ?? null;
    return anew || key === null ? null : kept.find(key);
  };
  const before = jobs.map((_, i) => known(i) !== null);
  const running = runJobs(
    jobs.filter((_, i) => !before[i]),
    { script, threads: threads ?? availableParallelism() },
  );
  let failed = 0;
  try {
    for (const [i, job] of jobs.entries()) {
      let result = before[i] ? known(i) : null;
      if (result === null) {
        const next = await running.next();
        if (next.done) throw new Error('The workers ended before the jobs did');
        ({ result } = next.value);
        const key = keys[i] ?? null;
        if (result.kind !== 'problem' && key !== null) kept.keep(key, result);
      }
      if (result.kind === 'problem') failed += 1;
      progress.done(i + 1, jobs.length, failed);
      yield { file: fileOf(job), result };
    }
  } finally {
    await running.return(undefined);
    progress.dispose();
  }
}

/** null for a file that can't be read: its job will say so. */
function keyOf(job: BatchJob, program: string): string | null {
  try {
    return resultKey(fileOf(job), job, program);
  } catch {
    return null;
  }
}

/** What a batch ends with: whether every file was graded. */
export interface BatchEnd {
  readonly failed: number;
}

const ofFile = (file: string, says: string, words: Words) =>
  words.cli.ofFile({ file: onOneLine(file), says });

/** The files that could not be graded, once more at the end, where they are seen. */
function tellFailed(failed: readonly { file: string; problem: Problem }[], { tell, words }: BatchPort): void {
  if (failed.length === 0) return;
  tell(words.cli.notGraded({ files: failed.length }));
  for (const { file, problem: told } of failed) {
    const reason = describeProblem(told, words);
    tell(`  ${reason.includes(onOneLine(file)) ? reason : ofFile(file, reason, words)}`);
  }
}

/** `landfall grade` of several files: a page a file, or a line of JSON a file (JSON Lines). */
export async function gradeFiles(order: GradeOrder, port: BatchPort): Promise<Answer<BatchEnd>> {
  const { words, say, tell, language } = port;
  const files = findTakes([order.file, ...order.moreFiles]);
  if (!files.ok) return files;
  const jobs = files.value.map((file): BatchJob => ({
    kind: 'grade',
    order: { ...order, file, moreFiles: [] },
    language,
  }));
  const asLines = order.json || order.lines;
  const failed: { file: string; problem: Problem }[] = [];
  for await (const { file, result } of resultsOf(jobs, order.batch, port)) {
    if (result.kind === 'problem') {
      failed.push({ file, problem: result.problem });
      if (asLines)
        say(
          JSON.stringify({
            file,
            problem: result.problem.code,
            says: describeProblem(result.problem, words),
          }),
        );
      continue;
    }
    if (result.kind === 'row') continue;
    for (const warning of result.warnings) tell(ofFile(file, describeNotice(warning, words), words));
    if (asLines) say(JSON.stringify({ file, report: result.report }));
    else {
      const page = pageOf(result.report, order, words);
      say(`${onOneLine(file)}\n\n${page.ok ? page.value : describeProblem(page.problem, words)}\n`);
    }
  }
  tellFailed(failed, port);
  return good({ failed: failed.length });
}

/** `landfall class`: the table of a class by one lesson sheet. */
export async function gradeClass(order: ClassOrder, port: BatchPort): Promise<Answer<BatchEnd>> {
  const { words, say, tell, version } = port;
  const text = textOfFile(order.sheet);
  if (!text.ok) return text;
  if (text.value === null)
    return failure(problem('disk.read', { name: order.sheet, reason: 'missing', system: 'ENOENT' }));
  const sheet = readSheet(text.value, order.sheet);
  if (!sheet.ok) return sheet;
  const files = findTakes(order.paths);
  if (!files.ok) return files;
  const { firstBeatSeconds } = order;
  const jobs = files.value.map((file): BatchJob => ({
    kind: 'class',
    file,
    sheets: [{ text: text.value!, name: order.sheet }],
    firstBeatSeconds,
  }));
  const takes: ReturnedTake[] = [];
  const failed: { file: string; problem: Problem }[] = [];
  for await (const { file, result } of resultsOf(jobs, order.batch, port)) {
    if (result.kind === 'problem') failed.push({ file, problem: result.problem });
    if (result.kind !== 'row') continue;
    for (const warning of result.warnings) tell(ofFile(file, describeNotice(warning, words), words));
    // A kept result may come from a copy of the file in another folder.
    takes.push({ ...result.row, file });
    if (order.output === 'json') say(JSON.stringify(takes.at(-1)));
  }
  const rows = classRows(takes);
  const title = sheet.value.file.title;
  if (order.output === 'csv') say(classCsv(rows).trimEnd());
  if (order.output === 'html') say(classHtml({ title, rows, takes: takes.length, failed, version }, words));
  if (order.output === 'text') say(classText({ title, rows, takes: takes.length }, words));
  tellFailed(failed, port);
  return good({ failed: failed.length });
}
