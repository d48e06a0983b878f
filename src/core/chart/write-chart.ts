/** A chart as text: what parse-chart reads back to the same chart. */
import { writeKey } from '../music/keys.ts';
import type { ChordSpan } from './timeline.ts';
import type { Chart, ChartBar, ChartChord, ChartSection } from './chart.ts';
import { shareBeats } from './read-bar.ts';
import { signWords } from './read-signs.ts';

const BARS_IN_A_LINE = 4;
const BEAT_TOLERANCE = 1e-9;

/** The headings first; then each section: its name in a line of its own, and its bars, four in a line. */
export function writeChart(chart: Chart): string {
  const lines: string[] = [];
  if (chart.title !== null) lines.push(`title: ${writableTitle(chart.title)}`);
  if (chart.keyWritten) lines.push(`key: ${writeKey(chart.key)}`);
  if (chart.meter.written !== '4/4') lines.push(`meter: ${chart.meter.written}`);
  if (chart.feel !== null) lines.push(`feel: ${chart.feel}`);
  if (chart.bpm !== null) lines.push(`tempo: ${chart.bpm}`);
  if (chart.swing !== null) lines.push(`swing: ${chart.swing}`);
  if (chart.pickup) {
    const beats = chart.pickup.chords.reduce((sum, chord) => sum + chord.beats, 0);
    lines.push(`pickup: ${beats}`, `| ${writeBar(chart.pickup.chords)} |`);
  }
  for (const section of chart.sections) lines.push(...writeSection(section));
  return lines.join('\n');
}

/**
 * A title from a file may hold what chart text reads as bar lines or as a comment: those signs are written at double width,
 * which a title keeps.
 */
const writableTitle = (title: string): string =>
  title
    .replaceAll('‖', '||')
    .replaceAll('|', '｜')
    .replaceAll(/(^|\s)#/g, '$1＃');

function writeSection(section: ChartSection): readonly string[] {
  const lines: string[] = [];
  if (section.name !== null) lines.push(`[${section.name}]`);
  if (section.feel !== null) lines.push(`feel: ${section.feel}`);
  if (section.key) lines.push(`key: ${writeKey(section.key)}`);
  for (let from = 0; from < section.bars.length; from += BARS_IN_A_LINE) {
    lines.push(writeLine(section.bars.slice(from, from + BARS_IN_A_LINE)));
  }
  return lines;
}

function writeLine(bars: readonly ChartBar[]): string {
  let line = '';
  bars.forEach((bar, index) => {
    const before = bars[index - 1];
    const closing = before && before.repeatTimes > 0;
    if (closing) line += closeSign(before) + (bar.repeatStart ? ' |:' : '');
    else line += bar.repeatStart ? '|:' : '|';
    if (bar.endings.length > 0) line += `${closing ? ' ' : ''}[${bar.endings.join(',')}`;
    const signs = signWords(bar.signs ?? {});
    line += ` ${[...signs.before, writeBar(bar.chords), ...signs.behind].join(' ')} `;
  });
  const last = bars.at(-1);
  return line + (last && last.repeatTimes > 0 ? closeSign(last) : '|');
}

const closeSign = (bar: ChartBar): string => (bar.repeatTimes > 2 ? `:| x${bar.repeatTimes}` : ':|');

/** The chords of a bar as text: alone where they share it evenly, with beat marks or written beats where not. */
export function writeBar(chords: readonly ChartChord[]): string {
  const symbols = chords.map(({ chord }) => chord?.symbol ?? 'N.C.');
  const beats = chords.reduce((sum, chord) => sum + chord.beats, 0);
  const shared = shareBeats(
    chords.map(({ chord }) => chord),
    Math.abs(beats - Math.round(beats)) < BEAT_TOLERANCE ? Math.round(beats) : beats,
  );
  if (shared.every((share, index) => Math.abs(share.beats - (chords[index]?.beats ?? 0)) < BEAT_TOLERANCE)) {
    return symbols.join(' ');
  }
  if (chords.every((chord) => Number.isInteger(chord.beats))) {
    return chords
      .map((chord, index) => [symbols[index], ...Array<string>(chord.beats - 1).fill('/')].join(' '))
      .join(' ');
  }
  return chords.map((chord, index) => `${symbols[index]}:${chord.beats}`).join(' ');
}

/**
 * A list of beats in our own chart text: bars of beats, the chord of each.
 * @param spans in order, none over another
 */
export function writeBeats(spans: readonly ChordSpan[], beats: number, beatsPerBar: number): string {
  const bars: string[] = [];
  let first = 0;
  for (let start = 0; start < beats; start += beatsPerBar) {
    const end = start + beatsPerBar;
    while (first < spans.length && spans[first]!.endBeat <= start) first++;
    const inside: ChordSpan[] = [];
    for (let at = first; at < spans.length && spans[at]!.startBeat < end; at++) inside.push(spans[at]!);
    const chords = inside.map((span) => ({
      chord: span.chord,
      beats: Math.min(span.endBeat, end) - Math.max(span.startBeat, start),
    }));
    bars.push(writeBar(chords));
  }
  const lines: string[] = beatsPerBar === 4 ? [] : [`meter: ${beatsPerBar}/4`];
  for (let bar = 0; bar < bars.length; bar += 4) lines.push(`| ${bars.slice(bar, bar + 4).join(' | ')} |`);
  return lines.join('\n');
}
