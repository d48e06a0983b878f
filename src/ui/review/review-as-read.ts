/** The take in review as its player reads it: at the pitch of its own instrument, whatever is in the hands now. */
import { timelineAsRead } from '../../core/chart/as-read.ts';
import { instrumentOf } from '../../core/music/instruments.ts';
import { readingOf } from '../../core/music/reading.ts';
import { reportAsRead } from '../../core/report/as-read.ts';
import type { Words } from '../../core/words/words.ts';
import type { PlayingSettings } from '../../state/playing-settings.ts';
import type { Review } from '../../state/phase.ts';
import type { Session } from '../../state/session.svelte.ts';
import type { TriedBars } from '../../state/tries.svelte.ts';
import { namingOf } from '../parts/naming.ts';
import { takeTitle } from '../parts/sentences.ts';
import { besideVerbs } from './beside-verbs.ts';

/** @param tried the take that its bars are from, where they were tried again */
export function reviewAsRead(
  review: Review,
  tried: TriedBars | null,
  session: Session,
  { pitch }: Pick<PlayingSettings, 'pitch'>,
  words: Words,
) {
  const { details, report, timeline } = review;
  const reading = readingOf(instrumentOf(details.instrument ?? ''), pitch);
  const { playback: now, firstPlayback: first } = session;
  return {
    title: takeTitle(details, reading, words),
    naming: namingOf(review, (change) => session.mark(change)),
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
