/**
 * The beats of a recording as a player corrects them. A track is a value: every function returns a new one, so that a step
 * can be undone.
 */
import { lastAtOrBefore } from '../chart/beat-maps.ts';

export interface Mark {
  /** From the recording's first sample. */
  readonly seconds: number;
  /** Set by hand: it stays where it is when its neighbours are moved. */
  readonly pinned: boolean;
}

export interface BeatTrack {
  /** Rising. */
  readonly marks: readonly Mark[];
  /** Index of the mark that is the first beat of bar 1. */
  readonly downbeat: number;
}

/** Two beats can't be nearer: 600 a minute. */
export const CLOSEST_SECONDS = 0.1;
/** A moved beat moves this many neighbours on each side with it, less with their distance; a pinned beat ends that. */
export const REACH_BEATS = 8;

/** A track of beats as they were found, none of them pinned. @param beats rising */
export const trackOf = (beats: readonly number[], downbeat = 0): BeatTrack => ({
  marks: beats.map((seconds) => ({ seconds, pinned: false })),
  downbeat: Math.min(Math.max(0, downbeat), Math.max(0, beats.length - 1)),
});

export const secondsOf = ({ marks }: BeatTrack): readonly number[] => marks.map(({ seconds }) => seconds);

/** The mark next to a place, or −1 of none. */
export function nearestMark(track: BeatTrack, seconds: number): number {
  const all = secondsOf(track);
  const before = lastAtOrBefore(all, seconds);
  if (before < 0) return all.length > 0 ? 0 : -1;
  const after = all[before + 1] ?? Infinity;
  return after - seconds < seconds - all[before]! ? before + 1 : before;
}

/**
 * Moves one beat and pins it. Its neighbours follow, the nearest most, along half a wave of a cosine, so that the tempo
 * has no kink; those behind a pinned beat stay. A move that would bring two beats nearer than {@link CLOSEST_SECONDS},
 * or past each other, goes as far as it can.
 * @example moveBeat(track, 12, 7.32)
 */
export function moveBeat(track: BeatTrack, index: number, seconds: number): BeatTrack {
  const { marks } = track;
  const mark = marks[index];
  if (!mark) throw new RangeError(`there is no beat ${index}: the track has ${marks.length}`);
  const weights = weightsAround(marks, index);
  const wanted = Math.max(seconds, 0) - mark.seconds;
  const moved = within(wanted, marks, weights);
  return {
    ...track,
    marks: marks.map((own, i) =>
      i === index
        ? { seconds: own.seconds + moved, pinned: true }
        : { ...own, seconds: own.seconds + moved * weights[i]! },
    ),
  };
}

/** The share of the move for each mark: 1 for the moved one, 0 from the reach or from a pinned mark on. */
function weightsAround(marks: readonly Mark[], index: number): readonly number[] {
  const reachOf = (step: 1 | -1): number => {
    for (let far = 1; far <= REACH_BEATS; far++) if (marks[index + step * far]?.pinned) return far;
    return REACH_BEATS;
  };
  const reach = { before: reachOf(-1), behind: reachOf(1) };
  return marks.map((_, i) => {
    const share = i < index ? (index - i) / reach.before : (i - index) / reach.behind;
    return share >= 1 ? 0 : (1 + Math.cos(Math.PI * share)) / 2;
  });
}

/** The move, cut so that the first mark stays in the recording and no interval becomes too short. */
function within(wanted: number, marks: readonly Mark[], weights: readonly number[]): number {
  let share = 1;
  const first = marks[0];
  if (first && wanted < 0 && weights[0]! > 0)
    share = Math.min(share, first.seconds / (-wanted * weights[0]!));
  for (let i = 1; i < marks.length; i++) {
    const interval = marks[i]!.seconds - marks[i - 1]!.seconds;
    const shrinks = -wanted * (weights[i]! - weights[i - 1]!);
    if (shrinks <= 0) continue;
    share = Math.min(share, Math.max(0, interval - CLOSEST_SECONDS) / shrinks);
  }
  return wanted * share;
}

/** Pins a beat where it is, or unpins it. */
export const pinBeat = (track: BeatTrack, index: number, pinned: boolean): BeatTrack => ({
  ...track,
  marks: track.marks.map((mark, i) => (i === index ? { ...mark, pinned } : mark)),
});

/** Adds a beat and pins it. Too near to another beat, it is not added. */
export function insertBeat(track: BeatTrack, seconds: number): BeatTrack {
  const near = track.marks[nearestMark(track, seconds)];
  if (seconds < 0 || (near && Math.abs(near.seconds - seconds) < CLOSEST_SECONDS)) return track;
  const at = lastAtOrBefore(secondsOf(track), seconds) + 1;
  return {
    marks: track.marks.toSpliced(at, 0, { seconds, pinned: true }),
    downbeat: at <= track.downbeat && track.marks.length > 0 ? track.downbeat + 1 : track.downbeat,
  };
}

/** Removes a beat; if it was the first downbeat, the next beat becomes that. */
export function removeBeat(track: BeatTrack, index: number): BeatTrack {
  const marks = track.marks.toSpliced(index, 1);
  const downbeat = index < track.downbeat ? track.downbeat - 1 : track.downbeat;
  return { marks, downbeat: Math.max(0, Math.min(downbeat, marks.length - 1)) };
}

/**
 * Lays the beats between the pinned ones around a place at even distances, as many as fit the pace of the beats before
 * the gap: for a stretch that was found wrong, once its two ends are right. Without a pinned one on both sides nothing
 * is to be laid between, and the track stays as it is.
 */
export function evenOut(track: BeatTrack, index: number): BeatTrack {
  const { marks, downbeat } = track;
  const before = marks.findLastIndex((mark, i) => i <= index && mark.pinned);
  const behind = marks.findIndex((mark, i) => i > Math.max(index, before) && mark.pinned);
  if (before < 0 || behind < 0) return track;
  const [from, to] = [marks[before]!.seconds, marks[behind]!.seconds];
  const count = behind - before;
  const between = Array.from({ length: count - 1 }, (_, k) => ({
    seconds: from + ((k + 1) * (to - from)) / count,
    pinned: false,
  }));
  return { marks: marks.toSpliced(before + 1, count - 1, ...between), downbeat };
}

/**
 * Continues from a beat at the tempo of the beats before it, to the next pinned beat or the end of the recording: for a
 * stretch in which the beats were found wrongly.
 * @param durationSeconds of the recording
 */
export function goOnFrom(track: BeatTrack, index: number, durationSeconds: number): BeatTrack {
  const { marks } = track;
  const pace = paceBefore(marks, index);
  const mark = marks[index];
  if (!mark || pace === null) return track;
  const next = marks.findIndex((other, i) => i > index && other.pinned);
  const until = next < 0 ? durationSeconds + pace / 2 : marks[next]!.seconds;
  const count = Math.max(0, Math.round((until - mark.seconds) / pace) - 1);
  const step = next < 0 ? pace : (until - mark.seconds) / (count + 1);
  const laid = Array.from({ length: count }, (_, k) => ({
    seconds: mark.seconds + (k + 1) * step,
    pinned: false,
  })).filter(({ seconds }) => seconds <= durationSeconds);
  const rest = next < 0 ? [] : marks.slice(next);
  const kept = [...marks.slice(0, index), { ...mark, pinned: true }];
  const moved = kept.length + laid.length - (next < 0 ? marks.length : next);
  const downbeat =
    track.downbeat > index && next >= 0 && track.downbeat >= next ? track.downbeat + moved : track.downbeat;
  const all = [...kept, ...laid, ...rest];
  return { marks: all, downbeat: Math.min(downbeat, all.length - 1) };
}

const BEATS_OF_PACE = 4;

/** Seconds a beat just before a mark, or just behind the first ones; null where there is one mark only. */
function paceBefore(marks: readonly Mark[], index: number): number | null {
  const from = Math.max(0, index - BEATS_OF_PACE);
  const to = from < index ? index : Math.min(marks.length - 1, BEATS_OF_PACE);
  if (to <= from) return null;
  return (marks[to]!.seconds - marks[from]!.seconds) / (to - from);
}

/** Beats before the first and behind the last one, at their pace, as far as the recording goes. */
export function fillOut(track: BeatTrack, durationSeconds: number): BeatTrack {
  const { marks, downbeat } = track;
  const first = marks[0];
  const last = marks.at(-1);
  if (!first || !last || marks.length < 2) return track;
  const head = Math.min(BEATS_OF_PACE, marks.length - 1);
  const entry = (marks[head]!.seconds - first.seconds) / head;
  const leave = paceBefore(marks, marks.length - 1) ?? entry;
  // A beat just before the first sample is left out.
  const before = Math.max(0, Math.floor(first.seconds / entry + 1e-9));
  const behind = Math.max(0, Math.floor((durationSeconds - last.seconds) / leave + 1e-9));
  return {
    marks: [
      ...Array.from({ length: before }, (_, i) => free(first.seconds - (before - i) * entry)),
      ...marks,
      ...Array.from({ length: behind }, (_, i) => free(last.seconds + (i + 1) * leave)),
    ],
    downbeat: downbeat + before,
  };
}

const free = (seconds: number): Mark => ({ seconds, pinned: false });
