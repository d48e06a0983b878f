/** Where written notes end: a release is not notated exactly, and only a rest that is heard as one is written. */
import { splitStretch, type BarLevels } from './metric-levels.ts';
import type { Group } from './tuplets.ts';

/** Silence shorter than an eighth note is taken into the note before it. */
const LEAST_REST_TICKS = 60;
/** Each sign more than one costs as much as so many ticks between the release and the written end. */
const TICKS_PER_SIGN = 12;
/** A written end lies at most so many beats behind the release. */
const BEHIND_RELEASE_BEATS = 1;

export interface Sounding {
  /** Written place, ticks from the first downbeat. */
  readonly fromTicks: number;
  /** Where the player released the note, ticks. */
  readonly releaseTicks: number;
  /** Written place of the next note; Infinity for the last. */
  readonly nextTicks: number;
  /** Length of the part of the grid that the note stands on. */
  readonly partTicks: number;
}

/**
 * Where a note ends on paper: at the next note, or at a plain place near its release, with a rest behind.
 * @param groupAt the group that a place lies in, or null
 */
export function writtenEnd(
  { fromTicks, releaseTicks, nextTicks, partTicks }: Sounding,
  bar: BarLevels,
  groupAt: (ticks: number) => Group | null,
): number {
  if (nextTicks - releaseTicks < LEAST_REST_TICKS) return nextTicks;
  const places = [fromTicks + partTicks];
  const half = bar.beatTicks === 180 ? bar.beatTicks / 3 : bar.beatTicks / 2;
  const until = Math.min(nextTicks, releaseTicks + BEHIND_RELEASE_BEATS * bar.beatTicks);
  let at = Math.floor(fromTicks / bar.beatTicks) * bar.beatTicks;
  while (at <= until) {
    const group = groupAt(at);
    at = group === null ? at + half : at + group.partTicks;
    if (at > fromTicks) places.push(at);
  }
  const allowed = places.filter((place) => nextTicks - place >= LEAST_REST_TICKS);
  if (allowed.length === 0) return nextTicks;
  const costOf = (end: number) =>
    Math.abs(end - releaseTicks) + TICKS_PER_SIGN * (signsIn(fromTicks, end, bar, groupAt) - 1);
  return allowed.reduce((best, end) => (costOf(end) < costOf(best) ? end : best));
}

/** About how many signs a note takes: exact outside groups, one for each beat that a group is in. */
function signsIn(from: number, to: number, bar: BarLevels, groupAt: (ticks: number) => Group | null): number {
  let count = 0;
  let at = from;
  while (at < to) {
    const group = groupAt(at);
    const barStart = Math.floor(at / bar.ticks) * bar.ticks;
    let end = Math.min(to, group?.toTicks ?? barStart + bar.ticks);
    if (group === null) {
      for (let beat = Math.ceil((at + 1) / bar.beatTicks) * bar.beatTicks; beat < end; beat += bar.beatTicks)
        if (groupAt(beat) !== null) end = beat;
      count += splitStretch(at - barStart, end - barStart, bar, 'note').length;
    } else count += 1;
    at = end;
  }
  return count;
}
