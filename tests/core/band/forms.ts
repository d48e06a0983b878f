/** Forms that the band's tests play over. */
import { english } from '../../english.ts';
import { readChartArgument } from '../../../src/core/chart/forms.ts';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { bandForm, type BandForm } from '../../../src/core/band/form.ts';
import type { BandSettings } from '../../../src/core/band/settings.ts';

/** A chart text, or "form:NAME in KEY", as a form. */
export function formOf(text: string): BandForm {
  const chart = readChartArgument(text);
  if (!chart.ok) throw new Error(english(chart.problem));
  return bandForm(timelineFromTempo(chart.value, { bpm: 120 }));
}

export const settingsOf = (changes: Partial<BandSettings> = {}): BandSettings => ({
  feel: 'swing',
  bpm: 120,
  swing: null,
  seed: 1,
  countInBars: 1,
  ...changes,
});

/** Changes of several kinds: blues, ii–V–I in major and minor, slash chords, suspensions, alterations. */
export const chartTexts: readonly string[] = [
  'form:12-bar blues in D',
  'form:jazz blues in Bb',
  'form:minor blues in A',
  '| Dm7 G7 | Cmaj7 | Bm7b5 E7b9 | Am7 | Dm7 | G7alt | C6/9 A7b9 | Dm7 G7 |',
  '| Ebmaj7 | D7/F# | Gm7 | C7sus4 C7 | Fm11 | Bb13 | Eb/Bb | Bb7#11 |',
  '| E | E | A/E | B7 |',
  '| Cm(maj7) | F#dim7 | Gaug7 | N.C. |',
];
