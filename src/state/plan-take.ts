/** The plan of a take, from what is set up when it begins. */
import type { Chart } from '../core/chart/chart.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { writeKey } from '../core/music/keys.ts';
import type { Outcome } from '../core/base/outcome.ts';
import { planWithBacking, type ChosenBacking } from './chosen-backing.ts';
import { bandPractice } from './practice-settings.ts';
import type { Settings } from './settings.ts';
import { bandSeed } from './take.ts';
import type { TakePlan } from './take-plan.ts';
import { keptSetup } from './take-setup.ts';

interface SetUp {
  readonly settings: Settings;
  readonly chart: Outcome<Chart>;
  /** null where the band plays. */
  readonly backing: ChosenBacking | null;
  readonly title: string;
  /** The swing that counts now, 0.5 to 0.75. */
  readonly swing: number;
}

/** All that a take needs of a set-up. @param timeline its chart on time */
export function planTake(
  { settings, chart, backing, title, swing }: SetUp,
  timeline: Timeline,
  now: Date,
): TakePlan {
  const { bpm, feel, countInBars, levels, reference, instrument, capo, aim, practice } = settings;
  const startedAt = now.toISOString();
  // A recording in the band's place plays as it is.
  const practised = chart.ok && backing === null ? bandPractice(practice, chart.value, aim) : {};
  const plan: TakePlan = {
    timeline,
    band: { feel, bpm, swing, seed: bandSeed(startedAt), countInBars, ...practised },
    levels,
    details: {
      title,
      setup: { ...keptSetup(settings) },
      startedAt,
      source: 'microphone',
      chartText: timeline.chart,
      key: writeKey(timeline.key),
      bpm,
      feel,
      swing,
      reference,
      instrument,
      capo,
      aim,
      ...practised,
    },
  };
  return backing === null ? plan : planWithBacking(plan, backing);
}
