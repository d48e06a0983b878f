/**
 * What is due to be practised today. What goes well comes back after longer and longer gaps, what does not comes back the
 * next day: practice that is spread over days is kept better than the same practice in one sitting (Cepeda and others,
 * Psychological Bulletin 132, 2006).
 */
import { wilsonInterval } from '../base/statistics.ts';
import type { TakeCount } from './trend.ts';

/** One thing that can be practised: a change of chord, an aim, a key. */
export interface PracticeItem {
  readonly id: string;
  /** Its counts by day, the oldest first. Days are whole numbers, one a calendar day. */
  readonly history: readonly (TakeCount & { readonly day: number })[];
  /** The share to reach. */
  readonly goal: number;
}

export interface DueItem {
  readonly id: string;
  /** Days that it is over its time; 0 on the very day. */
  readonly overdueDays: number;
  /** Share of the last days and its Wilson interval; null without events. */
  readonly share: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

/** After a day that reached the goal, it is due again in so many days; each further such day doubles that. */
const FIRST_GAP_DAYS = 2;
const LONGEST_GAP_DAYS = 32;
/** A day that missed the goal: due again the next day. */
const MISSED_GAP_DAYS = 1;
/** What was played longer ago than this no longer counts for how weak an item is. */
const MEMORY_DAYS = 28;

/**
 * The items that are due, the weakest first: those whose share of the last four weeks may be lowest, by the lower end
 * of its interval beside the goal; of equals the one that is surer to be weak, then the one that waits longest.
 * @param today a whole number on the same count of days as the histories
 * @param most how many are returned at most
 */
export function findDue(items: readonly PracticeItem[], today: number, most = 3): readonly DueItem[] {
  return items
    .map((item) => ({ item, due: dueOf(item, today) }))
    .filter(({ due }) => due.overdueDays >= 0)
    .sort(
      (a, b) => shortfall(b) - shortfall(a) || highOf(a) - highOf(b) || b.due.overdueDays - a.due.overdueDays,
    )
    .slice(0, most)
    .map(({ due }) => due);
}

function dueOf({ id, history, goal }: PracticeItem, today: number): DueItem {
  const recent = history.filter(({ day }) => day > today - MEMORY_DAYS);
  const hits = recent.reduce((sum, count) => sum + count.hits, 0);
  const of = recent.reduce((sum, count) => sum + count.of, 0);
  const interval = wilsonInterval(hits, of);
  return {
    id,
    overdueDays: today - (lastDay(history) + gapDays(history, goal)),
    share: of === 0 ? null : hits / of,
    low: interval?.low ?? null,
    high: interval?.high ?? null,
  };
}

/** Days until the next time, by how many of the last days in a row reached the goal. */
function gapDays(history: PracticeItem['history'], goal: number): number {
  let gap = MISSED_GAP_DAYS;
  for (const { hits, of } of history) {
    if (of === 0) continue;
    gap = hits / of < goal ? MISSED_GAP_DAYS : Math.min(LONGEST_GAP_DAYS, Math.max(FIRST_GAP_DAYS, 2 * gap));
  }
  return gap;
}

const lastDay = (history: PracticeItem['history']): number => history.at(-1)?.day ?? -Infinity;

const highOf = ({ due }: { readonly due: DueItem }): number => due.high ?? 1;

/** How far the lower end of the interval lies below the goal. */
const shortfall = ({ item, due }: { readonly item: PracticeItem; readonly due: DueItem }): number =>
  item.goal - (due.low ?? 0);
