/** The slow part of a moment: what is read as words, and changes a few times a second at most. */
import { keyAt } from '../../core/chart/keys-through.ts';
import { bpmAt } from '../../core/chart/tempo-rise.ts';
import type { Timeline } from '../../core/chart/timeline.ts';
import { endOfTurn, isPlayersTurn } from '../../core/chart/turns.ts';
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import type { Chord } from '../../core/music/chord.ts';
import { writeKey } from '../../core/music/keys.ts';
import type { Landing } from '../../core/take/schema.ts';
import type { LiveMoment, LiveNote } from '../../state/session.svelte.ts';

/** Whose turn it is where player and band trade bars, and how long it still lasts, this bar and this beat counted. */
export interface Turn {
  readonly whose: 'player' | 'band';
  readonly barsLeft: number;
  readonly beatsLeft: number;
}

export interface Moment {
  /** Whole beats from the first downbeat. */
  readonly beat: number;
  readonly beatInBar: number;
  readonly chorus: number;
  /** 1, 2, 3 … while counting in; null while playing. */
  readonly countIn: number | null;
  readonly chordNow: Chord | null;
  readonly next: Chord | null;
  /** Whole beats, at least 1. */
  readonly beatsToNext: number | null;
  readonly targets: readonly TargetTone[];
  readonly targetsAreAim: boolean;
  readonly aimNow: readonly TargetTone[];
  /** Beats a minute now; null where the tempo stays. */
  readonly bpm: number | null;
  /** "F#", "A minor"; null where the form stays in one key. */
  readonly key: string | null;
  /** null where nobody trades, and while counting in: the player begins. */
  readonly turn: Turn | null;
}

const wholeBeats = (beats: number | null): number | null =>
  beats === null ? null : Math.max(1, Math.ceil(beats));

type Course = Pick<Timeline, 'turnBars' | 'beatsPerBar' | 'bars' | 'key' | 'keys' | 'rise'> & {
  readonly beatMap: Pick<Timeline['beatMap'], 'bpm'>;
};

function turnOf({ beat }: LiveMoment, timeline: Course): Turn | null {
  if (timeline.turnBars === undefined || beat < 0) return null;
  const left = endOfTurn(timeline, beat) - beat;
  return {
    whose: isPlayersTurn(timeline, beat) ? 'player' : 'band',
    barsLeft: Math.ceil(left / timeline.beatsPerBar),
    beatsLeft: Math.ceil(left),
  };
}

function risenBpm({ beat }: LiveMoment, { rise, beatMap, beatsPerBar }: Course): number | null {
  if (rise === undefined || beatMap.bpm === null) return null;
  return Math.round(bpmAt({ bpm: beatMap.bpm, rise, beatsPerBar }, beat));
}

export function momentOf(live: LiveMoment, timeline: Course): Moment {
  const beatInBar = Math.floor(live.beatInBar);
  return {
    beat: Math.floor(live.beat),
    beatInBar,
    chorus: live.chorus,
    countIn: live.beat < 0 ? beatInBar + 1 : null,
    chordNow: live.chordNow,
    next: live.next?.chord ?? null,
    beatsToNext: wholeBeats(live.beatsToNext),
    targets: live.targets,
    targetsAreAim: live.targetsAreAim,
    aimNow: live.aimNow,
    bpm: risenBpm(live, timeline),
    key: timeline.keys === undefined ? null : writeKey(keyAt(timeline, live.beat)),
    turn: turnOf(live, timeline),
  };
}

/** Which time through the form a beat is in, and in which of the keys; null where the form stays in one key. */
export function passAt(
  beat: number,
  { bars, beatsPerBar }: Pick<Timeline, 'bars' | 'beatsPerBar'>,
  passes: number,
): { readonly chorus: number; readonly key: number; readonly of: number } | null {
  if (passes === 1) return null;
  const chorus = Math.max(0, Math.floor((beat * passes) / (bars * beatsPerBar)));
  return { chorus, key: (chorus % passes) + 1, of: passes };
}

/** Whether the page reads the same. Asked at every frame, so it makes nothing new. */
export const samePlace = (moment: Moment | null, live: LiveMoment): boolean =>
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

/** A note may still be the landing of a change for so long: what is said aloud waits for it, and is said once. */
const LANDS_WITHIN_BEATS = 1;

/** The newest landing that stands. */
export const settledLanding = (
  landings: readonly Landing[],
  { beat }: Pick<Moment, 'beat'>,
): Landing | null => landings.findLast((landing) => landing.beat + LANDS_WITHIN_BEATS <= beat) ?? null;
