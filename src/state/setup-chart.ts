/** The chart that settings ask for: read, laid on time, and what a form or an edited text changes of them. */
import { timelineOf } from '../core/timeline-of-order.ts';
import type { Chart } from '../core/chart/chart.ts';
import { formChart, listForms } from '../core/chart/forms.ts';
import { parseChart } from '../core/chart/parse-chart.ts';
import { practiceChart } from '../core/chart/practice-chart.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { writeChart } from '../core/chart/write-chart.ts';
import { keyOn, parseKey, writeKey } from '../core/music/keys.ts';
import type { Outcome } from '../core/base/outcome.ts';
import { bandPractice } from './practice-settings.ts';
import type { Settings } from './settings.ts';

/** Fails for a stored form that is no longer built in. */
export const chartOf = ({ form, key, ownChart }: Settings): Outcome<Chart> =>
  form === null ? parseChart(ownChart) : formChart(form, key);

/** The chart, as it is practised, on time from second 0 on. @param swing that counts now, 0.5 to 0.75 */
export function timelineOfSettings(
  { bpm, feel, practice, aim }: Settings,
  chart: Chart,
  swing: number,
): Outcome<Timeline> {
  const chartText = writeChart(practiceChart(chart, practice));
  const { rise, trade } = bandPractice(practice, chart, aim);
  return timelineOf({
    chartText,
    bpm,
    feel,
    swing,
    firstBeatSeconds: 0,
    ...(rise && { rise }),
    ...(trade && { turnBars: trade.bars }),
  });
}

/** What a built-in form changes: it brings its feel and tempo, and keeps the tonic. Throws for a name of none. */
export function settingsOfForm(name: string, settings: Settings): Partial<Settings> {
  const form = listForms().find((known) => known.name === name);
  if (!form) throw new RangeError(`no form is called ${name}`);
  const old = parseKey(settings.key);
  const key = keyOn(old?.tonicPitchClass ?? 0, form.mode, old?.tonic);
  const { feel, bpm } = form;
  const practice = { ...settings.practice, loop: null };
  return { form: name, key: writeKey(key), feel, bpm, swing: null, practice };
}

/** An edited chart keeps its title until its text gives another, or is gone. */
export function titleAfter(text: string, { ownChart, ownTitle }: Settings): string | null {
  const written = (chart: string) => /^title:\s*(.*)$/im.exec(chart)?.[1] ?? null;
  const renamed = written(text) !== null && written(text) !== written(ownChart);
  return text.trim() === '' || renamed ? null : ownTitle;
}
