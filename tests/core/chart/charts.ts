/** Charts for the tests: made at random for the properties, and read or refused in one word. */
import { english } from '../../english.ts';
import fc from 'fast-check';
import type { Chart } from '../../../src/core/chart/chart.ts';
import { METERS } from '../../../src/core/chart/chart.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { playedBars } from '../../../src/core/chart/play-order.ts';

export function chartOf(text: string): Chart {
  const chart = parseChart(text);
  if (!chart.ok) throw new Error(english(chart.problem));
  return chart.value;
}

export function refusalOf(text: string): string {
  const chart = parseChart(text);
  if (chart.ok) throw new Error(`${text} was read`);
  return english(chart.problem);
}

/** The chorus as played: "C7:4 | F7:2 G7:2". */
export const playedText = (chart: Chart): string =>
  playedBars(chart)
    .map(({ bar }) => bar.chords.map(({ chord, beats }) => `${chord?.symbol ?? 'N.C.'}:${beats}`).join(' '))
    .join(' | ');

const QUALITIES = [
  '',
  'm7',
  '7',
  'maj7',
  'm7b5',
  'dim7',
  '6/9',
  '7alt',
  '13#11',
  'sus4',
  'Δ',
  '-7',
  '7(b9,b13)',
  '7/E',
  '/Bb',
];
const symbol = fc
  .tuple(fc.constantFrom('C', 'F#', 'Bb', 'Eb', 'G', 'A'), fc.constantFrom(...QUALITIES))
  .map(([root, quality]) => root + quality);
const word = fc.oneof({ weight: 8, arbitrary: symbol }, { weight: 1, arbitrary: fc.constant('N.C.') });

const barText = (beats: number) =>
  fc.oneof(
    { weight: 4, arbitrary: fc.array(word, { minLength: 1, maxLength: 4 }).map((words) => words.join(' ')) },
    {
      weight: 2,
      arbitrary: fc
        .tuple(
          word,
          fc.array(fc.oneof(fc.constant('/'), word), { minLength: beats - 1, maxLength: beats - 1 }),
        )
        .map(([first, rest]) => [first, ...rest].join(' ')),
    },
    { weight: 1, arbitrary: fc.tuple(word, word).map(([a, b]) => `${a}:${beats - 0.5} ${b}:0.5`) },
  );

/** Chart text that is right: headings, sections, repeats with endings, every way to write a bar. */
export const chartText: fc.Arbitrary<string> = fc
  .record({
    meter: fc.constantFrom(...METERS),
    key: fc.option(fc.constantFrom('C', 'Bb', 'F# minor', 'Gb', 'E')),
    title: fc.option(fc.constantFrom('Number one', 'Étude 2')),
    feel: fc.option(fc.constantFrom('shuffle', 'slow 12/8 blues')),
    swing: fc.option(fc.constantFrom('0.5', '0.62', '0.75')),
    tempo: fc.option(fc.constantFrom('60', '132.5')),
    pickup: fc.boolean(),
  })
  .chain((head) => {
    const { beatsPerBar } = head.meter;
    const bars = (least: number) => fc.array(barText(beatsPerBar), { minLength: least, maxLength: 6 });
    const section = fc.record({
      name: fc.option(fc.constantFrom('A', 'B2', 'Bridge', 'Last time')),
      feel: fc.option(fc.constantFrom('bossa', 'two beat')),
      plain: bars(1),
      repeated: fc.option(fc.tuple(bars(1), fc.constantFrom('', ' x3'))),
      endings: fc.option(fc.tuple(bars(1), bars(1), bars(1))),
    });
    return fc.array(section, { minLength: 1, maxLength: 3 }).map((sections) => {
      const lines = [`meter: ${head.meter.written}`];
      for (const name of ['key', 'title', 'feel', 'swing', 'tempo'] as const) {
        if (head[name] !== null) lines.push(`${name}: ${head[name]}`);
      }
      if (head.pickup) lines.push('pickup: 1', '| G7 |');
      sections.forEach((part, index) => {
        if (part.name !== null) lines.push(`[${part.name}]`);
        if (part.feel !== null && (part.name !== null || index > 0)) lines.push(`feel: ${part.feel}`);
        lines.push(`| ${part.plain.join(' | ')} |`);
        if (part.repeated) lines.push(`|: ${part.repeated[0].join(' | ')} :|${part.repeated[1]}`);
        if (part.endings) {
          const [body, first, second] = part.endings.map((list) => list.join(' | '));
          lines.push(`|: ${body} |[1 ${first} :|[2 ${second} ||`);
        }
      });
      return lines.join('\n');
    });
  });
