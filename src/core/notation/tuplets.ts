/** Groups that divide a beat, or two, otherwise than the meter does: their ratios, and the signs inside them. */
import type { Grid } from './beat-grids.ts';
import type { Value } from './metric-levels.ts';
import { valueOf } from './metric-levels.ts';
import { TICKS_PER_QUARTER, type Ratio, type ValueName } from './score.ts';

/** A stretch whose signs form one group. */
export interface Group extends Ratio {
  /** From the first downbeat. */
  readonly fromTicks: number;
  readonly toTicks: number;
  /** Length of one of its parts as it sounds. */
  readonly partTicks: number;
  /** The same as it is written. */
  readonly part: ValueName;
}

/**
 * The ratio of a grid, or null where it divides the beat as the meter does. Common practice: 3 in the time of 2, 5 and 6
 * in the time of 4; in compound time 2 and 4 in the time of 3.
 */
export function ratioOf({ kind, parts, beats }: Grid, beatTicks: number): Ratio | null {
  if (kind === 'plain') return null;
  if (beatTicks === TICKS_PER_QUARTER) return { actual: parts, normal: parts === 3 ? 2 : 4 * beats };
  return { actual: parts, normal: 3 };
}

/** The group that a grid makes from a beat on; null where it makes none. */
export function groupOf(grid: Grid, beat: number, beatTicks: number): Group | null {
  const ratio = ratioOf(grid, beatTicks);
  if (ratio === null) return null;
  const ticks = grid.beats * beatTicks;
  const partTicks = ticks / grid.parts;
  const part = valueOf((partTicks * ratio.actual) / ratio.normal)?.value;
  if (part === undefined) throw new Error(`a group of ${grid.parts} has no value for its parts`);
  return {
    ...ratio,
    fromTicks: beat * beatTicks,
    toTicks: beat * beatTicks + ticks,
    partTicks,
    part,
  };
}

/** A stretch inside a group as signs, each of whole parts: values as they are written, before the ratio shortens them. */
export function splitInGroup(
  from: number,
  to: number,
  group: Group,
): readonly { readonly at: number; readonly ticks: number; readonly value: Value }[] {
  const written = ((to - from) * group.actual) / group.normal;
  const value = valueOf(written);
  if (value !== null) return [{ at: from, ticks: to - from, value }];
  const parts = (to - from) / group.partTicks;
  // The longest value of whole parts first.
  for (let first = parts - 1; first >= 1; first--) {
    const at = from + first * group.partTicks;
    if (valueOf((first * group.partTicks * group.actual) / group.normal) !== null)
      return [...splitInGroup(from, at, group), ...splitInGroup(at, to, group)];
  }
  throw new Error(`no signs are known for ${parts} parts of a group`);
}
