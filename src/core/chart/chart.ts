/**
 * A chart as it is written: sections of bars of chords, with repeats and endings still in place.
 * `playedBars` (play-order.ts) gives the bars in the order they sound.
 */
import type { Chord, Key } from '../music/chord.ts';

/**
 * How the time is counted. In 2/4, 3/4, 4/4, 5/4 the beat is the quarter; in 6/8, 9/8, 12/8 it is the dotted
 * quarter, as these are felt and conducted (*common practice*): 12/8 has four beats of three eighths.
 */
export interface Meter {
  /** As written: "4/4". */
  readonly written: string;
  readonly beatsPerBar: number;
  /** Eighths in a beat: 2, or 3 in compound time. */
  readonly divisions: 2 | 3;
}

/** One chord of a bar, and how long it stands. */
export interface ChartChord {
  /** null is N.C.: no chord. */
  readonly chord: Chord | null;
  readonly beats: number;
}

export interface ChartBar {
  /** In order; their beats add up to the bar. */
  readonly chords: readonly ChartChord[];
  /** A repeat opens before this bar. */
  readonly repeatStart: boolean;
  /** A repeat closes after this bar: how often its bars sound in all; 0 without a repeat sign. */
  readonly repeatTimes: number;
  /** The passes whose ending starts with this bar: [1] for a first ending; else empty. */
  readonly endings: readonly number[];
  /** Left out where the bar has none. */
  readonly signs?: BarSigns;
}

/** Signs of the roadmap: segno and coda stand before the bar, the others behind it. What is left out is not there. */
export interface BarSigns {
  readonly segno?: true;
  readonly coda?: true;
  /** From here to the coda, once a jump that says so has been taken. */
  readonly toCoda?: true;
  /** The end, once a jump has been taken. */
  readonly fine?: true;
  readonly jump?: Jump;
}

/** D.C. goes back to the start, D.S. to the segno. */
export interface Jump {
  readonly to: 'start' | 'segno';
  /** "al Fine", "al Coda"; null where it says neither. */
  readonly until: 'fine' | 'coda' | null;
}

export interface ChartSection {
  /** "A", "Bridge"; null when it has none. */
  readonly name: string | null;
  /** How the band plays it, in the chart's own words; null: as the whole chart. */
  readonly feel: string | null;
  /** The key from here on; left out, it stays. */
  readonly key?: Key;
  readonly bars: readonly ChartBar[];
}

export interface Chart {
  readonly title: string | null;
  readonly key: Key;
  /** False when the key was found from the chords. */
  readonly keyWritten: boolean;
  readonly meter: Meter;
  readonly feel: string | null;
  /** Tempo that the chart asks for, in beats a minute. */
  readonly bpm: number | null;
  /** Share of the beat that the first eighth takes, where the chart writes it. */
  readonly swing: number | null;
  /** A short bar before the first downbeat, played once. */
  readonly pickup: ChartBar | null;
  readonly sections: readonly ChartSection[];
}

/** Meters that charts can have. */
export const METERS: readonly Meter[] = [
  { written: '4/4', beatsPerBar: 4, divisions: 2 },
  { written: '3/4', beatsPerBar: 3, divisions: 2 },
  { written: '2/4', beatsPerBar: 2, divisions: 2 },
  { written: '5/4', beatsPerBar: 5, divisions: 2 },
  { written: '6/4', beatsPerBar: 6, divisions: 2 },
  { written: '7/4', beatsPerBar: 7, divisions: 2 },
  { written: '6/8', beatsPerBar: 2, divisions: 3 },
  { written: '9/8', beatsPerBar: 3, divisions: 3 },
  { written: '12/8', beatsPerBar: 4, divisions: 3 },
];

/** The meter that is written so ("12/8"), or null. */
export const meterOf = (written: string): Meter | null =>
  METERS.find((meter) => meter.written === written.replace(/\s/g, '')) ?? null;

/** Tempo that a chart or a take can have: slower no beat is felt, faster no bar is counted. */
export const SLOWEST_BPM = 20;
export const FASTEST_BPM = 400;

/** From straight eighths to a dotted eighth and a sixteenth. */
export const STRAIGHT_SWING = 0.5;
export const WIDEST_SWING = 0.75;

/** All bars as written, sections joined, without the pickup. */
export const writtenBars = (chart: Pick<Chart, 'sections'>): readonly ChartBar[] =>
  chart.sections.flatMap((section) => section.bars);

const CHORDS_IN_A_NAME = 4;

/** What a chart without a title is called: "G7 C7 G7 D7". */
export const firstChords = (chart: Chart): string =>
  writtenBars(chart)
    .flatMap((bar) => bar.chords.map(({ chord }) => chord?.symbol ?? 'N.C.'))
    .slice(0, CHORDS_IN_A_NAME)
    .join(' ');
