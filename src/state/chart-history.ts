/** What the chart on the stand was before, step by step, so that each change of it can be undone. */
import type { Settings } from './settings.ts';

const CHART = ['form', 'ownChart', 'ownTitle', 'key', 'bpm', 'feel', 'swing'] as const;
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
  const touches = CHART.some((name) => name in change && change[name] !== before[name]);
  const goesOn = flow !== null && steps.at(-1)?.flow === flow;
  if (!touches || goesOn) return steps;
  const { form, ownChart, ownTitle, key, bpm, feel, swing } = before;
  const step = { before: { form, ownChart, ownTitle, key, bpm, feel, swing }, flow };
  return [...steps, step].slice(-MOST_STEPS);
}
