/** A beat map as a table: header `time,chord`, a row a beat; an empty chord means that the last one goes on. */
import type { BeatRow } from '../../chart/build-timeline.ts';
import { bad, good, type Outcome } from '../../base/outcome.ts';
import { MOST_BEATS, MOST_TAKE_SECONDS } from '../../base/limits.ts';
import { shownSymbol } from '../../music/parse-chord.ts';
import { unitOf } from '../notes/time-unit.ts';
import { numberIn, readTable } from '../bytes/table.ts';

export const BEAT_COLUMNS = ['time', 'chord'] as const;

/**
 * Reads a list of beats. Times must rise; whether the chords can be read is the chart's affair.
 * @param name the file, for the problems.
 */
export function readBeatsCsv(text: string, name: string): Outcome<readonly BeatRow[]> {
  const table = readTable(text, BEAT_COLUMNS, name, MOST_BEATS);
  if (!table.ok) return table;
  if (table.value.length > MOST_BEATS) return bad('file.tooManyBeats', { name, most: MOST_BEATS });
  const rows: BeatRow[] = [];
  for (const { line, cells } of table.value) {
    const timeSeconds = numberIn(cells[0]!);
    if (!Number.isFinite(timeSeconds)) return bad('beats.cell', { name, line, cell: shownSymbol(cells[0]!) });
    const before = rows.at(-1)?.timeSeconds ?? -Infinity;
    if (timeSeconds <= before) return bad('beats.fileOrder', { name, line, seconds: timeSeconds, before });
    rows.push({ timeSeconds, chord: cells[1]! });
  }
  if (rows.length < 2) return bad('beats.fileTooFew', { name, beats: rows.length });
  const unit = unitOf(rows.map(({ timeSeconds }) => timeSeconds));
  if (unit !== 'seconds') return bad('beats.unit', { name, unit });
  const last = rows.at(-1)!.timeSeconds;
  if (last > MOST_TAKE_SECONDS) return bad('file.takeTooLong', { name, hours: MOST_TAKE_SECONDS / 3600 });
  return good(rows);
}
