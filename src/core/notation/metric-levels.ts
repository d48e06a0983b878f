/**
 * How strong the places of a bar are, and which lengths may stand over them unbroken. A written note must let the reader
 * see the beats: one that starts off the beat does not run over a stronger place than the one above its own. Common
 * practice (the "imaginary bar line" of handbooks on copying; E. Gould, Behind Bars, 2011, from memory).
 */
import { TICKS_PER_QUARTER, type ValueName, type WrittenMeter } from './score.ts';

/** Strength of a place: the bar line 4, a group of beats 3, a beat 2, an eighth 1, a sixteenth 0, finer −1. */
export type Level = -1 | 0 | 1 | 2 | 3 | 4;

const EIGHTH = TICKS_PER_QUARTER / 2;

export interface BarLevels {
  readonly ticks: number;
  readonly beatTicks: number;
  /** Where groups of beats begin, ticks: the middle of 4/4; 3 + 2 in 5/4. */
  readonly groups: readonly number[];
}

/** Groups of beats by their number: even bars in halves, others long before short (common practice). */
const GROUPS: Readonly<Record<number, readonly number[]>> = { 4: [2], 5: [3], 6: [3], 7: [4] };

/** @example barLevels(4, 120) // the middle of 4/4 is a group: { ticks: 480, beatTicks: 120, groups: [240] } */
export const barLevels = (beatsPerBar: number, beatTicks: number): BarLevels => ({
  ticks: beatsPerBar * beatTicks,
  beatTicks,
  groups: (GROUPS[beatsPerBar] ?? []).map((beat) => beat * beatTicks),
});

/** The signature: the beat is a quarter, or three eighths. */
export const writtenMeter = (beatsPerBar: number, divisions: 2 | 3): WrittenMeter =>
  divisions === 2 ? { beats: beatsPerBar, beatType: 4 } : { beats: beatsPerBar * 3, beatType: 8 };

/** How strong a place is, in ticks from the bar line. */
export function levelAt(at: number, { ticks, beatTicks, groups }: BarLevels): Level {
  if (at % ticks === 0) return 4;
  if (groups.includes(at)) return 3;
  if (at % beatTicks === 0) return 2;
  if (at % EIGHTH === 0) return 1;
  return at % (EIGHTH / 2) === 0 ? 0 : -1;
}

/**
 * The strongest place inside a stretch; null in one that has none. Of equally strong ones the first, or the last where the
 * stretch begins at least as strongly: a half note and an eighth, not a quarter and a dotted one.
 */
export function strongestInside(
  from: number,
  to: number,
  bar: BarLevels,
): { readonly at: number; readonly level: Level } | null {
  let found: { readonly at: number; readonly level: Level } | null = null;
  const step = EIGHTH / 4;
  for (let at = Math.ceil((from + 1) / step) * step; at < to; at += step) {
    const level = levelAt(at, bar);
    if (found === null || level > found.level || (level === found.level && levelAt(from, bar) >= level))
      found = { at, level };
  }
  return found;
}

export interface Value {
  readonly value: ValueName;
  readonly dotted: boolean;
}

const VALUES: readonly (readonly [number, ValueName])[] = [
  [4 * TICKS_PER_QUARTER, 'whole'],
  [2 * TICKS_PER_QUARTER, 'half'],
  [TICKS_PER_QUARTER, 'quarter'],
  [EIGHTH, 'eighth'],
  [EIGHTH / 2, '16th'],
  [EIGHTH / 4, '32nd'],
  [EIGHTH / 8, '64th'],
];

/** The note value of so many ticks, with a dot at most; null where it takes two notes. */
export function valueOf(ticks: number): Value | null {
  for (const [plain, value] of VALUES) {
    if (ticks === plain) return { value, dotted: false };
    if (ticks === plain * 1.5) return { value, dotted: true };
  }
  return null;
}

/** Whether a note may stand over [from, to) as one sign. */
function noteMayStand(from: number, to: number, bar: BarLevels): boolean {
  const inside = strongestInside(from, to, bar);
  if (inside === null) return true;
  const least = Math.min(levelAt(from, bar), levelAt(to, bar));
  // In compound time the dotted beat is always shown.
  if (bar.beatTicks % (3 * EIGHTH) === 0 && inside.level >= 2) return least >= 2;
  return least >= inside.level - 1;
}

/** Whether a rest may: rests hide no place as strong as the ones they lie between. */
function restMayStand(from: number, to: number, bar: BarLevels, dotted: boolean): boolean {
  if (from === 0 && to === bar.ticks) return true;
  const inside = strongestInside(from, to, bar);
  const compound = bar.beatTicks % (3 * EIGHTH) === 0;
  if (dotted && !(compound && to - from >= bar.beatTicks)) return false;
  if (inside === null) return true;
  // The first two eighths of a dotted beat may rest together.
  if (compound && inside.level === 1) return levelAt(from, bar) >= 2;
  return inside.level < Math.min(levelAt(from, bar), levelAt(to, bar));
}

/** A stretch of a bar as the signs that stand for it, in order, each with its start and length in ticks. */
export function splitStretch(
  from: number,
  to: number,
  bar: BarLevels,
  kind: 'note' | 'rest',
): readonly { readonly at: number; readonly ticks: number; readonly value: Value }[] {
  const value = valueOf(to - from);
  const stands =
    value !== null &&
    (kind === 'note' ? noteMayStand(from, to, bar) : restMayStand(from, to, bar, value.dotted));
  if (stands) return [{ at: from, ticks: to - from, value }];
  const inside = strongestInside(from, to, bar);
  if (inside === null) throw new Error(`no signs are known for ${to - from} ticks at ${from}`);
  return [...splitStretch(from, inside.at, bar, kind), ...splitStretch(inside.at, to, bar, kind)];
}
