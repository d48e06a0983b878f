/**
 * Time and harmony in the form that all parts of the core use.
 * Beats are counted from the chart's first downbeat (beat 0); a pickup has negative beats.
 */
import type { Chord, Key } from '../music/chord.ts';

/** Beats against seconds: a constant tempo, a round of beats, or a list of them. Both ways are monotonic. */
export interface BeatMap {
  /** The tempo, in the mean where beats of a round differ; null where the beats were listed once. */
  readonly bpm: number | null;
  beatAt(seconds: number): number;
  secondsAt(beat: number): number;
}

/** Faster by so much after each so many bars. Bars, not choruses: a loop through twelve keys is one long chorus. */
export interface TempoRise {
  /** Beats a minute, above 0. */
  readonly byBpm: number;
  /** A whole number from 1. */
  readonly everyBars: number;
}

/** A stretch of one chord; neighbouring spans of the same chord stay apart where the chart writes it again. */
export interface ChordSpan {
  readonly startBeat: number;
  /** Infinity for the last span of listed beats. */
  readonly endBeat: number;
  /** null over N.C. */
  readonly chord: Chord | null;
  /** Bar of the chart, from 0, within one chorus. */
  readonly bar: number;
  /** How many times the chart has gone round before this span. */
  readonly chorus: number;
}

/** A chart laid on a beat map, going round until the take ends. */
export interface Timeline {
  readonly beatMap: BeatMap;
  readonly beatsPerBar: number;
  /** Eighths a beat: 2, or 3 where the beat is a dotted quarter. */
  readonly divisions: 2 | 3;
  /** Bars of one chorus (of the whole list, where the beats were listed). */
  readonly bars: number;
  /** Beats of one chorus (of the whole list, whose last bar may be short). */
  readonly roundBeats: number;
  /** The chart in our own text form. */
  readonly chart: string;
  readonly key: Key;
  /** The keys that a chorus goes through, each from a bar on, from 0; left out, it stays in `key`. */
  readonly keys?: readonly { readonly fromBar: number; readonly key: Key }[];
  /** Share of the beat that the first eighth takes: 0.5 straight, 0.667 triplet. */
  readonly swing: number;
  /** Likewise in each bar of the chorus, where sections have a feel of their own; left out, it is the same in all. */
  readonly barSwings?: readonly number[];
  /** The tempo rises; left out, it does not. How much, the beat map says. */
  readonly rise?: TempoRise;
  /** Player and band take turns of so many bars, the player first; only the player's are graded. Left out, all are. */
  readonly turnBars?: number;
  /** null before the first downbeat and over N.C. Behind the last of listed beats its chord stands on. */
  chordAt(beat: number): Chord | null;
  /** Spans that overlap [fromBeat, toBeat), in order, never clipped. */
  spansBetween(fromBeat: number, toBeat: number): readonly ChordSpan[];
  /** The first span whose start is after `beat` and whose chord differs from that of the span before it, or null. */
  nextChange(beat: number): ChordSpan | null;
}
