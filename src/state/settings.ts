/** What is remembered between visits, what each field may be, and what holds at first. */
import * as v from 'valibot';
import type { BandPart } from '../core/band/events.ts';
import { fastestBpm, feelNames, slowestBpm, type FeelName } from '../core/chart/feel-names.ts';
import { languageCodes, type Language } from '../core/words/languages.ts';
import { playingFields, usualPlaying, type PlayingSettings } from './playing-settings.ts';
import { practiceFields, usualPractice, type PracticeSettings } from './practice-settings.ts';
import type { BandLevels } from './ports.ts';

export interface Settings extends PlayingSettings, PracticeSettings {
  /** Name of a built-in form, or null for a chart of the player's own. */
  readonly form: string | null;
  /** The player's own chart; kept while a built-in form is chosen. */
  readonly ownChart: string;
  /** What the player's own chart is called; null: as its text says, or by its first chords. */
  readonly ownTitle: string | null;
  /** Of the chart that counts now: "Bb", "A minor". */
  readonly key: string;
  readonly bpm: number;
  readonly feel: FeelName;
  /** Share of the beat that the first eighth takes, 0.5 to 0.75; null: as the feel has it at this tempo. */
  readonly swing: number | null;
  /** A4 in Hz, or estimated from the playing. */
  readonly reference: number | 'auto';
  readonly levels: BandLevels;
  /** The take ends by itself after so many choruses; null goes on until stopped. */
  readonly choruses: number | null;
  readonly countInBars: number;
  /** Of the screens; null: the browser's. */
  readonly language: Language | null;
}

export const REFERENCE_RANGE = { lowest: 380, highest: 480 } as const;
export const BPM_RANGE = { lowest: slowestBpm, highest: fastestBpm } as const;
export const SWING_RANGE = { lowest: 0.5, highest: 0.75 } as const;
export const LEVEL_RANGE = { lowest: -60, highest: 6 } as const;
export const MOST_CHORUSES = 99;
export const MOST_COUNT_IN_BARS = 4;

const within = ({ lowest, highest }: { readonly lowest: number; readonly highest: number }) =>
  v.pipe(v.number(), v.minValue(lowest), v.maxValue(highest));
const levelFields: Record<BandPart | 'all', v.GenericSchema<unknown, number>> = {
  all: within(LEVEL_RANGE),
  drums: within(LEVEL_RANGE),
  bass: within(LEVEL_RANGE),
  chords: within(LEVEL_RANGE),
  // Levels kept before there was one.
  line: v.optional(within(LEVEL_RANGE), 0),
  click: within(LEVEL_RANGE),
};

export const settingsFields: { readonly [K in keyof Settings]: v.GenericSchema<unknown, Settings[K]> } = {
  ...playingFields,
  ...practiceFields,
  form: v.nullable(v.string()),
  ownChart: v.string(),
  ownTitle: v.nullable(v.string()),
  key: v.string(),
  bpm: within(BPM_RANGE),
  feel: v.picklist(feelNames),
  swing: v.nullable(within(SWING_RANGE)),
  reference: v.union([within(REFERENCE_RANGE), v.literal('auto')]),
  levels: v.object(levelFields),
  choruses: v.nullable(v.pipe(within({ lowest: 1, highest: MOST_CHORUSES }), v.integer())),
  countInBars: v.pipe(within({ lowest: 0, highest: MOST_COUNT_IN_BARS }), v.integer()),
  language: v.nullable(v.picklist(languageCodes)),
};

/** A blues in A at a walking pace. The band starts quiet, to protect the player's ears. */
export const usualSettings: Settings = {
  ...usualPlaying,
  ...usualPractice,
  form: '12-bar blues',
  ownChart: '',
  ownTitle: null,
  key: 'A',
  bpm: 96,
  feel: 'shuffle',
  swing: null,
  reference: 'auto',
  levels: { all: -18, drums: 0, bass: 0, chords: 0, line: 0, click: 0 },
  choruses: null,
  countInBars: 1,
  language: null,
};

export const clampTo = (
  { lowest, highest }: { readonly lowest: number; readonly highest: number },
  value: number,
): number => Math.min(highest, Math.max(lowest, value));
