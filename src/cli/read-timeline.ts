/** The chords under the line: a chart at a tempo, or a list of beats. */
import { readFileSync } from 'node:fs';
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
import { badSentence, good, type Outcome } from '../core/base/outcome.ts';
import type { GradeOrder } from './args.ts';
import { wrongUsage, type Answer } from './answer.ts';
import { diskSentence } from './file-source.ts';
import type { RiseOrder } from './given.ts';

/** Bytes of a file; null where there is no file of that name. */
function bytesOfFile(path: string): Outcome<Uint8Array | null> {
  try {
    return good(readFileSync(path));
  } catch (error) {
    const sentence = diskSentence(path, error);
    if (sentence === null) throw error;
    // A chart is no name that a file could have: too long, or with a slash in "C/E".
    const absent = ['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'EINVAL'];
    return absent.includes((error as NodeJS.ErrnoException).code ?? '') ? good(null) : badSentence(sentence);
  }
}

/** Text of a file; null where there is no file of that name. */
export function textOfFile(path: string): Outcome<string | null> {
  const bytes = bytesOfFile(path);
  if (!bytes.ok || bytes.value === null) return bytes.ok ? good(null) : bytes;
  const text = decodeText(bytes.value);
  return text === null
    ? badSentence(`${path} is not text; save it as UTF-8 text and try again.`)
    : good(text);
}

/** True for what was surely meant as a chart and not as the name of a file. */
const looksLikeChart = (given: string) => /\||^\s*form\s*:|\n/i.test(given);

const lowerFirst = (sentence: string) => sentence.charAt(0).toLowerCase() + sentence.slice(1);

type Chosen<Kind> = Extract<GradeOrder['under'], { readonly kind: Kind }>;

/** A chart as the player gave it: its text, a form, or the name of a file (text, MusicXML, MIDI with chord markers). */
export function readChartGiven(given: string, meter: Meter | null): Outcome<ReadChartFile> {
  const defaults = meter ? { meter: meter.written } : {};
  const file = looksLikeChart(given) ? good(null) : bytesOfFile(given);
  if (!file.ok) return file;
  if (file.value !== null) return readChartFile(file.value, given, defaults);
  const chart = readChartArgument(given, defaults);
  if (chart.ok) return good({ chart: chart.value, warnings: [] });
  if (looksLikeChart(given)) return chart;
  return badSentence(
    `"${given}" is neither a file nor a chart; write bars like "| G7 | C7 |", ` +
      'or name a form like "form:minor blues in A" (landfall forms lists them).',
  );
}

/** A rise that names no bars comes after each chorus. */
export const riseOver = (chart: Chart, { byBpm, everyBars }: RiseOrder): TempoRise => ({
  byBpm,
  everyBars: everyBars ?? playedBars(chart).length,
});

/** The chords on time, and what was left out of the file they came from. */
export interface ReadTimeline {
  readonly timeline: Timeline;
  readonly warnings: readonly string[];
}

function fromChart(order: GradeOrder, under: Chosen<'chart'>): Answer<ReadTimeline> {
  const read = readChartGiven(under.chart, order.meter);
  if (!read.ok) return read;
  const { chart, warnings } = read.value;
  const bpm = under.bpm ?? chart.bpm;
  if (bpm === null) return wrongUsage('The chart has no tempo of its own; give --tempo.');
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
  if (text.value === null) return badSentence(`${under.file} can't be read: there is no such file.`);
  const rows = readBeatsCsv(text.value, under.file);
  if (!rows.ok) return rows;
  const timeline = timelineFromBeats(rows.value, {
    ...(order.meter ? { beatsPerBar: order.meter.beatsPerBar } : {}),
    ...(order.key ? { key: order.key } : {}),
    ...(order.swing === null ? {} : { swing: order.swing }),
  });
  return timeline.ok
    ? good({ timeline: timeline.value, warnings: [] })
    : badSentence(`${under.file}: ${lowerFirst(timeline.sentence)}`);
}

/** Lays the chords on time as the order says. */
export const readTimeline = (order: GradeOrder): Answer<ReadTimeline> =>
  order.under.kind === 'chart' ? fromChart(order, order.under) : fromBeats(order, order.under);
