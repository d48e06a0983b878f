/** The slow part of a moment: what is read as words, and changes a few times a second at most. */
import type { TargetTone } from '../../core/grading/targets.ts';
import type { Chord } from '../../core/music/chord.ts';
import type { Live } from '../../state/session.svelte.ts';

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

export function momentOf(live: Live): Moment {
  const beatInBar = Math.floor(live.beatInBar);
  return {
    beatInBar,
    chorus: live.chorus,
    countIn: live.beat < 0 ? beatInBar + 1 : null,
    chordNow: live.chordNow,
    next: live.next?.chord ?? null,
    beatsToNext: live.beatsToNext === null ? null : Math.max(1, Math.ceil(live.beatsToNext)),
    targets: live.targets,
  };
}

/** Whether two moments read the same. */
export function samePlace(a: Moment | null, b: Moment): boolean {
  return (
    a !== null &&
    a.beatInBar === b.beatInBar &&
    a.chorus === b.chorus &&
    a.countIn === b.countIn &&
    a.chordNow?.symbol === b.chordNow?.symbol &&
    a.next?.symbol === b.next?.symbol &&
    a.beatsToNext === b.beatsToNext
  );
}
