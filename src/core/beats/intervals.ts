/** Beats as the intervals between them. */

/** Beats a minute by the middle interval. */
export const bpmOf = (beats: readonly number[]): number => 60 / middle(intervalsOf(beats));

export const intervalsOf = (beats: readonly number[]): readonly number[] =>
  beats.slice(1).map((beat, i) => beat - beats[i]!);

/** The middle value; 0 of none. */
export const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;

/** How much neighbouring intervals differ, as a share of the middle one: little for a drifting tempo, much for chance. */
export function unevenness(beats: readonly number[]): number {
  const intervals = intervalsOf(beats);
  const changes = intervals.slice(1).map((interval, i) => Math.abs(interval - intervals[i]!));
  return middle(changes) / Math.max(1e-9, middle(intervals));
}
