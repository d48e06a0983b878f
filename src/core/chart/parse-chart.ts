/** Chart text, as a lead sheet writes it, read into a chart. The grammar stands in the folder's README. */
import { failure, good, type Outcome } from '../base/outcome.ts';
import { METERS, meterOf, writtenBars, type Chart, type ChartSection, type Meter } from './chart.ts';
import { UnreadableChart, refuse, refuseWith, type ChartProblem } from './chart-problem.ts';
import { findKey } from './find-key.ts';
import { hasSigns } from './read-signs.ts';
import { lostJump, withCodaNamed } from './roadmap.ts';
import { MOST_BARS, MOST_CHART_CHORDS } from '../base/limits.ts';
import { playedBars } from './play-order.ts';
import { readLine, refuseEmptySection, startReading, type Reading } from './read-lines.ts';

/** What holds where the chart itself does not say. */
export interface ChartDefaults {
  /** "3/4"; 4/4 without. */
  readonly meter?: string;
  /** Quarters in a bar, for callers that have no meter in writing; `meter` goes first. */
  readonly beatsPerBar?: number;
}

/** Longest chart text that is read, in characters. */
const LONGEST_TEXT = 200_000;

/**
 * Reads a chart. The problem of a chart that can't be read names the bar, the symbol and what would be read.
 * Throws only on a default that is no meter.
 *
 * @example parseChart('| G7 | C7 | G7 | D7 |')
 */
export function parseChart(text: string, defaults: ChartDefaults = {}): Outcome<Chart> {
  const result = readChart(text, defaults);
  return 'chart' in result ? good(result.chart) : failure(result.problem.problem);
}

/** As {@link parseChart}, with the place of the problem for an editor. */
export function readChart(
  text: string,
  defaults: ChartDefaults = {},
): { readonly chart: Chart } | { readonly problem: ChartProblem } {
  const reading = startReading(meterByDefault(defaults));
  try {
    if (text.length > LONGEST_TEXT) {
      refuse({ text: '', line: 1, column: 1 }, 'chart.tooLong', { characters: LONGEST_TEXT });
    }
    text.split(/\r\n|\r|\n/).forEach((line, index) => readLine(line, index + 1, reading));
    return { chart: finish(reading) };
  } catch (error) {
    if (error instanceof UnreadableChart) return { problem: error.problem };
    throw error;
  }
}

function meterByDefault(defaults: ChartDefaults): Meter {
  const written = defaults.meter ?? `${defaults.beatsPerBar ?? 4}/4`;
  const meter = meterOf(written);
  if (!meter) {
    throw new RangeError(
      `a meter is one of ${METERS.map((known) => known.written).join(', ')}, not ${written}`,
    );
  }
  return meter;
}

function finish(reading: Reading): Chart {
  const { headings, pickup, repeatOpen } = reading;
  const start = { text: '', line: 1, column: 1 };
  refuseEmptySection(reading);
  if (reading.sections.length === 0) {
    refuse(start, pickup === null ? 'chart.noBars' : 'chart.onlyPickup');
  }
  if (repeatOpen) refuse(repeatOpen.sign, 'chart.repeatOpen', { bar: repeatOpen.bar });
  if (hasSigns(reading.signs)) refuse(start, 'chart.signsAtEnd');
  const sections = withCodaNamed(
    reading.sections.map(({ name, feel, key, bars }): ChartSection => ({
      name,
      feel,
      ...(key && { key }),
      bars,
    })),
  );
  const lost = lostJump(sections);
  if (lost !== null) refuseWith(start, lost);
  const bars = writtenBars({ sections });
  if (bars.reduce((sum, { chords }) => sum + chords.length, 0) > MOST_CHART_CHORDS)
    refuse(start, 'chart.tooManyChords', { most: MOST_CHART_CHORDS });
  const orphan = bars.findIndex(
    (bar, index) =>
      bar.endings.length > 0 &&
      !bars.slice(index).some((later) => later.repeatTimes > 0) &&
      !closed(bars[index - 1]),
  );
  if (orphan >= 0) refuse(start, 'chart.endingWithoutRepeat', { bar: orphan + 1 });
  const played = playedBars({ sections });
  if (played.length > MOST_BARS) refuse(start, 'chart.chorusTooLong', { bars: MOST_BARS });
  const chords = played.flatMap(({ bar }) => bar.chords);
  return {
    title: headings.title,
    key: headings.key ?? findKey(chords),
    keyWritten: headings.key !== null,
    meter: headings.meter,
    feel: headings.feel,
    bpm: headings.bpm,
    swing: headings.swing,
    pickup,
    sections,
  };
}

const closed = (bar: { readonly repeatTimes: number } | undefined): boolean => (bar?.repeatTimes ?? 0) > 0;
