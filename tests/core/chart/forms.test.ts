import { english } from '../../english.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FORMS, FORM_GROUPS } from '../../../src/core/chart/form-data.ts';
import { formChart, listForms, readChartArgument } from '../../../src/core/chart/forms.ts';
import { playedBars } from '../../../src/core/chart/play-order.ts';
import { transposeChart } from '../../../src/core/chart/transpose-chart.ts';
import { writeChart } from '../../../src/core/chart/write-chart.ts';
import { MAJOR_TONICS, MINOR_TONICS, keyOn } from '../../../src/core/music/keys.ts';
import { pitchClassOf, wrapPitchClass } from '../../../src/core/music/spelling.ts';
import { chartOf, chartText, playedText } from './charts.ts';

const form = (name: string, key: string) => {
  const chart = formChart(name, key);
  if (!chart.ok) throw new Error(english(chart.problem));
  return chart.value;
};
const roots = (name: string, key: string) => playedText(form(name, key)).replaceAll(':4', '');

describe('built-in forms', () => {
  it('have the bars that their names say', () => {
    for (const { name, bars } of listForms()) {
      const said = /^(\d+)-bar/.exec(name)?.[1] ?? (name.includes('blues') ? '12' : null);
      // Hypermeter of common practice: everything else comes in fours.
      if (said === null) expect(bars % 4, name).toBe(0);
      else expect([name, bars]).toEqual([name, Number(said)]);
    }
  });

  it('stand together by what they train, each group with some', () => {
    const groups = listForms().map(({ group }) => group);
    expect([...new Set(groups)]).toEqual(FORM_GROUPS);
    expect(groups).toEqual(FORM_GROUPS.flatMap((group) => groups.filter((other) => other === group)));
  });

  it('are found by each of their names, and no two forms by the same name', () => {
    const names = FORMS.flatMap(({ name, aliases }) => [name, ...aliases]);
    for (const name of names) expect(formChart(name, 'C').ok, name).toBe(true);
    const words = names.map((name) => (name.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).sort().join(' '));
    const twice = words.filter((word, i) => words.indexOf(word) !== i);
    // A form may be asked for with or without its hyphens; no two forms may answer to one name.
    for (const word of twice) {
      const owners = FORMS.filter(({ name, aliases }) =>
        [name, ...aliases].some(
          (called) => (called.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).sort().join(' ') === word,
        ),
      );
      expect(owners, word).toHaveLength(1);
    }
  });

  it('have the usual shares of chords: I in 7 bars, IV in 3, V in 2', () => {
    const bars = roots('12-bar blues', 'E').split(' | ');
    const count = (symbol: string) => bars.filter((bar) => bar === symbol).length;
    expect([count('E7'), count('A7'), count('B7')]).toEqual([7, 3, 2]);
  });

  it('are spelled in the key', () => {
    expect(roots('12-bar blues', 'Gb')).toContain('Cb7');
    expect(roots('12-bar blues', 'F#')).toContain('C#7');
    expect(roots('major ii-V-I', 'Db')).toBe('Ebm7 | Ab7 | Dbmaj7 | Dbmaj7');
    expect(roots('minor ii-V-I', 'G')).toBe('Am7b5 | D7b9 | Gm6 | Gm6');
    expect(roots('jazz blues', 'F')).toContain('Bdim7');
    expect(roots('jazz blues', 'E')).toContain('A#dim7');
    expect(form('minor blues', 'Bb').key).toMatchObject({ tonic: 'Bb', mode: 'minor' });
  });

  it('sound alike in every key', () => {
    for (const { name, mode } of listForms()) {
      const home = soundsOf(form(name, 'C'), 0);
      for (const tonic of mode === 'major' ? MAJOR_TONICS : MINOR_TONICS) {
        const chart = form(name, tonic);
        expect(chart.key.tonic).toBe(tonic);
        expect(soundsOf(chart, chart.key.tonicPitchClass)).toEqual(home);
        expect(writeChart(chart)).not.toMatch(/[A-G](bb|##)/);
      }
    }
  });
});

describe('what a player gives for a chart', () => {
  it.each([
    ['form:12-bar blues in Bb', 'Bb'],
    ['form: 12 Bar Blues in bb', 'Bb'],
    ['FORM:blues', 'C'],
    ['form:ii–V–I in A', 'A'],
    ['form:AABA in Eb', 'Eb'],
    ['form:minor blues in A minor', 'A'],
    ['| G7 | C7 | G7 | D7 |', 'G'],
  ])('%s is a chart in %s', (text, tonic) => {
    const chart = readChartArgument(text);
    expect(chart.ok && chart.value.key.tonic).toBe(tonic);
  });
  it.each([
    ['form:waltz in C', 'There is no form “waltz”; the forms are one-chord vamp, '],
    ['form:12-bar blues in H', '“H” is not a key for the 12-bar blues'],
    ['form:12-bar blues in A minor', 'The 12-bar blues is in major, not A minor'],
    ['| H7 |', 'Bar 1:'],
  ])('%s is refused: %s', (text, sentence) => {
    const chart = readChartArgument(text);
    expect(chart.ok ? '' : english(chart.problem)).toContain(sentence);
  });
});

/** Everything that sounds, counted from a tonic. */
const soundsOf = (chart: Parameters<typeof playedBars>[0], tonic: number) =>
  playedBars(chart).map(({ bar }) =>
    bar.chords.map(({ chord, beats }) => ({
      beats,
      tones: chord?.tones.map((tone) => [wrapPitchClass(tone.pitchClass - tonic), tone.degree, tone.role]),
      bass: chord?.bass ? wrapPitchClass(pitchClassOf(chord.bass) - tonic) : null,
    })),
  );

describe('transposing a chart', () => {
  it('changes nothing but names', () => {
    fc.assert(
      fc.property(chartText, fc.integer({ min: 0, max: 11 }), (text, pitchClass) => {
        const chart = chartOf(text);
        const moved = transposeChart(chart, keyOn(pitchClass, chart.key.mode));
        expect(moved.key.tonicPitchClass).toBe(pitchClass);
        expect(soundsOf(moved, pitchClass)).toEqual(soundsOf(chart, chart.key.tonicPitchClass));
        expect(chartOf(writeChart(moved))).toEqual(moved);
        const back = transposeChart(moved, chart.key);
        expect(soundsOf(back, 0)).toEqual(soundsOf(chart, 0));
      }),
      { numRuns: 100 },
    );
  });
  it('moves the bass with the root and keeps the mode', () => {
    const moved = transposeChart(chartOf('key: C\n| C7/E | Am7/G |'), keyOn(3, 'minor'));
    expect(playedText(moved)).toBe('Eb7/G:4 | Cm7/Bb:4');
    expect(moved.key).toMatchObject({ tonic: 'Eb', mode: 'major' });
  });
});
