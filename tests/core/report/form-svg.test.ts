/** The image of the form, read back by an XML parser that is not ours (@rgrove/parse-xml, XML 1.0). */
import { parseXml, XmlElement } from '@rgrove/parse-xml';
import { describe, expect, it } from 'vitest';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { grade } from '../../../src/core/grade.ts';
import { formSvg } from '../../../src/core/report/form-svg.ts';
import { wordsOf } from '../../../src/core/words/catalogues.ts';

const chart = parseChart('| D7 | G7 | Bb7 | A7 / E7 / |');
if (!chart.ok) throw new Error('The chart of this test can’t be read.');

/** F# over D7 (third), G over G7 (root), E over Bb7 (no chord tone), a rest over A7 and E7, and F# as D7 comes again. */
const report = grade(
  [
    [0, 66],
    [1, 67],
    [2, 64],
    [4, 66],
  ].map(([bar = 0, midi = 0]) => ({
    onsetSeconds: 2 * bar,
    offsetSeconds: 2 * bar + 1,
    midi,
    confidence: 1,
    levelDb: null,
    attack: 'struck' as const,
    bendSemitones: 0,
    vibrato: null,
    second: null,
  })),
  timelineFromTempo(chart.value, { bpm: 120 }),
  { source: { kind: 'notes', durationSeconds: 10, sampleRate: null }, referenceHz: 440 },
);

const HOSTILE = '</text><script>alert(1)</script>"\'&';
const elements = (from: XmlElement, name: string): readonly XmlElement[] =>
  from.children.flatMap((child) =>
    child instanceof XmlElement ? [...(child.name === name ? [child] : []), ...elements(child, name)] : [],
  );
const read = (language: 'en' | 'de') => parseXml(formSvg(report, HOSTILE, wordsOf(language))).root!;

describe('the image of the form', () => {
  it('has every bar with its number and its chords, four a row', () => {
    const texts = elements(read('en'), 'text').map(({ text }) => text);
    for (const wanted of ['1', '2', '3', '4', 'D7', 'G7', 'Bb7', 'A7  E7']) expect(texts).toContain(wanted);
  });

  it('spells chords as the language does: German B for Bb', () => {
    expect(elements(read('de'), 'text').map(({ text }) => text)).toContain('B7');
  });

  it('marks thirds full, other chord tones empty, other tones dashed, and rests by a dot', () => {
    const marks = elements(read('en'), 'rect').filter(({ attributes }) => attributes['width'] === '34');
    expect(
      marks.map(({ attributes }) => [attributes['fill'], attributes['stroke-dasharray'] !== undefined]),
    ).toEqual([
      ['#111', false],
      ['#111', false],
      ['none', false],
      ['none', true],
    ]);
    expect(elements(read('en'), 'circle')).toHaveLength(2);
  });

  it('takes a title as text whatever it holds', () => {
    const root = read('en');
    expect(elements(root, 'script')).toEqual([]);
    expect(elements(root, 'text')[0]?.text).toBe(HOSTILE);
  });
});
