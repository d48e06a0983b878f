/** Charts and lists of beats laid on time: the two ways to a timeline. */
import { feelOf } from './feel-words.ts';
import type { FeelName } from './feel-names.ts';
import { swingShare } from './swing.ts';
import { bad, good, type Outcome } from '../base/outcome.ts';
import type { Chord, Key } from '../music/chord.ts';
import { parseChord, readingHint, shownSymbol } from '../music/parse-chord.ts';
import { sameChord } from '../music/same-chord.ts';
import { lastAtOrBefore, listedBeatMap, steadyBeatMap } from './beat-maps.ts';
import {
  FASTEST_BPM,
  SLOWEST_BPM,
  STRAIGHT_SWING,
  WIDEST_SWING,
  type Chart,
  type ChartChord,
} from './chart.ts';
import { inRounds } from './find-round.ts';
import { findKey } from './find-key.ts';
import { keysOnTheWay } from './keys-through.ts';
import { playedBars, type PlayedBar } from './play-order.ts';
import { risingBeatMap } from './tempo-rise.ts';
import type { BeatMap, ChordSpan, Timeline, TempoRise } from './timeline.ts';
import { writeBeats, writeChart } from './write-chart.ts';

export interface TempoOptions {
  /** Beats a minute; in compound time the beat is the dotted quarter. */
  readonly bpm: number;
  /** Time of the first downbeat; 0 without. */
  readonly firstBeatSeconds?: number;
  /** Share of the beat that the first eighth takes; the chart's own without, else straight. */
  readonly swing?: number;
  /** The tempo rises as the chart goes round. */
  readonly rise?: TempoRise;
  /** Player and band take turns of so many bars: 1 or more. */
  readonly turnBars?: number;
  /** How the chart is played; its own word without. A section that asks for another feel swings by that. */
  readonly feel?: FeelName;
}

/** One row of a list of beats. An empty chord goes on with the one before. */
export interface BeatRow {
  readonly timeSeconds: number;
  readonly chord: string;
}

export interface BeatListOptions {
  /** 4 without. Only names the bars: the beats stand where they are. */
  readonly beatsPerBar?: number;
  /** Found from the chords without. */
  readonly key?: Key;
  readonly swing?: number;
}

/** The swing of a feel depends on the tempo; this tempo is used for beats without one. */
const USUAL_BPM = 120;
/** Least distance of two beats, seconds: 6,000 beats a minute are an error in the list. */
const CLOSEST_BEATS_SECONDS = 0.01;
/** A beat this near to a whole number of spans counts as being there: far more than the rounding of doubles. */
export const BEAT_TOLERANCE = 1e-5;

/**
 * The chart at a constant tempo, going round for ever. A pickup stands once, before beat 0.
 * Throws on a tempo outside 20 to 400, a swing outside 0.5 to 0.75 and a first beat that is no number.
 */
export function timelineFromTempo(chart: Chart, options: TempoOptions): Timeline {
  const { bpm, firstBeatSeconds = 0, swing = chart.swing ?? STRAIGHT_SWING } = options;
  if (!(bpm >= SLOWEST_BPM && bpm <= FASTEST_BPM)) {
    throw new RangeError(`bpm is ${SLOWEST_BPM} to ${FASTEST_BPM}, not ${bpm}`);
  }
  if (!Number.isFinite(firstBeatSeconds)) throw new RangeError('firstBeatSeconds is a number of seconds');
  const { rise, turnBars, feel } = options;
  if (turnBars !== undefined && !(Number.isInteger(turnBars) && turnBars >= 1))
    throw new RangeError(`a turn is 1 or more whole bars, not ${turnBars}`);
  const beatMap =
    rise === undefined
      ? steadyBeatMap(bpm, firstBeatSeconds)
      : risingBeatMap({ bpm, rise, beatsPerBar: chart.meter.beatsPerBar }, firstBeatSeconds);
  return {
    ...timelineOnBeats(chart, beatMap, swing, feel),
    ...(rise && { rise }),
    ...(turnBars !== undefined && { turnBars }),
  };
}

/**
 * The chart on beats of any kind, going round for ever. A pickup stands once, before beat 0.
 * @param swing share of the beat that the first eighth takes; throws outside 0.5 to 0.75
 * @param feel how it is played; the chart's own word without
 */
export function timelineOnBeats(chart: Chart, beatMap: BeatMap, swing: number, feel?: FeelName): Timeline {
  const bars = playedBars(chart);
  const chorus: ChordSpan[] = [];
  bars.forEach(({ bar }, index) => {
    chorus.push(...spansOf(bar.chords, index * chart.meter.beatsPerBar, index, 0));
  });
  const pickupBeats = (chart.pickup?.chords ?? []).reduce((sum, chord) => sum + chord.beats, 0);
  const pickup = chart.pickup ? spansOf(chart.pickup.chords, -pickupBeats, 0, 0) : [];
  return timelineOf({
    beatMap,
    beatsPerBar: chart.meter.beatsPerBar,
    divisions: chart.meter.divisions,
    bars: bars.length,
    roundBeats: bars.length * chart.meter.beatsPerBar,
    chart: writeChart(chart),
    key: chart.key,
    ...keysOnTheWay(chart, bars),
    swing: checkedSwing(swing),
    ...barSwings(chart, bars, {
      swing,
      bpm: beatMap.bpm ?? USUAL_BPM,
      feel: feel ?? feelOf(chart.feel ?? ''),
    }),
    before: pickup,
    chorus,
    chorusBeats: bars.length * chart.meter.beatsPerBar,
  });
}

/**
 * A list of beats with their chords. Between beats the position is interpolated; behind the last one it goes on at
 * the pace of the last interval, and the last chord stands on without end (its span ends at Infinity). Before the
 * first beat, and until a chord is named, there is none. Where the chords come again, the bars are those of one
 * chorus. The problem of a list that can't be read names the row, counted from 1 without the header.
 */
export function timelineFromBeats(
  rows: readonly BeatRow[],
  options: BeatListOptions = {},
): Outcome<Timeline> {
  const { beatsPerBar = 4, swing = STRAIGHT_SWING } = options;
  if (!(Number.isInteger(beatsPerBar) && beatsPerBar >= 1)) throw new RangeError('beatsPerBar is 1 or more');
  if (rows.length < 2) {
    return bad('beats.tooFew', { rows: rows.length });
  }
  const spans: ChordSpan[] = [];
  let standing: { readonly chord: Chord | null; readonly startBeat: number } = { chord: null, startBeat: 0 };
  for (const [index, row] of rows.entries()) {
    const before = rows[index - 1]?.timeSeconds ?? -Infinity;
    if (!Number.isFinite(row.timeSeconds)) return bad('beats.noTime', { row: index + 1 });
    if (row.timeSeconds - before < CLOSEST_BEATS_SECONDS) {
      return bad('beats.order', { row: index + 1, seconds: row.timeSeconds, before });
    }
    const symbol = row.chord.trim();
    if (symbol === '') continue;
    const chord = NO_CHORD.test(symbol) ? null : parseChord(symbol);
    if (chord === null && !NO_CHORD.test(symbol)) {
      return bad('beats.chord', {
        row: index + 1,
        symbol: shownSymbol(symbol),
        hint: readingHint(symbol),
      });
    }
    if (index > standing.startBeat) spans.push(spanFrom(standing, index, beatsPerBar));
    standing = { chord, startBeat: index };
  }
  spans.push(spanFrom(standing, Infinity, beatsPerBar));
  const { bars, chorus } = inRounds(spans, rows.length, beatsPerBar);
  return good(
    timelineOf({
      beatMap: listedBeatMap(rows.map((row) => row.timeSeconds)),
      beatsPerBar,
      divisions: 2,
      bars,
      roundBeats: rows.length,
      chart: writeBeats(spans, rows.length, beatsPerBar),
      key:
        options.key ??
        findKey(
          spans.map((span) => ({
            chord: span.chord,
            beats: Math.min(span.endBeat, rows.length) - span.startBeat,
          })),
        ),
      swing: checkedSwing(swing),
      before: [],
      chorus,
      chorusBeats: null,
    }),
  );
}

const NO_CHORD = /^n\.?c\.?$/i;

const spanFrom = (
  standing: { readonly chord: Chord | null; readonly startBeat: number },
  endBeat: number,
  beatsPerBar: number,
): ChordSpan => ({ ...standing, endBeat, bar: Math.floor(standing.startBeat / beatsPerBar), chorus: 0 });

function spansOf(chords: readonly ChartChord[], startBeat: number, bar: number, chorus: number): ChordSpan[] {
  let at = startBeat;
  return chords.map(({ chord, beats }) => {
    const span = { startBeat: at, endBeat: at + beats, chord, bar, chorus };
    at += beats;
    return span;
  });
}

/** The swing of each bar, where a section's own feel has another. */
function barSwings(
  { sections }: Chart,
  bars: readonly PlayedBar[],
  whole: { readonly swing: number; readonly bpm: number; readonly feel: FeelName | null },
): Pick<Timeline, 'barSwings'> {
  const own = sections.map((section) => {
    const feel = section.feel === null ? null : feelOf(section.feel);
    if (feel === null || feel === whole.feel) return whole.swing;
    return Math.min(WIDEST_SWING, swingShare(feel, whole.bpm));
  });
  if (own.every((swing) => swing === whole.swing)) return {};
  return { barSwings: bars.map(({ section }) => own[section] ?? whole.swing) };
}

function checkedSwing(swing: number): number {
  if (swing >= STRAIGHT_SWING && swing <= WIDEST_SWING) return swing;
  throw new RangeError(`swing is ${STRAIGHT_SWING} to ${WIDEST_SWING}, not ${swing}`);
}

export interface Layout extends Omit<Timeline, 'chordAt' | 'spansBetween' | 'nextChange'> {
  /** Spans before beat 0. */
  readonly before: readonly ChordSpan[];
  /** Spans of one chorus from beat 0. */
  readonly chorus: readonly ChordSpan[];
  /** After so many beats the chorus starts again; null: never. */
  readonly chorusBeats: number | null;
}

/** The three queries of a timeline, over spans that repeat or do not. */
export function timelineOf({ before, chorus, chorusBeats, ...facts }: Layout): Timeline {
  const starts = chorus.map((span) => span.startBeat);
  const isChange = chorus.map((span, i) => i === 0 || !sameChord(chorus[i - 1]!.chord, span.chord));

  /** The span by its number: below 0 the pickup, from 0 chorus after chorus. */
  const spanNumber = (number: number): ChordSpan | null => {
    if (number < 0) return before[before.length + number] ?? null;
    const round = chorusBeats === null ? 0 : Math.floor(number / chorus.length);
    const span = chorus[number - round * chorus.length];
    if (!span) return null;
    if (round === 0 || chorusBeats === null) return span;
    const shift = round * chorusBeats;
    return { ...span, startBeat: span.startBeat + shift, endBeat: span.endBeat + shift, chorus: round };
  };

  /** Number of the span at a beat; before everything, one below the first. */
  const numberAt = (beat: number): number => {
    const at = beat + BEAT_TOLERANCE;
    if (at < 0) return before.findLastIndex((span) => span.startBeat <= at) - before.length;
    const round = chorusBeats === null ? 0 : Math.floor(at / chorusBeats);
    return round * chorus.length + lastAtOrBefore(starts, at - round * (chorusBeats ?? 0));
  };

  return {
    ...facts,
    chordAt: (beat) => spanNumber(numberAt(beat))?.chord ?? null,
    spansBetween(fromBeat, toBeat) {
      const spans: ChordSpan[] = [];
      if (!(toBeat > fromBeat)) return spans;
      for (let number = Math.max(numberAt(fromBeat), -before.length); ; number++) {
        const span = spanNumber(number);
        if (!span || span.startBeat >= toBeat - BEAT_TOLERANCE) return spans;
        spans.push(span);
      }
    },
    nextChange(beat) {
      const start = Math.max(numberAt(beat) + 1, -before.length);
      // A change comes within one round of the chart or never.
      for (let number = start; number <= start + before.length + chorus.length; number++) {
        if (number > 0 && number % chorus.length !== 0 && !isChange[number % chorus.length]) continue;
        const span = spanNumber(number);
        if (!span) return null;
        const previous = spanNumber(number - 1);
        if (!previous || !sameChord(previous.chord, span.chord)) return span;
      }
      return null;
    },
  };
}
