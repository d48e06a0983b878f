/** The chords under the line: a chart at a tempo, or a list of beats. */
import { timelineFromBeats, timelineFromTempo } from '../core/chart/build-timeline.ts';
import type { Chart, Meter } from '../core/chart/chart.ts';
import { readChartArgument } from '../core/chart/forms.ts';
import { playedBars } from '../core/chart/play-order.ts';
import { movedChart } from '../core/chart/transpose-chart.ts';
import type { TempoRise, Timeline } from '../core/chart/timeline.ts';
import { readBeatsCsv } from '../core/files/charts/beats-csv.ts';
import { readChartFile } from '../core/files/charts/read-chart-file.ts';
import type { ReadChartFile } from '../core/files/charts/read-musicxml.ts';
import { decodeText } from '../core/files/bytes/text.ts';
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';
import type { GradeOrder } from './orders.ts';
import { wrongUsage, type Answer } from './answer.ts';
import type { Notice } from '../core/words/problem.ts';
import { MOST_LIST_BYTES, MOST_SCORE_BYTES } from '../core/base/limits.ts';
import { bytesWithin, diskProblem } from './file-source.ts';
import type { RiseOrder } from './given.ts';

/** Bytes of a file; null where there is no file of that name. */
function bytesOfFile(path: string, most: number): Outcome<Uint8Array | null> {
  try {
    const bytes = bytesWithin(path, most);
    return bytes.ok && bytes.value === null
      ? bad('file.tooLarge', { name: path, megabytes: most / 1e6 })
      : bytes;
  } catch (error) {
    const told = diskProblem(path, error);
    if (told === null) throw error;
    // These codes come from the text of a chart, which is too long for the name of a file, or has a slash, as in "C/E".
    const absent = ['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'EINVAL'];
    return absent.includes((error as NodeJS.ErrnoException).code ?? '') ? good(null) : failure(told);
  }
}

/** Text of a file; null where there is no file of that name. */
export function textOfFile(path: string): Outcome<string | null> {
  const bytes = bytesOfFile(path, MOST_LIST_BYTES);
  if (!bytes.ok || bytes.value === null) return bytes.ok ? good(null) : bytes;
  const text = decodeText(bytes.value);
  return text === null ? bad('file.notText', { name: path }) : good(text);
}

/** True for what was surely meant as a chart where no file has that name. */
const looksLikeChart = (given: string) => /\||^\s*form\s*:|\n/i.test(given);

type Chosen<Kind> = Extract<GradeOrder['under'], { readonly kind: Kind }>;

/** A chart as the player gave it: its text, a form, or the name of a file (text, MusicXML, MIDI with chord markers). */
export function readChartGiven(given: string, meter: Meter | null): Outcome<ReadChartFile> {
  const defaults = meter ? { meter: meter.written } : {};
  const file = bytesOfFile(given, MOST_SCORE_BYTES);
  // A file may have a bar or a line break in its name; text that is no such name may still displease the system.
  if (!file.ok && !looksLikeChart(given)) return file;
  if (file.ok && file.value !== null) return readChartFile(file.value, given, defaults);
  const chart = readChartArgument(given, defaults);
  if (chart.ok) return good({ chart: chart.value, warnings: [] });
  if (looksLikeChart(given)) return chart;
  return bad('cli.neitherFileNorChart', { given });
}

/** A rise that names no bars comes after each chorus. */
export const riseOver = (chart: Chart, { byBpm, everyBars }: RiseOrder): TempoRise => ({
  byBpm,
  everyBars: everyBars ?? playedBars(chart).length,
});

/** The chords on time, and what was left out of the file they came from. */
export interface ReadTimeline {
  readonly timeline: Timeline;
  readonly warnings: readonly Notice[];
}

function fromChart(order: GradeOrder, under: Chosen<'chart'>): Answer<ReadTimeline> {
  const read = readChartGiven(under.chart, order.meter);
  if (!read.ok) return read;
  const { chart, warnings } = read.value;
  const bpm = under.bpm ?? chart.bpm;
  if (bpm === null) return wrongUsage('cli.noTempo');
  const moved = under.transpose === null ? chart : movedChart(chart, under.transpose);
  const timeline = timelineFromTempo(order.key ? { ...moved, key: order.key } : moved, {
    bpm,
    firstBeatSeconds: under.firstBeatSeconds,
    ...(order.swing === null ? {} : { swing: order.swing }),
    ...(under.rise && { rise: riseOver(chart, under.rise) }),
    ...(under.turnBars !== null && { turnBars: under.turnBars }),
    ...(under.feel && { feel: under.feel }),
  });
  return good({ timeline, warnings });
}

function fromBeats(order: GradeOrder, under: Chosen<'beats'>): Outcome<ReadTimeline> {
  const text = textOfFile(under.file);
  if (!text.ok) return text;
  if (text.value === null) return bad('disk.read', { name: under.file, reason: 'missing', system: 'ENOENT' });
  const rows = readBeatsCsv(text.value, under.file);
  if (!rows.ok) return rows;
  const timeline = timelineFromBeats(rows.value, {
    ...(order.meter ? { beatsPerBar: order.meter.beatsPerBar } : {}),
    ...(order.key ? { key: order.key } : {}),
    ...(order.swing === null ? {} : { swing: order.swing }),
  });
  return timeline.ok
    ? good({ timeline: timeline.value, warnings: [] })
    : bad('cli.inFile', { name: under.file, cause: timeline.problem });
}

/** Lays the chords on time as the order says. */
export const readTimeline = (
  order: GradeOrder,
  under: Chosen<'chart'> | Chosen<'beats'>,
): Answer<ReadTimeline> => (under.kind === 'chart' ? fromChart(order, under) : fromBeats(order, under));
