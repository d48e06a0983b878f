/** The rows of a class: a row a student and sheet, those that need a teacher first; and the form with what fails where. */
import type { ReturnedTake, TakeDoubt } from './returned-take.ts';

/** A student's takes for one sheet. */
export interface ClassRow {
  readonly student: string;
  /** The take whose figures stand for the student: the latest one. */
  readonly take: ReturnedTake;
  /** How many takes there are, and how many tries the latest one counts, where it counts them. */
  readonly takes: number;
  /** Why the row stands where it stands. */
  readonly attention: Attention;
}

/** In the order in which a teacher looks at them. */
export const ATTENTIONS = ['doubtful', 'not reached', 'too short', 'reached'] as const;
export type Attention = (typeof ATTENTIONS)[number];

/** Doubts that a teacher is told of, and that leave the figures what they are. */
const MILD: readonly TakeDoubt[] = ['few notes', 'corrected', 'band'];

/** What the leading aim of a take asks of the teacher. A take whose figures are in doubt comes before all others. */
export function attentionOf({ doubts, aims }: Pick<ReturnedTake, 'doubts' | 'aims'>): Attention {
  if (doubts.some((doubt) => !MILD.includes(doubt))) return 'doubtful';
  const verdict = aims[0]?.verdict;
  if (verdict === 'reached') return 'reached';
  return verdict === 'not yet' && aims[0]?.missing !== 'events' ? 'not reached' : 'too short';
}

/** How far the leading aim is reached: the share over the share to reach; 0 where nothing was counted. */
function reachOf({ aims }: ReturnedTake): number {
  const share = aims[0]?.result.share ?? 0;
  const goal = aims[0]?.shareToReach ?? 0;
  return goal === 0 ? 0 : share / goal;
}

/**
 * One row a student and sheet, sorted by what needs attention, then by how far the leading aim is from being reached, then
 * by name and title. A student's figures are those of the latest take: the highest try, else the latest date, else the last by file name.
 */
export function classRows(takes: readonly ReturnedTake[]): readonly ClassRow[] {
  const ofEach = new Map<string, ReturnedTake[]>();
  for (const take of takes) {
    const id = `${take.mark} ${take.student}`;
    const before = ofEach.get(id);
    if (before) before.push(take);
    else ofEach.set(id, [take]);
  }
  const rows = [...ofEach.values()].map((own): ClassRow => {
    const take = own.reduce((latest, one) => (isLater(one, latest) ? one : latest));
    return { student: take.student, take, takes: own.length, attention: attentionOf(take) };
  });
  return rows.sort(
    (a, b) =>
      ATTENTIONS.indexOf(a.attention) - ATTENTIONS.indexOf(b.attention) ||
      reachOf(a.take) - reachOf(b.take) ||
      compareText(a.student, b.student) ||
      compareText(a.take.title, b.take.title),
  );
}

/** Takes for another sheet never speak for this one while there are others. */
function isLater(one: ReturnedTake, other: ReturnedTake): boolean {
  const [foreign, otherForeign] = [one.sheet === 'another', other.sheet === 'another'];
  if (foreign !== otherForeign) return otherForeign;
  if (one.tryNumber !== null && other.tryNumber !== null && one.tryNumber !== other.tryNumber)
    return one.tryNumber > other.tryNumber;
  if (one.startedAt !== null && other.startedAt !== null && one.startedAt !== other.startedAt)
    return one.startedAt > other.startedAt;
  return compareText(one.file, other.file) > 0;
}

/** By code units: the same order on every machine. */
const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** A change of the form and who missed it. */
export interface ClassChange {
  readonly from: string | null;
  readonly to: string;
  /** Bar of the form, from 0. */
  readonly bar: number;
  readonly hits: number;
  readonly of: number;
  /** The students who landed on a guide tone in fewer than half of its passes, of those who played it twice or more. */
  readonly missedBy: readonly string[];
}

/** Rows of one sheet, the sheet with most of them first. */
export interface SheetRows {
  readonly mark: string;
  readonly title: string;
  readonly rows: readonly ClassRow[];
}

/** The rows apart by sheet, each in its order: what fails where can only be told of one form. */
export function rowsBySheet(rows: readonly ClassRow[]): readonly SheetRows[] {
  const marks = [...new Set(rows.map(({ take }) => take.mark))];
  return marks
    .map((mark): SheetRows => {
      const own = rows.filter(({ take }) => take.mark === mark);
      return { mark, title: own[0]!.take.title, rows: own };
    })
    .sort((a, b) => b.rows.length - a.rows.length || compareText(a.title, b.title));
}

/** The changes of the form in order, over the takes for one sheet that speak for the class. */
export function classChanges(rows: readonly ClassRow[]): readonly ClassChange[] {
  const changes = new Map<string, { -readonly [Key in keyof ClassChange]: ClassChange[Key] }>();
  for (const { student, take } of rows) {
    for (const { from, to, bar, hits, of } of take.changes) {
      const id = `${from} ${to}`;
      const known = changes.get(id) ?? { from, to, bar, hits: 0, of: 0, missedBy: [] };
      changes.set(id, {
        ...known,
        bar: Math.min(known.bar, bar),
        hits: known.hits + hits,
        of: known.of + of,
        missedBy: of >= 2 && hits * 2 < of ? [...known.missedBy, student] : known.missedBy,
      });
    }
  }
  return [...changes.values()].sort((a, b) => a.bar - b.bar || compareText(a.to, b.to));
}
