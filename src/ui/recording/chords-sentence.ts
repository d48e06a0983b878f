/** What the search for chords came to, where nothing of it stands: which chart the recording is graded by then. */
import { playedBars } from '../../core/chart/play-order.ts';
import { describeProblem } from '../../core/words/problem.ts';
import type { Words } from '../../core/words/words.ts';
import type { RecordingChords } from '../../state/recording-chords.svelte.ts';
import type { Setup } from '../../state/setup.svelte.ts';
import type { FormChoice } from '../chart/form-choice.ts';
import { signsInText } from '../parts/engrave.ts';

/** @returns null while it is looked for, or where what was found stands */
export function chordsSentence(
  { result, finding }: RecordingChords,
  setup: Setup,
  forms: readonly FormChoice[],
  words: Words,
): string | null {
  if (result === null || finding.standing !== null) return null;
  const { chart, settings, title } = setup;
  const bars = chart.ok ? playedBars(chart.value).length : 0;
  const form = forms.find(({ name }) => name === settings.form);
  const told = { chart: signsInText(form?.title ?? title), bars };
  const { recording } = words;
  if (result === 'found') return recording.anotherChart(told);
  const why =
    result === 'alone' || result === 'stopped' ? recording.noChords[result] : describeProblem(result, words);
  return `${why} ${recording.chartStays(told)}`;
}
