/** The options of the command line as data. */
import { MOST_TAKE_SECONDS } from '../core/base/limits.ts';
import { FASTEST_BPM, SLOWEST_BPM, STRAIGHT_SWING, WIDEST_SWING } from '../core/chart/chart.ts';
import { fastestBpm, slowestBpm } from '../core/chart/feel-names.ts';
import { MOST_TOLERANCE_SECONDS } from '../core/grade/assign/tolerance.ts';
import type { DroneTones } from '../core/band/settings.ts';
import type { PaletteName } from '../core/grade/assign/settings.ts';

export const OPTIONS = {
  chart: { type: 'string' },
  tempo: { type: 'string' },
  meter: { type: 'string' },
  swing: { type: 'string' },
  rise: { type: 'string' },
  trade: { type: 'string' },
  drone: { type: 'string' },
  'first-beat': { type: 'string' },
  beats: { type: 'string' },
  key: { type: 'string' },
  reference: { type: 'string' },
  anticipation: { type: 'string' },
  tolerance: { type: 'string' },
  transpose: { type: 'string' },
  palette: { type: 'string' },
  aim: { type: 'string', multiple: true },
  instrument: { type: 'string' },
  capo: { type: 'string' },
  part: { type: 'string' },
  explain: { type: 'string' },
  chorus: { type: 'string' },
  full: { type: 'boolean' },
  feel: { type: 'string' },
  choruses: { type: 'string' },
  seed: { type: 'string' },
  out: { type: 'string' },
  backing: { type: 'string' },
  sheet: { type: 'string' },
  csv: { type: 'boolean' },
  html: { type: 'boolean' },
  threads: { type: 'string' },
  anew: { type: 'boolean' },
  language: { type: 'string' },
  json: { type: 'boolean' },
  lines: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean', short: 'v' },
} as const;

export type OptionName = keyof typeof OPTIONS;

interface Range {
  readonly lowest: number;
  readonly highest: number;
  readonly unit:
    'bpm' | 'beat' | 'bars' | 'seconds' | 'hz' | 'beats' | 'choruses' | 'halfSteps' | 'ms' | 'none';
}

/** What each number may be. */
export const RANGES = {
  tempo: { lowest: SLOWEST_BPM, highest: FASTEST_BPM, unit: 'bpm' },
  swing: { lowest: STRAIGHT_SWING, highest: WIDEST_SWING, unit: 'beat' },
  trade: { lowest: 1, highest: 64, unit: 'bars' },
  'first-beat': { lowest: -MOST_TAKE_SECONDS, highest: MOST_TAKE_SECONDS, unit: 'seconds' },
  // From the lowest pitch that old-music players use (392) and the highest organs (about 480), with room.
  reference: { lowest: 380, highest: 500, unit: 'hz' },
  anticipation: { lowest: 0, highest: 1, unit: 'beats' },
  tolerance: { lowest: 0, highest: 1000 * MOST_TOLERANCE_SECONDS, unit: 'ms' },
  transpose: { lowest: -11, highest: 11, unit: 'halfSteps' },
  choruses: { lowest: 1, highest: 99, unit: 'choruses' },
  seed: { lowest: 1, highest: 999_999, unit: 'none' },
  threads: { lowest: 1, highest: 256, unit: 'none' },
} as const satisfies Partial<Record<OptionName, Range>>;

/** What the band can play; a line is graded at any tempo. */
export const BAND_TEMPO = { lowest: slowestBpm, highest: fastestBpm } as const;

export const PALETTES: readonly PaletteName[] = [
  'both pentatonics',
  'minor pentatonic',
  'major pentatonic',
  'blues scale',
  'key',
];

/** Root alone, or the fifth with it. */
export const DRONES: ReadonlyMap<string, DroneTones> = new Map([
  ['root', 'root'],
  ['fifth', 'root and fifth'],
]);
