/** Bars that were tried again beside the take that they are from: the same changes, then and now. */
import type { Landing, Report } from '../take/schema.ts';

/** Which landings count: those on what the aim in hand asks for. */
export type Asked = 'thirds' | 'guideTones' | 'chordTones';

export interface Counted {
  readonly hits: number;
  readonly of: number;
}

/** One change of the form, each time it came. */
export interface ChangeBeside {
  /** Bar of the form, from 1. */
  readonly bar: number;
  readonly chord: string;
  readonly first: readonly Landing[];
  readonly now: readonly Landing[];
}

export interface BesideFirst {
  readonly changes: readonly ChangeBeside[];
  readonly asked: Asked;
  readonly first: Counted;
  readonly now: Counted;
  /** "more" and "fewer" only where luck would hardly give it; else it is too early to tell. */
  readonly verdict: 'more' | 'fewer' | 'too early';
}

/** Where luck gives as much in fewer cases than this, it is said. */
const RARE = 0.05;
const GUIDES: ReadonlySet<string> = new Set(['third', 'seventh']);
const CHORD_TONES: ReadonlySet<string> = new Set(['root', 'third', 'fifth', 'seventh', 'extension']);

/**
 * @param bars of the first take's form, from 1, both included: the second take's form is these bars alone
 * @param tones what the aim in hand asks for, by the names of `AimChoice`
 */
export function besideFirst(
  first: Pick<Report, 'landings'>,
  now: Pick<Report, 'landings'>,
  { fromBar, toBar }: { readonly fromBar: number; readonly toBar: number },
  tones: readonly string[],
): BesideFirst {
  const asked = askedBy(tones);
  const then = first.landings.filter(({ bar }) => bar + 1 >= fromBar && bar + 1 <= toBar);
  const places = new Map<string, ChangeBeside>();
  const add = (landing: Landing, bar: number, when: 'first' | 'now') => {
    const key = `${bar} ${landing.beatOfBar}`;
    const change = places.get(key) ?? { bar, chord: landing.chord, first: [], now: [] };
    places.set(key, { ...change, [when]: [...change[when], landing] });
  };
  for (const landing of then) add(landing, landing.bar + 1, 'first');
  for (const landing of now.landings) add(landing, landing.bar + fromBar, 'now');
  const changes = [...places.values()].toSorted((a, b) => a.bar - b.bar);
  // A try that ended early is compared with the same changes of the first take.
  const reached = changes.filter((change) => change.now.length > 0);
  const both = reached.length > 0 ? reached : changes;
  const counts = {
    first: count(
      both.flatMap((change) => change.first),
      asked,
    ),
    now: count(
      both.flatMap((change) => change.now),
      asked,
    ),
  };
  return { changes, asked, ...counts, verdict: verdictOf(counts.first, counts.now) };
}

const askedBy = (tones: readonly string[]): Asked => {
  if (tones.includes('third')) return 'thirds';
  return tones.includes('guide tone') ? 'guideTones' : 'chordTones';
};

/** A rest is no miss: it is in no share. */
function count(landings: readonly Landing[], asked: Asked): Counted {
  const played = landings.filter(({ kind }) => kind !== 'open');
  const hits = played.filter(({ role }) => {
    if (role === null) return false;
    if (asked === 'thirds') return role === 'third';
    return (asked === 'guideTones' ? GUIDES : CHORD_TONES).has(role);
  });
  return { hits: hits.length, of: played.length };
}

function verdictOf(first: Counted, now: Counted): BesideFirst['verdict'] {
  if (fisherTail(now, first) < RARE) return 'more';
  return fisherTail(first, now) < RARE ? 'fewer' : 'too early';
}

/**
 * The chance of as many hits in one group or more, if all hits were dealt to both groups by luck: Fisher's exact test,
 * one tail (R. A. Fisher, "The Design of Experiments", 1935).
 * @example fisherTail({ hits: 3, of: 4 }, { hits: 1, of: 4 }) // 17 of 70: the lady tasting tea
 */
export function fisherTail(one: Counted, other: Counted): number {
  const hits = one.hits + other.hits;
  const all = choose(one.of + other.of, hits);
  let tail = 0;
  for (let k = one.hits; k <= Math.min(hits, one.of); k++)
    tail += choose(one.of, k) * choose(other.of, hits - k);
  return tail / all;
}

function choose(of: number, taken: number): number {
  if (taken < 0 || taken > of) return 0;
  let ways = 1;
  for (let i = 1; i <= taken; i++) ways = (ways * (of - taken + i)) / i;
  return ways;
}
