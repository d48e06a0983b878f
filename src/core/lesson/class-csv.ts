/** The table of a class as CSV (RFC 4180), a line a student, for spreadsheets and for other programs. */
import { csvField } from '../base/csv.ts';
import { weakestChange, type ReturnedTake } from './returned-take.ts';
import type { ClassRow } from './class-table.ts';

/** Names of the columns; they never change, and are English so that programs can rely on them. */
const COLUMNS = [
  'student',
  'file',
  'sheet',
  'takes',
  'try',
  'started',
  'seconds',
  'notes',
  'attention',
  'aim',
  'verdict',
  'hits',
  'of',
  'share',
  'low',
  'high',
  'chance',
  'thirds_hits',
  'thirds_of',
  'thirds_chance',
  'weakest_change',
  'weakest_hits',
  'weakest_of',
  'doubts',
  'sheet_title',
  'sheet_mark',
] as const;

type Cell = string | number | null | undefined;

/**
 * A cell that a spreadsheet shows and never runs: text that would begin a formula is led in by an apostrophe (OWASP, CSV
 * Injection; some spreadsheets read signs of double width too), and quotes are doubled as RFC 4180 asks.
 */
export function csvCell(cell: Cell): string {
  if (cell === null || cell === undefined) return '';
  if (typeof cell === 'number') return String(Number(cell.toFixed(6)));
  return csvField(/^[=+\-@\t\r＝＋－＠]/.test(cell) ? `'${cell}` : cell);
}

/** A change of chord as text: "A7 to D7". */
const changeName = (from: string | null, to: string) => (from === null ? to : `${from} to ${to}`);

function cellsOf({
  student,
  take,
  takes,
  attention,
}: ClassRow): Readonly<Record<(typeof COLUMNS)[number], Cell>> {
  const aim: ReturnedTake['aims'][number] | undefined = take.aims[0];
  const weakest = weakestChange(take.changes);
  return {
    student,
    file: take.file,
    sheet: take.sheet,
    takes,
    try: take.tryNumber,
    started: take.startedAt,
    seconds: take.seconds,
    notes: take.notes,
    attention,
    aim: aim?.own?.name ?? aim?.id,
    verdict: aim?.verdict,
    hits: aim?.result.hits,
    of: aim?.result.of,
    share: aim?.result.share,
    low: aim?.result.low,
    high: aim?.result.high,
    chance: aim?.result.chance,
    thirds_hits: take.thirds.hits,
    thirds_of: take.thirds.of,
    thirds_chance: take.thirds.chance,
    weakest_change: weakest && changeName(weakest.from, weakest.to),
    weakest_hits: weakest?.hits,
    weakest_of: weakest?.of,
    doubts: take.doubts.join('; '),
    sheet_title: take.title,
    sheet_mark: take.mark,
  };
}

/** Lines end with CR LF, as RFC 4180 has it. */
export function classCsv(rows: readonly ClassRow[]): string {
  const lines = rows.map((row) => {
    const cells = cellsOf(row);
    return COLUMNS.map((name) => csvCell(cells[name])).join(',');
  });
  return [COLUMNS.join(','), ...lines, ''].join('\r\n');
}
