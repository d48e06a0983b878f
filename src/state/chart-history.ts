/** What the chart on the stand and its practice were before, step by step, so that each change of them can be undone. */
import type { Settings } from './settings.ts';

const CHART = ['form', 'ownChart', 'ownTitle', 'key', 'bpm', 'feel', 'swing', 'practice'] as const;
type ChartSettings = Pick<Settings, (typeof CHART)[number]>;

/** Letters typed one after the other, or turns of the tempo, are undone together. */
export type Flow = 'typing' | 'tempo' | null;

export interface ChartStep {
  readonly before: ChartSettings;
  readonly flow: Flow;
}

/** More steps than anyone goes back. */
const MOST_STEPS = 100;

/** The steps with what a change replaces, where it changes the chart. */
export function withStep(
  steps: readonly ChartStep[],
  before: Settings,
  change: Partial<Settings>,
  flow: Flow,
): readonly ChartStep[] {
  const touches = CHART.some((name) => name in change && !isSame(change[name], before[name]));
  const goesOn = flow !== null && steps.at(-1)?.flow === flow;
  if (!touches || goesOn) return steps;
  const { form, ownChart, ownTitle, key, bpm, feel, swing, practice } = before;
  const step = { before: { form, ownChart, ownTitle, key, bpm, feel, swing, practice }, flow };
  return [...steps, step].slice(-MOST_STEPS);
}

/** Practice settings are written anew at each change: they are compared by what they hold. */
const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
