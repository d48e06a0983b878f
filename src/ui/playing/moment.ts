/** The slow part of a moment: what is read as words, and changes a few times a second at most. */
import type { TargetTone } from '../../core/grading/targets.ts';
import type { Chord } from '../../core/music/chord.ts';
import type { Live, LiveNote } from '../../state/session.svelte.ts';

export interface Moment {
  readonly beatInBar: number;
  readonly chorus: number;
  /** 1, 2, 3 … while counting in; null while playing. */
  readonly countIn: number | null;
  readonly chordNow: Chord | null;
  readonly next: Chord | null;
  /** Whole beats, at least 1. */
  readonly beatsToNext: number | null;
  readonly targets: readonly TargetTone[];
}

const wholeBeats = (beats: number | null): number | null =>
  beats === null ? null : Math.max(1, Math.ceil(beats));

export function momentOf(live: Live): Moment {
  const beatInBar = Math.floor(live.beatInBar);
  return {
    beatInBar,
    chorus: live.chorus,
    countIn: live.beat < 0 ? beatInBar + 1 : null,
    chordNow: live.chordNow,
    next: live.next?.chord ?? null,
    beatsToNext: wholeBeats(live.beatsToNext),
    targets: live.targets,
  };
}

/** Whether the page reads the same. Asked at every frame, so it makes nothing new. */
export const samePlace = (moment: Moment | null, live: Live): boolean =>
  moment !== null &&
  moment.beatInBar === Math.floor(live.beatInBar) &&
  moment.chorus === live.chorus &&
  (moment.countIn === null) === live.beat >= 0 &&
  moment.chordNow?.symbol === live.chordNow?.symbol &&
  moment.next?.symbol === live.next?.chord?.symbol &&
  moment.beatsToNext === wholeBeats(live.beatsToNext);

/** Closer than this two readings of a note are the same to the eye. */
const SAME_CENTS = 2;

/** Whether a note is read as the one that stands on the page. */
export const sameNote = (shown: LiveNote | null, heard: LiveNote): boolean =>
  shown !== null &&
  shown.name === heard.name &&
  shown.degree === heard.degree &&
  shown.role === heard.role &&
  Math.abs(shown.cents - heard.cents) < SAME_CENTS;
