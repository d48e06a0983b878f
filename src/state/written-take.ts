/** The take in review as a page of music, and as a MusicXML score that leaves the app. Loaded when it is asked for. */
import { timelineAsRead } from '../core/chart/as-read.ts';
import { choiceOf, gradeOrder } from '../core/grade-order.ts';
import type { Instrument } from '../core/music/instruments.ts';
import { readingOf } from '../core/music/reading.ts';
import { writeScore } from '../core/notation/write-score.ts';
import { writtenPage, type WrittenPage } from '../core/notation/written-page.ts';
import { reportAsRead } from '../core/report/as-read.ts';
import { fileStem, type ExportFile } from './export-files.ts';
import type { Review } from './phase.ts';

type Written = Pick<Review, 'details' | 'report' | 'timeline'>;

const instrumentIn = ({ details }: Written): Instrument | null =>
  choiceOf(gradeOrder(details)).instrument ?? null;

/** The page as its player reads it. */
export function writtenTake(review: Written, pitch: 'written' | 'concert'): WrittenPage {
  const instrument = instrumentIn(review);
  const reading = readingOf(instrument, pitch);
  return writtenPage(reportAsRead(review.report, reading), timelineAsRead(review.timeline, reading), {
    instrument,
    reading,
  });
}

/**
 * The page as a file that programs for notation open.
 * @param title of the take, as its player reads it
 */
export function scoreFile(review: Written, page: WrittenPage, title: string): ExportFile {
  const { details } = review;
  const score = writeScore(page, {
    title,
    part: instrumentIn(review)?.name ?? '',
  });
  return {
    blob: new Blob([score], { type: 'application/vnd.recordare.musicxml+xml' }),
    fileName: `${fileStem(details)}.musicxml`,
  };
}

/** A picture of the page as a file. */
export const pictureFile = (details: Review['details'], svg: string): ExportFile => ({
  blob: new Blob([svg], { type: 'image/svg+xml' }),
  fileName: `${fileStem(details)}.svg`,
});
