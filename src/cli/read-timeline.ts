/** The chords under the line: a chart at a tempo, or a list of beats. */
import { readFileSync } from 'node:fs';
import { timelineFromBeats, timelineFromTempo } from '../core/chart/build-timeline.ts';
import type { Chart, Meter } from '../core/chart/chart.ts';
import { readChartArgument } from '../core/chart/forms.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { readBeatsCsv } from '../core/files/beats-csv.ts';
import { decodeText } from '../core/files/text.ts';
import { bad, good, type Outcome } from '../core/outcome.ts';
import type { GradeOrder } from './args.ts';
import { wrongUsage, type Answer } from './answer.ts';
import { diskSentence } from './file-source.ts';

/** Text of a file; null where there is no file of that name. */
export function textOfFile(path: string): Outcome<string | null> {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    const sentence = diskSentence(path, error);
    if (sentence === null) throw error;
    // A chart is no name that a file could have: too long, or with a slash in "C/E".
    const absent = ['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'EINVAL'];
    return absent.includes((error as NodeJS.ErrnoException).code ?? '') ? good(null) : bad(sentence);
  }
  const text = decodeText(bytes);
  return text === null ? bad(`${path} is not text; save it as UTF-8 text and try again.`) : good(text);
}

/** True for what was surely meant as a chart and not as the name of a file. */
const looksLikeChart = (given: string) => /\||^\s*form\s*:|\n/i.test(given);

const lowerFirst = (sentence: string) => sentence.charAt(0).toLowerCase() + sentence.slice(1);

type Chosen<Kind> = Extract<GradeOrder['under'], { readonly kind: Kind }>;

/** A chart as the player gave it: its text, a form, or the name of a file. */
export function readChartGiven(given: string, meter: Meter | null): Outcome<Chart> {
  const file = looksLikeChart(given) ? good(null) : textOfFile(given);
  if (!file.ok) return file;
  const chart = readChartArgument(file.value ?? given, meter ? { meter: meter.written } : {});
  if (chart.ok || (file.value === null && looksLikeChart(given))) return chart;
  return bad(
    file.value !== null
      ? `${given} can't be read as a chart: ${chart.sentence}`
      : `"${given}" is neither a file nor a chart; write bars like "| G7 | C7 |", ` +
          'or name a form like "form:minor blues in A" (landfall forms lists them).',
  );
}

function fromChart(order: GradeOrder, under: Chosen<'chart'>): Answer<Timeline> {
  const chart = readChartGiven(under.chart, order.meter);
  if (!chart.ok) return chart;
  const bpm = under.bpm ?? chart.value.bpm;
  if (bpm === null) return wrongUsage('The chart has no tempo of its own; give --tempo.');
  return good(
    timelineFromTempo(order.key ? { ...chart.value, key: order.key } : chart.value, {
      bpm,
      firstBeatSeconds: under.firstBeatSeconds,
      ...(order.swing === null ? {} : { swing: order.swing }),
    }),
  );
}

function fromBeats(order: GradeOrder, under: Chosen<'beats'>): Outcome<Timeline> {
  const text = textOfFile(under.file);
  if (!text.ok) return text;
  if (text.value === null) return bad(`${under.file} can't be read: there is no such file.`);
  const rows = readBeatsCsv(text.value, under.file);
  if (!rows.ok) return rows;
  const timeline = timelineFromBeats(rows.value, {
    ...(order.meter ? { beatsPerBar: order.meter.beatsPerBar } : {}),
    ...(order.key ? { key: order.key } : {}),
    ...(order.swing === null ? {} : { swing: order.swing }),
  });
  return timeline.ok ? timeline : bad(`${under.file}: ${lowerFirst(timeline.sentence)}`);
}

/** Lays the chords on time as the order says. */
export const readTimeline = (order: GradeOrder): Answer<Timeline> =>
  order.under.kind === 'chart' ? fromChart(order, order.under) : fromBeats(order, order.under);
