// @vitest-environment happy-dom
/** How a written page is laid into lines, and what hangs under one beam (common practice). */
import { beforeAll, describe, expect, it } from 'vitest';
import { beamsIn } from '../../../src/ui/notation/staff-notes.ts';
import { planSystems } from '../../../src/ui/notation/plan-systems.ts';
import { signatureOf, standingSignature } from '../../../src/ui/notation/draw-system.ts';
import { chordText } from '../../../src/ui/notation/chord-text.ts';
import { de } from '../../../src/core/words/de.ts';
import { en } from '../../../src/core/words/en.ts';
import { keyOf } from '../../../src/core/music/keys.ts';
import { PAGES, pageOf, type Note } from '../../core/notation/scores.ts';

const third = 1 / 3;
const CHART = 'key: C\n| C7 | F7 | C7 | G7 | C7 | F7 | C7 | G7 |';
const beams = (notes: readonly Note[], chart = CHART) => {
  const page = pageOf(chart, notes);
  return beamsIn(page, page.line.measures[0]!.signs);
};
const evenly = (from: number, count: number, beats: number): Note[] =>
  Array.from({ length: count }, (_, i) => [from + i * beats, beats, 64 + (i % 5)]);

/** There is no canvas here: every sign is taken to be so wide, which is enough to count lines. */
beforeAll(() => {
  HTMLCanvasElement.prototype.getContext = (() => ({
    measureText: () => ({
      width: 10,
      actualBoundingBoxAscent: 5,
      actualBoundingBoxDescent: 5,
      actualBoundingBoxLeft: 0,
      actualBoundingBoxRight: 10,
      fontBoundingBoxAscent: 5,
      fontBoundingBoxDescent: 5,
    }),
  })) as never;
});

describe('beams', () => {
  it('join four eighths of half a bar', () => {
    expect(beams(evenly(0, 8, 0.5))).toEqual([
      [0, 1, 2, 3],
      [4, 5, 6, 7],
    ]);
  });

  it('join by beats where there are sixteenths or triplets', () => {
    expect(beams([...evenly(0, 4, 0.25), ...evenly(1, 2, 0.5), ...evenly(2, 3, third), [3, 1, 64]])).toEqual([
      [0, 1, 2, 3],
      [4, 5],
      [6, 7, 8],
    ]);
  });

  it('do not reach over a rest or a quarter', () => {
    expect(
      beams([
        [0, 0.5, 64],
        [0.5, 1, 65],
        [1.5, 0.5, 64],
        [2, 0.5, 64],
        [3, 1, 64],
      ]),
    ).toEqual([]);
  });

  it('join three eighths of a dotted beat', () => {
    expect(beams(evenly(0, 6, third), 'meter: 6/8\nkey: C\n| C7 |')).toEqual([
      [0, 1, 2],
      [3, 4, 5],
    ]);
  });
});

describe('lines', () => {
  const page = pageOf(CHART, evenly(0, 64, 0.5));

  it('hold every measure once, in order, and fill the width', () => {
    for (const width of [450, 700, 1000]) {
      const systems = planSystems(page, width);
      expect(systems.flatMap(({ from, widths }) => widths.map((_, i) => from + i))).toEqual(
        page.line.measures.map((_, i) => i),
      );
      for (const { head, widths } of systems.slice(0, -1))
        expect(head + widths.reduce((sum, one) => sum + one, 0)).toBeCloseTo(width - 1, 6);
    }
  });

  it('are more on a narrow screen, and never hold more than four measures', () => {
    const narrow = planSystems(page, 450);
    const wide = planSystems(page, 1400);
    expect(narrow.length).toBeGreaterThan(wide.length);
    expect(Math.max(...wide.map(({ widths }) => widths.length))).toBeLessThanOrEqual(4);
  });
});

describe('choruses', () => {
  it('begin a line', () => {
    const page = pageOf('key: C\n| C7 | F7 | C7 |', evenly(0, 30, 1));
    const starts = planSystems(page, 2000).map(({ from }) => from);
    expect(starts).toEqual([0, 3, 6]);
  });
});

describe('signatures', () => {
  it.each([
    ['Bb', 'major', 'Bb'],
    ['F#', 'minor', 'A'],
    ['Eb', 'minor', 'Gb'],
    ['C', 'minor', 'Eb'],
  ] as const)('%s %s is written as that of %s', (tonic, mode, signature) => {
    expect(signatureOf(keyOf({ tonic, mode }))).toBe(signature);
  });

  it('a key that would need eight signs has none', () => {
    expect(signatureOf(keyOf({ tonic: 'Db', mode: 'minor' }))).toBe('C');
  });

  it('stand until another comes', () => {
    const page = PAGES.find(({ name }) => name.includes('change of key'))!.page();
    expect([0, 1, 2, 3].map((index) => standingSignature(page, index))).toEqual(['Bb', 'Bb', 'G', 'G']);
  });
});

describe('chords', () => {
  it('are set with their signs, in the letters of the language', () => {
    expect(chordText('Bbm7b5', en)).toBe('B♭m7♭5');
    expect(chordText('Bbm7b5', de)).toBe('B♭m7♭5'.replace('B♭', chordText('Bb', de)));
    expect(chordText('B7', de)).toBe('H7');
    expect(chordText('G7/B', en)).toBe('G7/B');
    expect(chordText(null, en)).toBe('N.C.');
  });
});
