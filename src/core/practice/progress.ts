/**
 * Many takes together: how it goes by aim, form, chord and key, what is due today, and whether two takes differ. Every
 * share has its interval, and a trend is told only where it holds among all the rows of the page (Holm), so that good and
 * bad days are not told as progress.
 */
import { holm, wilsonInterval } from '../base/statistics.ts';
import { findDue, type PracticeItem } from './spacing.ts';
import type { ChangeCount, TakeCounts } from './take-counts.ts';
import { findTrend, TREND_P, type TakeCount, type Trend } from './trend.ts';

export interface PractisedTake {
  readonly id: string;
  /** A whole number, one a calendar day. */
  readonly day: number;
  /** Name of the form or title of the chart, without its key. */
  readonly form: string;
  readonly key: string;
  readonly counts: TakeCounts;
}

/** A share with its Wilson interval; null without events. */
export interface CountedShare extends TakeCount {
  readonly share: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

export interface ProgressDay extends CountedShare {
  readonly day: number;
}

export interface ProgressRow extends CountedShare {
  readonly id: string;
  readonly takes: number;
  /** The oldest first. */
  readonly days: readonly ProgressDay[];
  readonly direction: Trend['direction'];
  /** The share to reach. */
  readonly goal: number;
}

/** A change that is due. */
export interface DueChange extends CountedShare {
  readonly from: string | null;
  readonly to: string;
  readonly bar: number;
  readonly form: string;
  readonly key: string;
  /** The newest take in which it was played. */
  readonly takeId: string;
  /** Days since it was played last. */
  readonly daysAgo: number;
}

export interface Progress {
  readonly takes: number;
  readonly days: number;
  readonly byAim: readonly ProgressRow[];
  readonly byForm: readonly ProgressRow[];
  readonly byChord: readonly ProgressRow[];
  readonly byKey: readonly ProgressRow[];
  /** Three at most, the weakest first. */
  readonly today: readonly DueChange[];
}

/** Share of landings on guide tones that the page of a take asks for as well (grade/chance/page.ts). */
const GUIDE_TONE_GOAL = 0.6;
/** A change that was met less often says nothing yet. */
const LEAST_MEETINGS = 3;
/** Rows of one table at most: the ones with the newest takes. */
const MOST_ROWS = 12;

/**
 * @param takes in any order
 * @param today on the same count of days
 */
export function measureProgress(takes: readonly PractisedTake[], today: number): Progress {
  const inOrder = [...takes].sort((a, b) => a.day - b.day);
  const tables = {
    byAim: gather(inOrder, ({ counts: { aim } }) => (aim === null ? [] : [{ ...aim, id: aim.id }])),
    byForm: gather(inOrder, ({ form, counts }) => [{ id: form, ...sum(counts.changes) }]),
    byChord: gather(inOrder, ({ counts }) => counts.changes.map((change) => ({ ...change, id: change.to }))),
    byKey: gather(inOrder, ({ key, counts }) => [{ id: key, ...sum(counts.changes) }]),
  };
  const { byAim, byForm, byChord, byKey } = tables;
  const [aims, forms, chords, keys] = withTrends([byAim, byForm, byChord, byKey]);
  return {
    takes: takes.length,
    days: new Set(takes.map(({ day }) => day)).size,
    byAim: aims!,
    byForm: forms!,
    byChord: chords!,
    byKey: keys!,
    today: dueChanges(inOrder, today),
  };
}

/** What one take adds to one row. */
interface Addition extends TakeCount {
  readonly id: string;
  readonly goal?: number;
}

interface Gathered {
  readonly id: string;
  readonly goal: number;
  /** One a take, the oldest first. */
  readonly takes: readonly (TakeCount & { readonly day: number })[];
}

function gather(
  takes: readonly PractisedTake[],
  read: (take: PractisedTake) => readonly Addition[],
): readonly Gathered[] {
  const rows = new Map<string, { id: string; goal: number; takes: (TakeCount & { day: number })[] }>();
  for (const take of takes) {
    const ofTake = new Map<string, Addition>();
    for (const one of read(take)) {
      const before = ofTake.get(one.id);
      ofTake.set(one.id, before === undefined ? one : { ...one, ...sum([before, one]) });
    }
    for (const { id, hits, of, goal = GUIDE_TONE_GOAL } of ofTake.values()) {
      if (of === 0) continue;
      const row = rows.get(id) ?? { id, goal, takes: [] };
      row.takes.push({ day: take.day, hits, of });
      rows.set(id, row);
    }
  }
  return [...rows.values()]
    .sort((a, b) => b.takes.at(-1)!.day - a.takes.at(-1)!.day || b.takes.length - a.takes.length)
    .slice(0, MOST_ROWS);
}

/** The rows of all tables with their trends, each told only where it holds among all of them. */
function withTrends(tables: readonly (readonly Gathered[])[]): readonly (readonly ProgressRow[])[] {
  const trends = tables.map((rows) => rows.map((row) => findTrend(row.takes)));
  const asked = trends.flat().filter(({ p }) => p !== null);
  const corrected = holm(asked.map(({ p }) => p!));
  const direction = (trend: Trend): Trend['direction'] =>
    trend.p !== null && corrected[asked.indexOf(trend)]! >= TREND_P ? 'steady' : trend.direction;
  return tables.map((rows, table) =>
    rows.map(({ id, goal, takes }, row) => ({
      id,
      goal,
      takes: takes.length,
      days: byDay(takes),
      direction: direction(trends[table]![row]!),
      ...shareOf(sum(takes)),
    })),
  );
}

function byDay(takes: Gathered['takes']): readonly ProgressDay[] {
  const days = new Map<number, TakeCount>();
  for (const { day, hits, of } of takes) days.set(day, sum([days.get(day) ?? NOTHING, { hits, of }]));
  return [...days].map(([day, count]) => ({ day, ...shareOf(count) }));
}

/** The weakest changes that are due, each in its form and key. */
function dueChanges(takes: readonly PractisedTake[], today: number): readonly DueChange[] {
  const met = new Map<string, { take: PractisedTake; change: ChangeCount; history: PracticeHistory[] }>();
  for (const take of takes)
    for (const change of take.counts.changes) {
      if (change.of === 0) continue;
      const id = JSON.stringify([take.form, take.key, change.from, change.to]);
      const history = met.get(id)?.history ?? [];
      const last = history.at(-1);
      if (last?.day === take.day) history[history.length - 1] = { day: take.day, ...sum([last, change]) };
      else history.push({ day: take.day, hits: change.hits, of: change.of });
      met.set(id, { take, change, history });
    }
  const items = [...met].flatMap(([id, { history }]): PracticeItem[] =>
    sum(history).of < LEAST_MEETINGS ? [] : [{ id, history, goal: GUIDE_TONE_GOAL }],
  );
  return findDue(items, today)
    .filter(({ share }) => share === null || share < GUIDE_TONE_GOAL)
    .map(({ id }) => {
      const { take, change, history } = met.get(id)!;
      const { from, to, bar } = change;
      return {
        ...{ from, to, bar, form: take.form, key: take.key, takeId: take.id },
        daysAgo: today - take.day,
        ...shareOf(sum(history)),
      };
    });
}

type PracticeHistory = PracticeItem['history'][number];

const NOTHING: TakeCount = { hits: 0, of: 0 };

const sum = (counts: readonly TakeCount[]): TakeCount => ({
  hits: counts.reduce((all, { hits }) => all + hits, 0),
  of: counts.reduce((all, { of }) => all + of, 0),
});

function shareOf({ hits, of }: TakeCount): CountedShare {
  const interval = wilsonInterval(hits, of);
  return {
    hits,
    of,
    share: of === 0 ? null : hits / of,
    low: interval?.low ?? null,
    high: interval?.high ?? null,
  };
}
