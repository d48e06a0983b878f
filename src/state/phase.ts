/** What is going on, as one tagged union, and the take that can be looked at. */
import { timelineOf } from '../core/timeline-of-order.ts';
import { gradeOrder } from '../core/grade-order.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import type { HeardNote } from '../core/take/note.ts';
import type { Report } from '../core/take/schema.ts';
import type { Accompaniment, BandLevels } from './ports.ts';
import type { FinishedTake, PlayedThrough, TakeContent } from './finished-take.ts';
import type { Problem } from '../core/words/problem.ts';
import { bandSettings, type TakeDetails, type TakeId } from './take.ts';

/** A take that can be looked at. `id` is null when it is not kept on this machine. */
export interface Review {
  readonly id: TakeId | null;
  readonly details: TakeDetails;
  readonly report: Report;
  /** Every note that was heard, to be graded again; null where an earlier take did not keep them. */
  readonly heard: readonly HeardNote[] | null;
  readonly content: TakeContent;
  readonly timeline: Timeline;
  readonly playedThrough?: PlayedThrough;
}

/** What is being opened. */
export type Opening =
  | { readonly kind: 'microphone' | 'band' | 'backing' | 'sound' | 'midi' | 'take' | 'demo' | 'program' }
  /** share from 0 to 1 of the recording that is rendered. */
  | { readonly kind: 'rendering'; readonly share: number }
  | { readonly kind: 'file'; readonly name: string };

export type Phase =
  | { readonly kind: 'ready' }
  | { readonly kind: 'opening'; readonly what: Opening }
  | { readonly kind: 'counting-in' }
  | { readonly kind: 'playing' }
  /** progress from 0 to 1. */
  | { readonly kind: 'grading'; readonly progress: number }
  | { readonly kind: 'review'; readonly review: Review }
  /** Something outside the app stops it, such as a missing microphone; `wayOn` is what the one button offers. */
  | { readonly kind: 'trouble'; readonly problem: Problem; readonly wayOn: 'try again' | 'back' };

/** A finished take with its report. Fails where its chart can't be read any more. */
export function makeReview(
  take: FinishedTake,
  { report, heard }: Pick<Review, 'report' | 'heard'>,
): Outcome<Review> {
  const timeline = timelineOf(gradeOrder(take.details));
  return timeline.ok ? good({ ...take, report, heard, timeline: timeline.value }) : timeline;
}

/** The band that plays along when the take is heard again. */
export const accompaniment = ({ details, timeline }: Review, levels: BandLevels): Accompaniment => ({
  timeline,
  settings: bandSettings(details),
  levels,
  firstBeatSeconds: details.firstBeatSeconds ?? 0,
});
