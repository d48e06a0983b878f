/** What a lesson sheet asks of the set-up, and what of a set-up goes into a sheet. */
import { isFormArgument } from '../core/chart/forms.ts';
import { AIM_CHOICES, USUAL_AIM } from '../core/grade/aims/aim-choices.ts';
import type { LessonSheet, SheetFile } from '../core/lesson/sheet.ts';
import { writeKey } from '../core/music/keys.ts';
import { instrumentDefaults } from './instrument-defaults.ts';
import { usualPractice } from './practice-settings.ts';
import type { Settings } from './settings.ts';

/**
 * The settings that play a sheet: the whole form in its key and tempo, nothing of it practised apart.
 * @param own the player's; an instrument that the sheet asks for and that is in the hands already stays as it is shown
 */
export function settingsOfSheet({ file, chart, aims }: LessonSheet, own: Settings): Partial<Settings> {
  const { id } = aims[0]!;
  return {
    ...(isFormArgument(file.chart)
      ? { form: chart.title }
      : { form: null, ownChart: file.chart, ownTitle: chart.title ?? file.title }),
    key: writeKey(chart.key),
    bpm: file.tempo,
    feel: file.feel,
    swing: null,
    choruses: file.choruses,
    aim: AIM_CHOICES.some((choice) => choice.id === id) ? id : USUAL_AIM,
    ...usualPractice,
    ...(file.instrument !== undefined &&
      file.instrument !== own.instrument &&
      instrumentDefaults(file.instrument)),
  };
}

/** The chart, feel and tempo of a set-up, as a sheet writes them. */
export const sheetChart = ({
  form,
  key,
  ownChart,
  bpm,
  feel,
}: Settings): Pick<SheetFile, 'chart' | 'tempo' | 'feel'> => ({
  chart: form === null ? ownChart : `form:${form} in ${key}`,
  tempo: bpm,
  feel,
});
