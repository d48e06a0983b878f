/** What can be done with a piece of advice: hear it, hear it resolved, try its bars again. */
import { advisedPhrase, type AdvisedPhrase } from '../../core/grade/teach/advised-phrase.ts';
import type { Review } from '../../state/phase.ts';
import type { Hearing, Playback } from '../../state/playback.svelte.ts';
import { notTried, type BarsToTry, type NotTried } from '../../state/tries.svelte.ts';

export interface AdviceVerbs {
  /** What of the piece at a place of the report's advice sounds now. */
  hearing(place: number): 'yours' | 'resolved' | null;
  /** Sounds once; asked for what sounds, it stops. */
  hear(place: number, how: 'yours' | 'resolved'): void;
  /** The bars that go round when it is tried again; null where they can't. */
  bars(place: number): BarsToTry | null;
  /** Why the bars can't be tried again, where the reason lies in how the take was played; else null. */
  readonly notTried: NotTried | null;
}

/** @param review at concert pitch: what sounds is not what a transposing player reads */
export function adviceVerbs(review: Review, playback: Playback): AdviceVerbs {
  const { report, timeline } = review;
  const phrases = report.advice.map((piece) => advisedPhrase(report, timeline, piece));
  const hearings = phrases.map((phrase, place) => phrase && hearingsOf(phrase, place, review));
  return {
    hearing: (place) => {
      const { hearing } = playback;
      if (hearing === null) return null;
      return hearing === idOf(place, 'yours')
        ? 'yours'
        : hearing === idOf(place, 'resolved')
          ? 'resolved'
          : null;
    },
    hear: (place, how) => {
      const hearing = hearings[place]?.[how];
      if (hearing) void playback.hear(hearing);
    },
    bars: (place) => (notTried(review) === null && timeline.bars > 1 ? (phrases[place]?.bars ?? null) : null),
    notTried: notTried(review),
  };
}

const idOf = (place: number, how: string) => `${how} ${place}`;

function hearingsOf(
  { fromBeat, toBeat, resolved }: AdvisedPhrase,
  place: number,
  { timeline: { beatMap }, report }: Review,
): Readonly<Record<'yours' | 'resolved', Hearing>> {
  const stretch = {
    fromSeconds: Math.max(0, beatMap.secondsAt(fromBeat)),
    toSeconds: Math.min(beatMap.secondsAt(toBeat), report.source.durationSeconds),
  };
  return {
    yours: { id: idOf(place, 'yours'), ...stretch },
    resolved: { id: idOf(place, 'resolved'), ...stretch, notes: resolved },
  };
}
