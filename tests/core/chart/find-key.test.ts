import { english } from '../../english.ts';
import { describe, expect, it } from 'vitest';
import { findKey } from '../../../src/core/chart/find-key.ts';
import { formChart, listForms } from '../../../src/core/chart/forms.ts';
import { playedBars } from '../../../src/core/chart/play-order.ts';
import { chartOf } from './charts.ts';

const keyOf = (text: string) => {
  const { tonic, mode } = chartOf(text).key;
  return `${tonic} ${mode}`;
};

describe('the key of a chart that writes none', () => {
  // Progressions that harmony textbooks use as examples, with the key they name. Common practice, from memory.
  it.each([
    ['| C | Am | F | G7 |', 'C major'],
    ['| G7 | C7 | G7 | D7 |', 'G major'],
    ['| A7 | A7 | D7 | A7 | E7 | D7 | A7 | E7 |', 'A major'],
    ['| Dm7 | G7 | Cmaj7 | Cmaj7 |', 'C major'],
    ['| Dm7 | G7 |', 'D minor'],
    ['| Bm7b5 | E7b9 | Am7 | Am7 |', 'A minor'],
    ['| Am7 | Dm7 | Am7 | E7 |', 'A minor'],
    ['| Cm7 | F7 | Bbmaj7 | Ebmaj7 | Am7b5 | D7 | Gm6 | Gm6 |', 'G minor'],
    ['| Ebmaj7 | Cm7 | Fm7 | Bb7 |', 'Eb major'],
    ['| Gm7 C7 | Fmaj7 | Gm7 C7 | F6 |', 'F major'],
    ['| Db7 | Db7 | Gb7 | Db7 | Ab7 | Gb7 | Db7 | Ab7 |', 'Db major'],
    ['| Em7 | Em7 | Em7 | Em7 |', 'E minor'],
    ['| N.C. |', 'C major'],
  ])('%s is in %s', (text, key) => expect(keyOf(text)).toBe(key));

  it('finds the key of each built-in form in several keys', () => {
    for (const form of listForms()) {
      for (const tonic of ['C', 'F#', 'Eb', 'A']) {
        const chart = formChart(form.name, tonic);
        if (!chart.ok) throw new Error(english(chart.problem));
        const found = findKey(playedBars(chart.value).flatMap(({ bar }) => bar.chords));
        expect([form.name, found.tonicPitchClass, found.mode]).toEqual([
          form.name,
          chart.value.key.tonicPitchClass,
          chart.value.key.mode,
        ]);
      }
    }
  });
});
