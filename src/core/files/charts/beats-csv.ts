/** A beat map as a table: header `time,chord`, a row a beat; an empty chord means that the last one goes on. */
import type { BeatRow } from '../../chart/build-timeline.ts';
import { badSentence, good, type Outcome } from '../../base/outcome.ts';
import { numberIn, readTable } from '../bytes/table.ts';

export const BEAT_COLUMNS = ['time', 'chord'] as const;

/**
 * Reads a list of beats. Times must rise; whether the chords can be read is the chart's affair.
 * @param name the file, for the sentences.
 */
export function readBeatsCsv(text: string, name: string): Outcome<readonly BeatRow[]> {
  const table = readTable(text, BEAT_COLUMNS, name);
  if (!table.ok) return table;
  const rows: BeatRow[] = [];
  for (const { line, cells } of table.value) {
    const timeSeconds = numberIn(cells[0]!);
    if (!Number.isFinite(timeSeconds))
      return badSentence(
        `${name}, line ${line}: the time "${cells[0]}" is not a number of seconds; mend that line.`,
      );
    const before = rows.at(-1)?.timeSeconds ?? -Infinity;
    if (timeSeconds <= before)
      return badSentence(
        `${name}, line ${line}: the beat at ${timeSeconds} s does not come after the one before it, ` +
          `at ${before} s; put the beats in order, one row each.`,
      );
    rows.push({ timeSeconds, chord: cells[1]! });
  }
  if (rows.length < 2)
    return badSentence(
      `${name} has ${rows.length === 0 ? 'no beats' : 'one beat only'}; it needs two beats or more.`,
    );
  return good(rows);
}
