#!/usr/bin/env node
/** The command line. Ends with 0 when it graded, 1 when the input can't be graded, 2 when it was called wrongly. */
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { version } from '../../package.json';
import { listForms } from '../core/chart/forms.ts';
import { reportJsonSchema } from '../core/report/json-schema.ts';
import { wordsOf } from '../core/words/languages.ts';
import type { Words } from '../core/words/words.ts';
import { readArgs, type Order } from './args.ts';
import { diskSentence } from './file-source.ts';
import { formsPage } from './forms-page.ts';
import { gradeFile } from './grade-command.ts';
import { languageIn } from './language.ts';
import { showProgress } from './progress.ts';
import { HELP, SHORT_USAGE } from './usage.ts';

const CANNOT_GRADE = 1;
const WRONG_USAGE = 2;

const say = (text: string) => process.stdout.write(`${text}\n`);
const tell = (text: string) => process.stderr.write(`${text}\n`);

function refuse(sentence: string): number {
  tell(sentence);
  return CANNOT_GRADE;
}

function usage(sentence: string): number {
  tell(`${sentence}\n\n${SHORT_USAGE}`);
  return WRONG_USAGE;
}

async function follow(order: Order, words: Words): Promise<number> {
  switch (order.command) {
    case 'help':
      say(HELP);
      return 0;
    case 'version':
      say(version);
      return 0;
    case 'forms':
      say(order.json ? JSON.stringify(listForms(), null, 2) : formsPage());
      return 0;
    case 'schema':
      say(JSON.stringify(reportJsonSchema(), null, 2));
      return 0;
    case 'band': {
      // The synthesiser is loaded for those who want it; grading starts without.
      const { writeBand } = await import('./band-command.ts');
      const written = await writeBand(order, dirname(fileURLToPath(import.meta.url)));
      if (!written.ok) return 'wrongUsage' in written ? usage(written.sentence) : refuse(written.sentence);
      written.value.warnings.forEach(tell);
      say(written.value.line);
      return 0;
    }
    case 'grade': {
      const graded = await gradeFile(order, showProgress(process.stderr), words);
      if (!graded.ok) return 'wrongUsage' in graded ? usage(graded.sentence) : refuse(graded.sentence);
      graded.value.warnings.forEach(tell);
      say(graded.value.page);
      return 0;
    }
  }
}

async function main(): Promise<number> {
  const args = process.argv.slice(2);
  const language = languageIn(args);
  if (!language.ok) return usage(language.sentence);
  const order = readArgs(args);
  return order.ok ? follow(order.value, wordsOf(language.value)) : usage(order.sentence);
}

// A reader that has seen enough (`| head`) closes the pipe: no fault of anybody's.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') tell(diskSentence('Standard output', error) ?? error.message);
  process.exit(error.code === 'EPIPE' ? 0 : CANNOT_GRADE);
});

try {
  process.exitCode = await main();
} catch (error) {
  const reason = error instanceof Error ? error.message : String(error);
  tell(
    diskSentence('The input', error) ??
      `Landfall stumbled over a fault of its own (${reason}); please report it.`,
  );
  process.exitCode = CANNOT_GRADE;
}
