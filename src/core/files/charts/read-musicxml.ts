/**
 * The chord symbols of a MusicXML score (W3C, versions 1 to 4.0, partwise) as a chart: harmony elements at their
 * places in the bars, repeats and endings, rehearsal marks as sections, key, meter, tempo and swing.
 */
import type { XmlElement } from '@rgrove/parse-xml';
import { feelOf } from '../../chart/feel-words.ts';
import {
  meterOf,
  STRAIGHT_SWING,
  WIDEST_SWING,
  type Chart,
  type ChartBar,
  type ChartChord,
  type Meter,
} from '../../chart/chart.ts';
import { playedOut } from '../../chart/play-order.ts';
import { parseChart } from '../../chart/parse-chart.ts';
import { hasSigns } from '../../chart/read-signs.ts';
import { lostJump } from '../../chart/roadmap.ts';
import { writeChart } from '../../chart/write-chart.ts';
import type { Chord, Key } from '../../music/chord.ts';
import { keyOfSignature, keyOn } from '../../music/keys.ts';
import { MOST_BAR_CHORDS, MOST_BARS } from '../../base/limits.ts';
import { bad, failure, good, type Outcome } from '../../base/outcome.ts';
import { notice, problem, type Notice } from '../../words/problem.ts';
import { meterFrom, usableBpm } from './meters.ts';
import { readHarmony } from './musicxml-harmony.ts';
import { UnreadableScore, warnOnce } from './score-problems.ts';
import { readBarline, signsOfMeasure, type BarMarks, type Roadmap } from './musicxml-roadmap.ts';
import { childrenOf, firstOf, isOverfull, numberOf, readXml, textOf } from '../bytes/xml.ts';

export interface ReadChartFile {
  readonly chart: Chart;
  /** What was left out or mended. */
  readonly warnings: readonly Notice[];
}

/** Beats are rounded to so many parts: finer than any chord is placed, coarse enough for thirds to meet. */
const PARTS_OF_A_BEAT = 48;

interface SectionDraft {
  name: string | null;
  feel: string | null;
  readonly bars: ChartBar[];
}

/** Everything that is known while the measures go by. */
interface Reading {
  divisions: number;
  meter: Meter | null;
  key: Key | null;
  bpm: number | null;
  swing: number | null;
  standing: Chord | null;
  pickup: ChartBar | null;
  readonly sections: SectionDraft[];
  /** The file, for the problems. */
  readonly name: string;
  readonly warnings: Notice[];
  readonly roadmap: Roadmap;
}

/** @param name the file, for the problems */
export function readMusicXml(text: string, name: string): Outcome<ReadChartFile> {
  if (isOverfull(text)) return bad('score.overfull', { name });
  const root = readXml(text);
  if (root === null) return bad('score.notXml', { name });
  if (root.name === 'score-timewise') return bad('score.timewise', { name });
  if (root.name !== 'score-partwise') return bad('score.otherXml', { name });
  const part = childrenOf(root, 'part').find((one) =>
    childrenOf(one, 'measure').some((measure) => firstOf(measure, 'harmony') !== null),
  );
  if (!part) return bad('score.noChords', { name });
  // One more for an upbeat.
  if (childrenOf(part, 'measure').length > MOST_BARS + 1)
    return bad('chartFile.unreadable', { name, cause: problem('chart.chorusTooLong', { bars: MOST_BARS }) });
  const reading: Reading = {
    divisions: 1,
    meter: null,
    key: null,
    bpm: null,
    swing: null,
    standing: null,
    pickup: null,
    sections: [],
    name,
    warnings: [],
    roadmap: { unexplainedCodas: 0 },
  };
  try {
    childrenOf(part, 'measure').forEach((measure, index) => readMeasure(measure, index, reading));
  } catch (error) {
    if (error instanceof UnreadableScore) return failure(error.problem);
    throw error;
  }
  return finish(root, name, reading);
}

function finish(root: XmlElement, name: string, reading: Reading): Outcome<ReadChartFile> {
  const title = textOf(root, 'work', 'work-title') ?? textOf(root, 'movement-title');
  const { key, bpm, swing, pickup, warnings } = reading;
  const sections = withJumpsThatLead(reading);
  const chart: Chart = {
    title: title === null || title === '' ? null : title.replaceAll(/\s+/g, ' '),
    key: key ?? keyOn(0, 'major'),
    keyWritten: key !== null,
    meter: reading.meter ?? meterOf('4/4')!,
    feel: sections[0]?.feel ?? null,
    bpm,
    swing,
    pickup,
    sections: sections
      .filter(({ bars }) => bars.length > 0)
      .map((section, i) => (i === 0 ? { ...section, feel: null } : section)),
  };
  // By way of our own text, so that what comes in is a chart that could have been written here.
  const written = parseChart(writeChart(chart));
  if (!written.ok) return bad('chartFile.unreadable', { name, cause: written.problem });
  return good({ chart: written.value, warnings });
}

/** The sections; without their jumps, and with a warning, where one leads nowhere. */
function withJumpsThatLead(reading: Reading): readonly SectionDraft[] {
  const { sections } = reading;
  if (lostJump(sections) === null) return sections;
  warnOnce(reading.warnings, notice('score.lostJumps', { name: reading.name }));
  return sections.map((section) => ({
    ...section,
    bars: section.bars.map(({ signs: _, ...bar }) => bar),
  }));
}

function readMeasure(measure: XmlElement, index: number, reading: Reading): void {
  const label = measure.attributes['number'] ?? String(index + 1);
  const placed: { readonly at: number; readonly chord: Chord | null }[] = [];
  const marks: BarMarks = { repeatStart: false, repeatTimes: 0, endings: [] };
  let at = 0;
  let longest = 0;
  for (const element of childrenOf(measure)) {
    const duration = numberOf(textOf(element, 'duration')) ?? 0;
    switch (element.name) {
      case 'attributes':
        readAttributes(element, label, reading);
        break;
      case 'note':
        if (!firstOf(element, 'chord') && !firstOf(element, 'grace')) at += duration;
        break;
      case 'forward':
        at += duration;
        break;
      case 'backup':
        at -= duration;
        break;
      case 'direction':
        readDirection(element, reading);
        break;
      case 'sound':
        readSound(element, reading);
        break;
      case 'barline':
        readBarline(element, marks, reading);
        break;
      case 'harmony': {
        const chord = heard(element, label, reading);
        const offset = numberOf(textOf(element, 'offset')) ?? 0;
        if (chord !== undefined) placed.push({ at: at + offset, chord });
        if (placed.length > MOST_BAR_CHORDS)
          throw new UnreadableScore(
            problem('score.chordsInBar', { name: reading.name, bar: label, most: MOST_BAR_CHORDS }),
          );
      }
    }
    longest = Math.max(longest, at);
  }
  const meter = reading.meter ?? meterOf('4/4')!;
  const inBeats = (divisions: number) => {
    const beats = (divisions / reading.divisions) * (2 / meter.divisions);
    return Math.round(beats * PARTS_OF_A_BEAT) / PARTS_OF_A_BEAT;
  };
  const isPickup =
    index === 0 &&
    (measure.attributes['implicit'] === 'yes' || inBeats(longest) < meter.beatsPerBar) &&
    longest > 0;
  const beats = isPickup ? Math.min(inBeats(longest), meter.beatsPerBar) : meter.beatsPerBar;
  const chords = chordsOf(
    placed.map((one) => ({ at: inBeats(one.at), chord: one.chord })),
    beats,
    reading,
  );
  const signs = signsOfMeasure(measure, reading.roadmap);
  const bar: ChartBar = { chords, ...marks, ...(hasSigns(signs) && { signs }) };
  if (isPickup && beats < meter.beatsPerBar) {
    // An upbeat without a chord says nothing about the chords.
    if (placed.length > 0) reading.pickup = playedOut(bar);
    return;
  }
  if (reading.sections.length === 0) reading.sections.push({ name: null, feel: null, bars: [] });
  reading.sections.at(-1)!.bars.push(bar);
}

/** The chord of a harmony element; undefined, and a warning, where there is none for it. */
function heard(element: XmlElement, bar: string, reading: Reading): Chord | null | undefined {
  const harmony = readHarmony(element);
  if (harmony.kind === 'chord') return harmony.chord;
  if (harmony.kind === 'none') return null;
  warnOnce(reading.warnings, notice('score.unreadChord', { name: reading.name, bar, what: harmony.what }));
  return undefined;
}

/** The bar from its placed chords: the standing chord up to the first of them. */
function chordsOf(
  placed: readonly { readonly at: number; readonly chord: Chord | null }[],
  beats: number,
  reading: Reading,
): readonly ChartChord[] {
  const inside = placed
    .map(({ at, chord }) => ({ at: Math.min(Math.max(0, at), beats), chord }))
    .toSorted((a, b) => a.at - b.at);
  const starts = (inside[0]?.at ?? beats) > 0 ? [{ at: 0, chord: reading.standing }, ...inside] : inside;
  reading.standing = starts.at(-1)?.chord ?? null;
  return starts.flatMap(({ at, chord }, i) => {
    const length = (starts[i + 1]?.at ?? beats) - at;
    return length > 0 ? [{ chord, beats: length }] : [];
  });
}

function readAttributes(element: XmlElement, bar: string, reading: Reading): void {
  const divisions = numberOf(textOf(element, 'divisions'));
  if (divisions !== null && divisions > 0) reading.divisions = divisions;
  const time = firstOf(element, 'time');
  if (time) {
    if (firstOf(time, 'senza-misura'))
      throw new UnreadableScore(problem('score.noMeter', { name: reading.name, bar }));
    const meter = meterFrom(textOf(time, 'beats'), textOf(time, 'beat-type'));
    const said = `${textOf(time, 'beats') ?? '?'}/${textOf(time, 'beat-type') ?? '?'}`;
    if (meter === null)
      throw new UnreadableScore(problem('score.meter', { name: reading.name, bar, meter: said }));
    if (reading.meter !== null && reading.meter.written !== meter.written)
      throw new UnreadableScore(problem('score.meterChanges', { name: reading.name, bar, meter: said }));
    reading.meter = meter;
  }
  const fifths = numberOf(textOf(element, 'key', 'fifths'));
  // Seven sharps or flats are the most that a signature holds.
  if (fifths === null || !Number.isInteger(fifths) || Math.abs(fifths) > 7) return;
  const mode = textOf(element, 'key', 'mode') ?? 'major';
  if (reading.key === null && (mode === 'major' || mode === 'minor'))
    reading.key = keyOfSignature(fifths, mode);
}

function readDirection(element: XmlElement, reading: Reading): void {
  for (const type of childrenOf(element, 'direction-type')) {
    const mark = textOf(type, 'rehearsal');
    if (mark !== null) startSection(mark, reading);
    const words = textOf(type, 'words');
    if (words !== null && feelOf(words) !== null) takeFeel(words, reading);
  }
  for (const sound of childrenOf(element, 'sound')) readSound(sound, reading);
}

/** Letters and words; what our text has no name for becomes a plain one. */
function startSection(mark: string, reading: Reading): void {
  const name = mark.replaceAll(/[^\p{L}\p{N} .'’&+()-]/gu, '').trim();
  const plain = name === '' ? null : /^\d+$/.test(name) ? `Section ${name}` : name;
  const last = reading.sections.at(-1);
  if (last && last.bars.length === 0) last.name ??= plain;
  else reading.sections.push({ name: plain, feel: null, bars: [] });
}

function takeFeel(words: string, reading: Reading): void {
  const plain = words.replaceAll(/[|[\]\n#]/g, ' ').trim();
  const last = reading.sections.at(-1);
  if (last && last.bars.length === 0) last.feel ??= plain;
  else reading.sections.push({ name: null, feel: plain, bars: [] });
}

function readSound(sound: XmlElement, reading: Reading): void {
  const quarters = numberOf(sound.attributes['tempo']);
  // Told in quarters; the meter stands before it or never changes it by more than the beat's length.
  if (reading.bpm === null && quarters !== null && quarters > 0) {
    const bpm = (quarters * 2) / (reading.meter?.divisions ?? 2);
    reading.bpm = usableBpm(Math.round(bpm * 100) / 100);
  }
  const first = numberOf(textOf(sound, 'swing', 'first'));
  const second = numberOf(textOf(sound, 'swing', 'second'));
  if (reading.swing === null && first !== null && second !== null && first > 0 && second > 0) {
    const share = Math.min(WIDEST_SWING, Math.max(STRAIGHT_SWING, first / (first + second)));
    reading.swing = Math.round(share * 1000) / 1000;
  }
}
