/** What the command line can be asked for, as data. */
import type { DroneTones } from '../core/band/settings.ts';
import type { Meter } from '../core/chart/chart.ts';
import type { FeelName } from '../core/chart/feel-names.ts';
import type { PaletteName } from '../core/grade/assign/settings.ts';
import type { Key } from '../core/music/chord.ts';
import type { Instrument } from '../core/music/instruments.ts';
import type { RiseOrder } from './given.ts';

/** How many files are graded together. */
export interface BatchOrder {
  /** Worker threads; null: one a core. */
  readonly threads: number | null;
  /** Grades again what was graded before. */
  readonly anew: boolean;
}

/** A class graded by a lesson sheet. */
export interface ClassOrder {
  readonly command: 'class';
  readonly paths: readonly string[];
  readonly sheet: string;
  readonly firstBeatSeconds: number;
  readonly output: 'text' | 'csv' | 'json' | 'html';
  readonly batch: BatchOrder;
}

/** The chords of a recording. */
export interface ChordsOrder {
  readonly command: 'chords';
  readonly file: string;
  readonly json: boolean;
}

/** Everything that is null was not given. */
export interface GradeOrder {
  readonly command: 'grade';
  readonly file: string;
  /** Files and folders that are graded beside it. */
  readonly moreFiles: readonly string[];
  readonly batch: BatchOrder;
  /** A recording of what was played along with, to be taken out of the take. */
  readonly backing: string | null;
  readonly under:
    | {
        readonly kind: 'chart';
        /** Chart text or the name of a file with it. */
        readonly chart: string;
        readonly bpm: number | null;
        readonly firstBeatSeconds: number;
        readonly rise: RiseOrder | null;
        /** Bars of a turn, where player and band took turns. */
        readonly turnBars: number | null;
        /** How it was played, where the chart does not say. */
        readonly feel: FeelName | null;
        /** Half steps that the chart is moved by. */
        readonly transpose: number | null;
      }
    | { readonly kind: 'beats'; readonly file: string }
    /** The chords that are found in the backing, or in the recording itself where none is named. */
    | { readonly kind: 'found' }
    /** A take file has its own chords. */
    | { readonly kind: 'take file' };
  readonly meter: Meter | null;
  readonly swing: number | null;
  readonly key: Key | null;
  readonly referenceHz: number | 'auto';
  readonly anticipationBeats: number | null;
  readonly toleranceMs: number | null;
  readonly palette: PaletteName | null;
  /** Names of the house's aims, or of files. */
  readonly aims: readonly string[];
  readonly instrument: Instrument | null;
  readonly part: number | null;
  /** Bar from 1. */
  readonly explainBar: number | null;
  /** The chorus of that bar, from 1. */
  readonly explainChorus: number | null;
  /** Every figure on the page. */
  readonly full: boolean;
  readonly json: boolean;
  /** A line of JSON for each file, also where there is only one. */
  readonly lines: boolean;
}

/** What is null is the chart's own, or the house's. */
export interface BandOrder {
  readonly command: 'band';
  /** Chart text or the name of a file with it. */
  readonly chart: string;
  readonly bpm: number | null;
  readonly meter: Meter | null;
  readonly key: Key | null;
  readonly feel: FeelName | null;
  readonly swing: number | null;
  readonly rise: RiseOrder | null;
  readonly turnBars: number | null;
  /** Id of the aim that the band's turns are examples of. */
  readonly aim: string | null;
  readonly drone: DroneTones | null;
  readonly choruses: number | null;
  readonly seed: number | null;
  /** The file to write, told by its ending. */
  readonly out: { readonly file: string; readonly kind: 'wav' | 'midi' | 'musicxml' };
}

/** The commands that have a page of help of their own. */
export const COMMANDS = ['grade', 'class', 'chords', 'band', 'forms', 'schema'] as const;
export type Command = (typeof COMMANDS)[number];

export type Order =
  | GradeOrder
  | BandOrder
  | ClassOrder
  | ChordsOrder
  | { readonly command: 'schema'; readonly of: 'report' | 'sheet' | 'take' | 'answer' }
  | { readonly command: 'help'; /** null for all of them. */ readonly of: Command | null }
  | { readonly command: 'forms' | 'version'; readonly json: boolean };
