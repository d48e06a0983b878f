/** Everything that Landfall says, in German. */
import { backing } from './de/backing.ts';
import { cli } from './de/cli.ts';
import { grading } from './de/grading.ts';
import { help } from './de/help.ts';
import { lesson } from './de/lesson.ts';
import { notation } from './de/notation.ts';
import { notices } from './de/notices.ts';
import { page } from './de/page.ts';
import { playing } from './de/playing.ts';
import { problemsOfCharts } from './de/problems-charts.ts';
import { problemsOfCommandLine } from './de/problems-command-line.ts';
import { problemsOfFiles } from './de/problems-files.ts';
import { problemsOfLessons } from './de/problems-lessons.ts';
import { problemsOfSound } from './de/problems-sound.ts';
import { progress } from './de/progress.ts';
import { recording } from './de/recording.ts';
import { report } from './de/report.ts';
import { reportAims } from './de/report-aims.ts';
import { explain } from './de/report-explain.ts';
import { review } from './de/review.ts';
import { reviewLine } from './de/review-line.ts';
import { sheets } from './de/sheets.ts';
import { soundCheck } from './de/sound-check.ts';
import type { Words } from './words.ts';
import { wholePage } from './de/whole-page.ts';

export const de: Words = {
  ...wholePage,
  report: { ...report, aims: reportAims, explain },
  page,
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
