/** What is proposed for a recording: plain values that a screen shows and a player changes. */
import type { Key } from '../music/chord.ts';

export interface ProposedChord {
  /** As a chart writes it; "N.C." for a rest. */
  readonly symbol: string;
  readonly beats: number;
}

export interface ProposedBar {
  readonly chords: readonly ProposedChord[];
  /** How likely the whole bar is right, 0 to 1. */
  readonly sure: number;
  /** Other chords that the bar may hold, the likeliest first. */
  readonly others: readonly string[];
}

export interface ChartProposal {
  readonly beatsPerBar: number;
  /** Index of the beat that is the first of bar 1. */
  readonly downbeat: number;
  readonly choruses: number;
  readonly key: Key;
  readonly bars: readonly ProposedBar[];
  /** The chart in our own text. */
  readonly chart: string;
  /** A built-in form that is nearly or wholly this one. */
  readonly form: NearForm | null;
  /** How far the recording's A4 lies from 440 Hz, in cents. */
  readonly tuningCents: number;
}

export interface NearForm {
  readonly name: string;
  readonly key: Key;
  /** Beats whose chord is the form's, 0 to 1; a triad counts as the seventh chord that it may be short for. */
  readonly alike: number;
}
