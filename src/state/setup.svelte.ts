/** What is about to be played: the chart, its key, tempo and feel, the reference pitch, the band's levels. */
import type { BandPart } from '../core/band/events.ts';
import type { FeelName } from '../core/band/settings.ts';
import type { Chart } from '../core/chart/chart.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import type { Outcome } from '../core/outcome.ts';
import type { BandLevels, SettingsPort } from './ports.ts';

/** All that is remembered between visits. */
export interface Settings {
  /** Name of a built-in form, or null for a chart of the player's own. */
  readonly form: string | null;
  /** The player's own chart; kept while a built-in form is chosen. */
  readonly ownChart: string;
  /** "Bb", "F#", "A minor". */
  readonly key: string;
  readonly bpm: number;
  readonly feel: FeelName;
  /** Share of the beat that the first eighth takes, 0.5 to 0.75; null: as the feel has it at this tempo. */
  readonly swing: number | null;
  readonly reference: number | 'auto';
  readonly levels: BandLevels;
  /** Stop by itself after so many choruses; null goes on until stopped. */
  readonly choruses: number | null;
  readonly countInBars: number;
  /** Measured by a sound check (seconds), or null: what the browser admits to is assumed. */
  readonly roundTripSeconds: number | null;
}

export const REFERENCE_RANGE = { lowest: 380, highest: 480 } as const;

export declare class Setup {
  constructor(ports: { readonly settings: SettingsPort<Settings> });
  /** Reads what was remembered. Sentences about what could not be read land in `notices`. */
  load(): Promise<void>;
  get settings(): Settings;
  get notices(): readonly string[];
  /** The chart text that counts now: the form's in the chosen key, or the player's own. */
  get chartText(): string;
  get chart(): Outcome<Chart>;
  get timeline(): Outcome<Timeline>;
  /** A short name for lists: "12-bar blues in A", or the first bars of an own chart. */
  get title(): string;
  /** The swing that counts now, 0.5 to 0.75. */
  get swing(): number;
  chooseForm(name: string): void;
  writeChart(text: string): void;
  chooseKey(key: string): void;
  setBpm(bpm: number): void;
  chooseFeel(feel: FeelName): void;
  setSwing(swing: number | null): void;
  setReference(reference: number | 'auto'): void;
  setLevel(part: BandPart | 'all', levelDb: number): void;
  setChoruses(choruses: number | null): void;
  setRoundTrip(seconds: number | null): void;
}
