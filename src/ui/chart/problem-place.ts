/** The line of a chart that can't be read, cut into the text before the wrong symbol, the symbol, and the text after it. */
import { readChart } from '../../core/chart/parse-chart.ts';

export interface ProblemPlace {
  readonly before: string;
  readonly symbol: string;
  readonly after: string;
}

/** How much of the line is echoed to either side. */
const CONTEXT = 28;

/**
 * null for a chart that can be read, and where no single symbol is meant.
 * @example problemPlace('| A7 | H7 |') // before '| A7 | ', symbol 'H7', after ' |'
 */
export function problemPlace(text: string): ProblemPlace | null {
  const read = readChart(text);
  if ('chart' in read) return null;
  const { line, column, length } = read.problem;
  const row = text.split(/\r\n|\r|\n/)[line - 1] ?? '';
  const symbol = row.slice(column - 1, column - 1 + length);
  if (symbol.trim() === '') return null;
  const before = row.slice(0, column - 1);
  const after = row.slice(column - 1 + length);
  return {
    before: before.length > CONTEXT ? `…${before.slice(-CONTEXT)}` : before,
    symbol,
    after: after.length > CONTEXT ? `${after.slice(0, CONTEXT)}…` : after,
  };
}
