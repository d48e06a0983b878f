#!/usr/bin/env node
/** The command line. Ends with 0 when it graded, 1 when the input can't be graded, 2 when it was called wrongly. */
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isMainThread } from 'node:worker_threads';
import { version } from '../../package.json';
import { listForms } from '../core/chart/forms.ts';
import { answerJsonSchema, sheetJsonSchema } from '../core/lesson/json-schema.ts';
import { takeJsonJsonSchema } from '../core/take-file/schema.ts';
import { reportJsonSchema } from '../core/report/json-schema.ts';
import type { Outcome } from '../core/base/outcome.ts';
import { wordsOf } from '../core/words/catalogues.ts';
import type { Language } from '../core/words/languages.ts';
import {
  describeNotice,
  describeProblem,
  problem,
  type Notice,
  type Problem,
} from '../core/words/problem.ts';
import type { Words } from '../core/words/words.ts';
import { readArgs } from './args.ts';
import type { Order } from './orders.ts';
import type { Answer } from './answer.ts';
import { serveJobs } from './batch-worker.ts';
import { gradeClass, gradeFiles, isBatch, type BatchEnd, type BatchPort } from './class-command.ts';
import { diskProblem } from './file-source.ts';
import { formsPage } from './forms-page.ts';
import { gradeFile } from './grade-command.ts';
import { languageIn } from './language.ts';
import { showBatchProgress, showProgress } from './progress.ts';
import { printable } from './printable.ts';
import { helpPage } from './usage.ts';

/** The JSON Schemas that are printed. */
const SCHEMAS = {
  report: reportJsonSchema,
  sheet: sheetJsonSchema,
  take: takeJsonJsonSchema,
  answer: answerJsonSchema,
};

const CANNOT_GRADE = 1;
const WRONG_USAGE = 2;

const say = (text: string) => process.stdout.write(`${printable(text)}\n`);
const tell = (text: string) => process.stderr.write(`${printable(text)}\n`);

function refuse(told: Problem, words: Words): number {
  tell(describeProblem(told, words));
  return CANNOT_GRADE;
}

function usage(told: Problem, words: Words): number {
  tell(`${describeProblem(told, words)}\n\n${words.cli.usage}`);
  return WRONG_USAGE;
}

/** Ends a command: what it says goes out, or what stood in its way. */
function end<T extends { readonly warnings: readonly Notice[] }>(
  answer: Answer<T>,
  words: Words,
  output: (value: T) => string,
): number {
  if (!answer.ok)
    return 'wrongUsage' in answer ? usage(answer.problem, words) : refuse(answer.problem, words);
  for (const warning of answer.value.warnings) tell(describeNotice(warning, words));
  say(output(answer.value));
  return 0;
}

/** A batch ends with 1 where a file could not be graded; the others are out by then. */
function endBatch(answer: Answer<BatchEnd>, words: Words): number {
  if (!answer.ok) return refuse(answer.problem, words);
  return answer.value.failed > 0 ? CANNOT_GRADE : 0;
}

const batchPort = (words: Words): BatchPort => ({
  script: fileURLToPath(import.meta.url),
  version,
  language: language.ok ? language.value : 'en',
  words,
  progress: showBatchProgress(process.stderr, words),
  say,
  tell,
});

async function follow(order: Order, words: Words): Promise<number> {
  switch (order.command) {
    case 'help':
      say(helpPage(words, order.of));
      return 0;
    case 'version':
      say(version);
      return 0;
    case 'forms':
      say(order.json ? JSON.stringify(listForms(), null, 2) : formsPage(words));
      return 0;
    case 'schema':
      say(JSON.stringify(SCHEMAS[order.of](), null, 2));
      return 0;
    case 'band': {
      // The synthesiser is loaded only where the band plays, so that grading starts faster.
      const { writeBand } = await import('./band-command.ts');
      const folder = dirname(fileURLToPath(import.meta.url));
      return end(await writeBand(order, folder, words), words, ({ line }) => line);
    }
    case 'chords': {
      // Loaded only here, with its weights.
      const { findChords } = await import('./chords-command.ts');
      const progress = showProgress(process.stderr, words);
      return end(await findChords(order, progress, words), words, ({ page }) => page);
    }
    case 'class':
      return endBatch(await gradeClass(order, batchPort(words)), words);
    case 'grade':
      if (isBatch(order)) return endBatch(await gradeFiles(order, batchPort(words)), words);
      return end(
        await gradeFile(order, showProgress(process.stderr, words), words),
        words,
        ({ page }) => page,
      );
  }
}

async function main(language: Outcome<Language>, words: Words): Promise<number> {
  if (!language.ok) return usage(language.problem, words);
  const order = readArgs(process.argv.slice(2));
  return order.ok ? follow(order.value, words) : usage(order.problem, words);
}

const language = languageIn(process.argv.slice(2));
const words = wordsOf(language.ok ? language.value : 'en');

/** What an error that nobody caught says: the disk's, or a fault of the program. */
const errorSentence = (name: string, error: unknown, tried: 'read' | 'write'): string =>
  describeProblem(
    diskProblem(name, error, tried) ??
      problem('cli.fault', { reason: error instanceof Error ? error.message : String(error) }),
    words,
  );

async function start(): Promise<void> {
  // A reader that has seen enough (`| head`) closes the pipe: that is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') tell(errorSentence(words.cli.output, error, 'write'));
    process.exit(error.code === 'EPIPE' ? 0 : CANNOT_GRADE);
  });
  try {
    process.exitCode = await main(language, words);
  } catch (error) {
    tell(errorSentence(words.cli.input, error, 'read'));
    process.exitCode = CANNOT_GRADE;
  }
}

// The same file serves the worker threads of a batch.
if (isMainThread) await start();
else serveJobs();
