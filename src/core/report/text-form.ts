/** The form as bars, with every landing in its place. */
import { largest } from '../base/extremes.ts';
import { timelineFromTempo } from '../chart/build-timeline.ts';
import { SLOWEST_BPM } from '../chart/chart.ts';
import { parseChart } from '../chart/parse-chart.ts';
import { isChordTone } from '../grade/assign/roles.ts';
import { spelledChord } from '../words/spelling.ts';
import type { Words } from '../words/words.ts';
import { PAGE_COLUMNS } from './text-lines.ts';
import type { Change, Landing, Report } from '../take/schema.ts';

const BARS_A_ROW = 4;
/** One column a cell is its left border; one more closes the row. */
const CELL_COLUMNS = Math.floor((PAGE_COLUMNS - 1) / BARS_A_ROW) - 1;
/** A longer form would not leave a screen to the rest of the page. */
export const LONGEST_DRAWN_BARS = 32;
/** And so would more chords than this in a list. */
const MOST_CHORDS = 8;

/** Bars with their landings, or, where the form is too long to draw, the chords with theirs. */
export function drawForm(report: Report, words: Words): readonly string[] {
  const { bars } = report.timeline;
  return bars <= LONGEST_DRAWN_BARS ? drawBars(report, words) : listChords(report.changes.byChord, words);
}

function drawBars(report: Report, words: Words): readonly string[] {
  const { bars } = report.timeline;
  const written = writtenChords(report);
  const cells = Array.from({ length: bars }, (_, bar) =>
    cellOf(
      bar,
      written.filter((chord) => chord.bar === bar),
      report.landings.filter((landing) => landing.bar === bar),
      words,
    ),
  );
  const rows: string[] = [];
  for (let bar = 0; bar < cells.length; bar += BARS_A_ROW) {
    const row = cells.slice(bar, bar + BARS_A_ROW);
    const fits = row.every((cell) => joined(cell).length <= CELL_COLUMNS);
    if (fits) {
      rows.push(drawRow(row.map(joined)));
      continue;
    }
    const marks = row.map(marksOf);
    const lines = Math.max(...marks.map((cell) => cell.length));
    rows.push(drawRow(row.map(headOf)));
    for (let line = 0; line < lines; line++) rows.push(drawRow(marks.map((cell) => cell[line] ?? '')));
  }
  return rows;
}

const drawRow = (cells: readonly string[]): string =>
  cells.map((cell) => `│${cell.slice(0, CELL_COLUMNS).padEnd(CELL_COLUMNS)}`).join('') + '│';

/** A chord where the chart writes it. */
interface WrittenChord {
  readonly bar: number;
  readonly beatOfBar: number;
  readonly name: string;
}

/** One round of the chart, as it is written; of a chart that can't be read again, what stood under the take. */
export function writtenChords({ timeline }: Pick<Report, 'timeline'>): readonly WrittenChord[] {
  const { beatsPerBar, bars } = timeline;
  const chart = parseChart(timeline.chart);
  // The tempo is no matter here: the bars are counted in beats.
  const spans = chart.ok
    ? timelineFromTempo(chart.value, { bpm: SLOWEST_BPM })
        .spansBetween(0, bars * beatsPerBar)
        .map(({ startBeat, bar, chord }) => ({ startBeat, bar, name: chord?.symbol ?? 'N.C.' }))
    : timeline.spans
        .filter(({ chorus }) => chorus === 0)
        .map(({ startBeat, bar, chord }) => ({ startBeat, bar, name: chord ?? 'N.C.' }));
  return spans.map(({ startBeat, bar, name }) => ({ bar, beatOfBar: startBeat - bar * beatsPerBar, name }));
}

/** A bar: its number, the chords written in it, and where the choruses landed on those that arrive. */
interface Cell {
  readonly number: string;
  readonly groups: readonly { readonly chord: string; readonly landings: readonly Landing[] }[];
}

function cellOf(
  bar: number,
  written: readonly WrittenChord[],
  landings: readonly Landing[],
  words: Words,
): Cell {
  const places = [...new Set([...written, ...landings].map(({ beatOfBar }) => beatOfBar))];
  return {
    number: String(bar + 1).padStart(2),
    groups: places
      .sort((one, other) => one - other)
      .map((place) => {
        const here = landings.filter(({ beatOfBar }) => beatOfBar === place);
        const name = written.find(({ beatOfBar }) => beatOfBar === place)?.name;
        return { chord: spelledChord(here[0]?.chord ?? name ?? '', words), landings: here };
      }),
  };
}

const headOf = ({ number, groups }: Cell): string => [number, ...groups.map(({ chord }) => chord)].join(' ');

/** " 5 F7 3 3 b7 ·", where it fits into one line; " 6 F7" where nothing arrives. */
const joined = ({ number, groups }: Cell): string =>
  [number, ...groups.map(({ chord, landings }) => [chord, ...landings.map(mark)].join(' '))].join(' ');

/**
 * The marks alone, a slash between two chords; where they do not fit beside each other, a line to each chord, and the
 * commonest mark where there are too many choruses.
 */
function marksOf({ groups }: Cell): readonly string[] {
  const landed = groups.flatMap(({ landings }) => (landings.length === 0 ? [] : [landings]));
  const indent = '   ';
  const all = indent + landed.map((landings) => landings.map(mark).join(' ')).join(' / ');
  if (all.length <= CELL_COLUMNS) return [all];
  return landed.map((landings) => {
    const marks = indent + landings.map(mark).join(' ');
    return marks.length <= CELL_COLUMNS ? marks : indent + tally(landings);
  });
}

function mark({ kind, degree, role, leansInto }: Landing): string {
  if (kind === 'open' || degree === null) return '·';
  if (leansInto !== null) return `${degree}>3`;
  const held = kind === 'held' ? `~${degree}` : degree;
  return isChordTone(role) ? held : `(${held})`;
}

/** "3 5/6": the most frequent degree and how often. */
function tally(group: readonly Landing[]): string {
  const counts = new Map<string, number>();
  for (const landing of group) counts.set(mark(landing), (counts.get(mark(landing)) ?? 0) + 1);
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  return `${most![0]} ${most![1]}/${group.length}`;
}

function listChords(chords: readonly Change[], words: Words): readonly string[] {
  const told = words.page.form;
  const names = new Map(chords.map(({ chord }) => [chord, spelledChord(chord, words)]));
  const width =
    largest(
      [...names.values()].map((name) => name.length),
      0,
    ) + 2;
  const shown = [...chords].sort((a, b) => b.count - a.count).slice(0, MOST_CHORDS);
  const lines = shown.map(
    ({ chord, count, open, thirds, chordTones }) =>
      `${names.get(chord)!.padEnd(width)}${told.chord({ thirds, landed: count - open, chordTones, open })}`,
  );
  const more = chords.length - shown.length;
  return more > 0 ? [...lines, told.more({ chords: more })] : lines;
}
