/** The take in review as its player reads it: at the pitch of its own instrument, whatever is in the hands now. */
import { timelineAsRead } from '../../core/chart/as-read.ts';
import { instrumentOf } from '../../core/music/instruments.ts';
import { readingOf } from '../../core/music/reading.ts';
import { reportAsRead } from '../../core/report/as-read.ts';
import type { AnswerFile } from '../../core/lesson/answer.ts';
import type { Timeline } from '../../core/chart/timeline.ts';
import type { Report } from '../../core/take/schema.ts';
import type { ClassDesk } from '../../state/class-desk.svelte.ts';
import type { TakeCorrections } from '../../state/take-corrections.svelte.ts';
import type { Words } from '../../core/words/words.ts';
import type { PlayingSettings } from '../../state/playing-settings.ts';
import type { Review } from '../../state/phase.ts';
import type { Session } from '../../state/session.svelte.ts';
import type { TriedBars } from '../../state/tries.svelte.ts';
import { namingOf, type Naming } from '../parts/naming.ts';
import { takeTitle } from '../parts/sentences.ts';
import { besideVerbs, type FirstTake } from './beside-verbs.ts';
import { answerToTake, lessonOfTake, type LessonOfTake } from './lesson-of-take.ts';

/** What the page shows of the take. */
export interface TakeAsRead {
  readonly title: string;
  /** null for a take that is not kept. */
  readonly naming: Naming | null;
  /** null for a take that was played for no sheet. */
  readonly lesson: LessonOfTake | null;
  /** null where no teacher answered. */
  readonly answer: AnswerFile | null;
  readonly report: Report;
  readonly timeline: Timeline;
  /** What is corrected of its notes, and semitones from what sounds to what the page shows. */
  readonly correcting: { readonly corrections: TakeCorrections; readonly shift: number };
  /** The take that its bars are from, where they were tried again. */
  readonly first: FirstTake | null;
  /** The desk, where a teacher looks at the take of a student; null for a take of the player's own. */
  readonly answering: ClassDesk | null;
}

/** @param tried where bars were tried again, the take from which they come */
export function reviewAsRead(
  review: Review,
  tried: TriedBars | null,
  session: Session,
  { pitch }: Pick<PlayingSettings, 'pitch'>,
  words: Words,
): TakeAsRead {
  const { details, report, timeline } = review;
  const reading = readingOf(instrumentOf(details.instrument ?? ''), pitch);
  const { playback: now, firstPlayback: first } = session;
  return {
    title: takeTitle(details, reading, words),
    naming: namingOf(review, (change) => session.mark(change)),
    lesson: lessonOfTake(review, words),
    answer: answerToTake(review),
    answering: null,
    report: reportAsRead(report, reading),
    timeline: timelineAsRead(timeline, reading),
    correcting: { corrections: session.corrections, shift: reading.semitones },
    first: tried && {
      report: reportAsRead(tried.first.report, reading),
      bars: tried.bars,
      verbs: first && now && besideVerbs(tried, { first, now }),
    },
  };
}
