/** Rows of the bench's tables. */
import { addTallies, emptyTally, medianOf, scoreOfTally, type Tally } from './measure.ts';
import { percentile, scoreOf } from './note-metrics.ts';

const columns = [
  'F1',
  'prec',
  'rec',
  'on F1',
  'on ms',
  'p95',
  'cents',
  'oct %',
  'notes',
  'octave',
  'pitch',
  'onset',
  'missed',
  'split',
  'ghost',
  'invent',
  '× real',
];
const width = 7;

export const headerLine = ['instrument'.padEnd(12), ...columns.map((name) => name.padStart(width))].join('');

/** One row; of several tallies F1, precision and recall are the mean over them (each instrument weighs the same). */
export function tallyLine(name: string, tallies: readonly Tally[]): string {
  const sum = tallies.reduce(addTallies, emptyTally);
  const mean = (of: (tally: Tally) => number): number =>
    tallies.reduce((total, tally) => total + of(tally), 0) / Math.max(1, tallies.length);
  const absoluteMs = sum.onsetErrorsMs.map(Math.abs);
  const cells = [
    mean((t) => scoreOfTally(t).f1).toFixed(3),
    mean((t) => scoreOfTally(t).precision).toFixed(3),
    mean((t) => scoreOfTally(t).recall).toFixed(3),
    mean((t) => scoreOf(t.onsetsMatched, t.references, t.estimates).f1).toFixed(3),
    medianOf(absoluteMs).toFixed(1),
    percentile(absoluteMs, 0.95).toFixed(1),
    medianOf(sum.centsErrors.map(Math.abs)).toFixed(1),
    ((100 * sum.octaveErrors) / Math.max(1, sum.onsetsMatched)).toFixed(2),
    String(sum.references),
    ...(['octave', 'pitch', 'onset', 'missed', 'split', 'ghost', 'invented'] as const).map((kind) =>
      String(sum.counts[kind]),
    ),
    (sum.audioSeconds / sum.workSeconds).toFixed(0),
  ];
  return [name.padEnd(12), ...cells.map((cell) => cell.padStart(width))].join('');
}
