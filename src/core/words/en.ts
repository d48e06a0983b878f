/**
 * Everything that Landfall says, in English. The other languages have the same entries, and the compiler holds them
 * to it. An entry is a text, or a function of one object of plain values that gives a text. How to add one stands in
 * the folder's README.
 */
import { backing } from './en/backing.ts';
import { cli } from './en/cli.ts';
import { grading } from './en/grading.ts';
import { help } from './en/help.ts';
import { lesson } from './en/lesson.ts';
import { notation } from './en/notation.ts';
import { notices } from './en/notices.ts';
import { page } from './en/page.ts';
import { playing } from './en/playing.ts';
import { problemsOfCharts } from './en/problems-charts.ts';
import { problemsOfCommandLine } from './en/problems-command-line.ts';
import { problemsOfFiles } from './en/problems-files.ts';
import { problemsOfLessons } from './en/problems-lessons.ts';
import { problemsOfSound } from './en/problems-sound.ts';
import { progress } from './en/progress.ts';
import { recording } from './en/recording.ts';
import { report } from './en/report.ts';
import { reportAims } from './en/report-aims.ts';
import { explain } from './en/report-explain.ts';
import { review } from './en/review.ts';
import { reviewLine } from './en/review-line.ts';
import { sheets } from './en/sheets.ts';
import { soundCheck } from './en/sound-check.ts';
import { wholePage } from './en/whole-page.ts';

export const en = {
  ...wholePage,
  report: { ...report, aims: reportAims, explain },
  page,
  // Everything that keeps something from being done: what is wrong, where, and what to do. A key is a code; a fact
  // named `cause` holds another problem. Keys are grouped by the folder or the thing that they speak of.
  problems: {
    ...wholePage.problems,
    ...problemsOfCharts,
    ...problemsOfFiles,
    ...problemsOfLessons,
    ...problemsOfSound,
    ...problemsOfCommandLine,
  },
  notices,
  playing,
  help,
  progress,
  review: { ...review, ...reviewLine },
  notation,
  soundCheck,
  recording,
  backing,
  grading,
  sheets,
  lesson,
  cli,
};
