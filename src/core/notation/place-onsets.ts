/**
 * Onsets of a played line put on written places: for every beat the division that explains its onsets best, weighed over
 * the whole line at once (dynamic programming), because an onset near a beat may belong to either side of it.
 */
import type { Grid } from './beat-grids.ts';

/** An onset to be placed. */
export interface Onset {
  /** In beats from the first downbeat. */
  readonly beat: number;
  /** To the next onset of the line, seconds; Infinity for the last. */
  readonly toNextSeconds: number;
}

/** Where an onset is written. */
export interface Placed {
  /** First beat of its grid. */
  readonly beat: number;
  readonly grid: Grid;
  /** Which part of the grid. */
  readonly part: number;
  /** Written small before the next onset that is not. */
  readonly grace: boolean;
}

export interface Placing {
  readonly beatsPerBar: number;
  /** Grids for the beat: the swing may change from section to section. */
  readonly gridsAt: (beat: number) => readonly Grid[];
  readonly beatSecondsAt: (beat: number) => number;
  /** Whether the player may lie behind the beat for a while; without it, one pass is several times as fast. */
  readonly drifts: boolean;
}

/** Scatter of a played onset about its place: a part in seconds, and one that grows with the beat. */
const SCATTER_SECONDS = 0.03;
const SCATTER_BEATS = 0.03;
/** Swung eighths scatter more, by so many beats. */
const SWING_SCATTER_BEATS = 0.05;
/** An onset may be written on a beat though it is played so much before it, or belong to the beat behind it. */
const REACH_BEATS = 0.4;
/** A grace note is about so long; longer ones cost more and more. */
const GRACE_SECONDS = 0.07;
const GRACE_COST = 2;
/** From a plain division to one across the meter, or back. */
const CHANGE_COST = 0.3;
/**
 * A player lies behind the beat, or before it, for a while, and not always alike: each beat may be moved by one of these,
 * against the player's mean. The further it is, and the more it changes from beat to beat, the more it costs.
 */
const SHIFTS_SECONDS = [-0.03, 0, 0.03, 0.06, 0.09, 0.12] as const;
const NO_SHIFT = [0] as const;
const MOST_SHIFT_BEATS = 0.28;
const SHIFT_SCATTER_SECONDS = 0.06;
const SHIFT_CHANGE_SECONDS = 0.04;
/** States of the search that are so much dearer than the best lead nowhere. */
const BEAM = 10;
/** A division of which less is played is not looked at. */
const MOST_EMPTY_COST = 6;
/** Sixteenths of which none lies on an eighth. */
const OFF_COST = 0.8;
/** Two divisions that explain a beat as well as this are equal; the plainer one stands. */
const SAME = 1e-9;

interface Fit {
  readonly cost: number;
  /** Part of each onset; null for a grace. */
  readonly parts: readonly (number | null)[];
}

interface State {
  readonly cost: number;
  readonly grid: Grid;
  readonly shift: number;
  /** Onsets that are placed before the next beat. */
  readonly upTo: number;
  readonly fit: Fit;
  readonly beat: number;
  readonly before: State | null;
}

/**
 * Places every onset. Onsets are in order; the answer has one entry for each.
 * @example placeOnsets([{ beat: 0.02, toNextSeconds: 0.3 }, { beat: 0.66, toNextSeconds: Infinity }], swinging)
 *   // two eighths: parts 0 and 1 of a grid of 2
 */
export function placeOnsets(onsets: readonly Onset[], placing: Placing): readonly Placed[] {
  if (onsets.length === 0) return [];
  const firstBeat = Math.floor(onsets[0]!.beat + REACH_BEATS / 2);
  const lastBeat = Math.floor(onsets.at(-1)!.beat + REACH_BEATS) + 1;
  /** By beat, the best state for each number of onsets placed and each kind of division. */
  const table = new Map<number, Map<string, State>>();
  const offer = (beat: number, state: State) => {
    const row = table.get(beat) ?? new Map<string, State>();
    table.set(beat, row);
    const key = `${state.upTo} ${state.grid.kind} ${state.shift}`;
    const known = row.get(key);
    if (!known || state.cost < known.cost - SAME) row.set(key, state);
  };
  for (let beat = firstBeat; beat <= lastBeat; beat++) {
    const row: readonly (State | null)[] =
      beat === firstBeat ? [null] : withinBeam([...(table.get(beat)?.values() ?? [])]);
    table.delete(beat - 2);
    for (const way of waysOver(beat, row, onsets, placing)) offer(beat + way.grid.beats, way);
  }
  return followBack(table, lastBeat, onsets.length);
}

function withinBeam(states: readonly State[]): readonly State[] {
  const least = Math.min(...states.map(({ cost }) => cost));
  return states.filter(({ cost }) => cost <= least + BEAM);
}

/** Every way to write the beat behind each of the states before it. */
function waysOver(
  beat: number,
  row: readonly (State | null)[],
  onsets: readonly Onset[],
  { beatsPerBar, gridsAt, beatSecondsAt, drifts }: Placing,
): readonly State[] {
  const beatSeconds = beatSecondsAt(beat);
  const ways: State[] = [];
  const byStart = new Map<number, (State | null)[]>();
  for (const state of row) {
    const from = state?.upTo ?? 0;
    byStart.set(from, [...(byStart.get(from) ?? []), state]);
  }
  /** The cheapest state to come from, which depends on the shift and the kind of division alone. */
  const known = new Map<string, { before: State | null; cost: number }>();
  const joins = (from: number, befores: readonly (State | null)[], shift: number, kind: Grid['kind']) => {
    const key = `${from} ${shift} ${kind}`;
    let best = known.get(key);
    for (const before of best ? [] : befores) {
      const change = before === null ? 0 : ((shift - before.shift) / SHIFT_CHANGE_SECONDS) ** 2 / 2;
      const cross = before !== null && before.grid.kind !== kind ? CHANGE_COST : 0;
      const cost = (before?.cost ?? 0) + change + cross;
      if (!best || cost < best.cost - SAME) best = { before, cost };
    }
    known.set(key, best!);
    return best!;
  };
  let least = Infinity;
  for (const grid of gridsAt(beat)) {
    if (grid.beats === 2 && !twoBeatsFrom(beat, beatsPerBar)) continue;
    for (const [from, befores] of byStart) {
      for (const upTo of cuts(onsets, from, beat + grid.beats)) {
        if (from === upTo) {
          // Silence says nothing of how late the player is.
          for (const before of grid.parts === 1 ? befores : [])
            ways.push({
              cost: before?.cost ?? 0,
              grid,
              shift: before?.shift ?? 0,
              upTo,
              fit: NOTHING,
              beat,
              before,
            });
          continue;
        }
        for (const shift of drifts ? SHIFTS_SECONDS : NO_SHIFT) {
          if (Math.abs(shift) > MOST_SHIFT_BEATS * beatSeconds) continue;
          const { before, cost } = joins(from, befores, shift, grid.kind);
          const atLeast = cost + grid.cost + (shift / SHIFT_SCATTER_SECONDS) ** 2 / 2;
          if (atLeast > least + BEAM) continue;
          const fit = fitGrid(onsets, from, upTo, beat + shift / beatSeconds, grid, beatSeconds);
          if (fit === null) continue;
          const whole = atLeast - grid.cost + fit.cost;
          ways.push({ cost: whole, grid, shift, upTo, fit, beat, before });
          if (grid.beats === 1) least = Math.min(least, whole);
        }
      }
    }
  }
  return ways;
}

const NOTHING: Fit = { cost: 0, parts: [] };

/** Three quarters in the time of two start where a half note would: on the first beat, or two beats on. */
const twoBeatsFrom = (beat: number, beatsPerBar: number): boolean => {
  const inBar = ((beat % beatsPerBar) + beatsPerBar) % beatsPerBar;
  return inBar + 2 <= beatsPerBar && (inBar % 2 === 0 || beatsPerBar === 3);
};

/** How many onsets may be placed before a beat: those near it may go to either side. */
function cuts(onsets: readonly Onset[], from: number, beat: number): readonly number[] {
  const found: number[] = [];
  for (let upTo = from; upTo <= onsets.length; upTo++) {
    const last = onsets[upTo - 1]?.beat ?? -Infinity;
    const next = onsets[upTo]?.beat ?? Infinity;
    if (upTo > from && last > beat + REACH_BEATS / 4) break;
    if (next >= beat - REACH_BEATS) found.push(upTo);
  }
  // Where onsets lie so close that none of this holds, all that are played before the beat are placed.
  if (found.length > 0) return found;
  const behind = onsets.findIndex((onset, i) => i >= from && onset.beat >= beat);
  return [behind < 0 ? onsets.length : behind];
}

/** Onsets [from, upTo) on a grid, each part taken once, the others graces; null where they can't be. */
function fitGrid(
  onsets: readonly Onset[],
  from: number,
  upTo: number,
  beat: number,
  grid: Grid,
  beatSeconds: number,
): Fit | null {
  const count = upTo - from;
  const { places, parts } = grid;
  if (grid.costOfEmpty * (parts - count) > MOST_EMPTY_COST || (grid.beats === 2 && count < 2)) return null;
  // The finest divisions take any number; the others are not for runs of grace notes.
  if (parts < 8 && count > parts + 2) return null;
  const scatter = Math.hypot(SCATTER_SECONDS / beatSeconds, SCATTER_BEATS);
  /** best[k]: the cheapest way to have placed the onsets so far, the last main one in a part below k. */
  let best: (Way | null)[] = Array.from({ length: parts + 1 }, () => ({ cost: 0, parts: null, last: null }));
  for (let i = from; i < upTo; i++) {
    const { beat: at, toNextSeconds } = onsets[i]!;
    const small = GRACE_COST + (toNextSeconds / GRACE_SECONDS) ** 2 / 2;
    const mayBeGrace = i + 1 < onsets.length && i + 1 < upTo;
    const next: (Way | null)[] = [];
    let bestHere: Way | null = null;
    for (let k = 0; k <= parts; k++) {
      if (k > 0) {
        const before = best[k - 1] ?? null;
        const part = k - 1;
        const spread = grid.swung && part % 2 === 1 ? Math.hypot(scatter, SWING_SCATTER_BEATS) : scatter;
        const off = (at - beat - places[part]!) / spread;
        if (before !== null) {
          const cost = before.cost + (off * off) / 2 + Math.log(spread / scatter);
          if (bestHere === null || cost < bestHere.cost - SAME)
            bestHere = { cost, parts: before, last: part };
        }
      }
      const smallAfter = mayBeGrace ? (best[k] ?? null) : null;
      const asGrace: Way | null = smallAfter && {
        cost: smallAfter.cost + small,
        parts: smallAfter,
        last: null,
      };
      next.push(
        bestHere !== null && (asGrace === null || bestHere.cost <= asGrace.cost) ? bestHere : asGrace,
      );
    }
    best = next;
  }
  const way = best[parts] ?? null;
  if (way === null) return null;
  const placed: (number | null)[] = [];
  for (let at: Way = way; at.parts !== null; at = at.parts) placed.unshift(at.last);
  const taken = placed.filter((part) => part !== null).length;
  // The finest part that is used must need this grid: eighths are not written as sixteenths.
  const step = placed.reduce<number>((sum, part) => gcd(sum, part ?? 0), parts);
  if (step > 1 && parts > 1) return null;
  const off = parts >= 4 && placed.every((part) => part === null || part % 2 === 1) ? OFF_COST : 0;
  return { cost: way.cost + grid.cost + grid.costOfEmpty * (parts - taken) + off, parts: placed };
}

interface Way {
  readonly cost: number;
  readonly parts: Way | null;
  readonly last: number | null;
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

function followBack(
  table: ReadonlyMap<number, ReadonlyMap<string, State>>,
  lastBeat: number,
  count: number,
): readonly Placed[] {
  const ends = [lastBeat + 1, lastBeat + 2]
    .flatMap((beat) => [...(table.get(beat)?.values() ?? [])])
    .filter(({ upTo }) => upTo === count);
  let state: State | null = ends.reduce<State | null>(
    (best, one) => (best === null || one.cost < best.cost - SAME ? one : best),
    null,
  );
  if (state === null) throw new Error('onsets are in order and finite');
  const placed: Placed[] = [];
  for (; state !== null; state = state.before) {
    const { beat, grid, fit } = state;
    const parts = [...fit.parts];
    // A grace stands at the part of the note behind it.
    let behind = 0;
    for (let i = parts.length - 1; i >= 0; i--) {
      const grace = parts[i] === null;
      behind = parts[i] ?? behind;
      placed.push({ beat, grid, part: behind, grace });
    }
  }
  return placed.reverse();
}
