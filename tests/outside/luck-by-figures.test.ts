/**
 * One draw a figure, against brute force, a statistics library and published examples.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { holm, momentsOf, normalTail, poissonBinomial, tailFrom } from '../../src/core/base/statistics.ts';
import { hitsOfFigure, luckOf, type LuckEvent, type PitchEvent } from '../../src/core/grade/chance/draws.ts';
import { figureAt } from '../../src/core/grade/chance/figures.ts';
import { sumOfRotations } from '../../src/core/grade/chance/rotated-sum.ts';
import { mulberry32 } from '../bench/made-players.ts';

/** An event that counts where the draw is one of these pitch classes. */
const onOne = (figure: string, tones: readonly number[], hit = false): PitchEvent => ({
  figure,
  hit,
  hasEarlier: false,
  hasLater: false,
  counts: (drawn) => tones.includes(drawn),
});

/** A player's shares: these pitch classes evenly. */
const evenly = (...played: readonly number[]): readonly number[] =>
  Array.from({ length: 12 }, (_, pitchClass) => (played.includes(pitchClass) ? 1 / played.length : 0));

/** Every outcome of one draw a figure, counted one by one. */
function byEnumeration(events: readonly LuckEvent[], own: readonly number[]): readonly number[] {
  const figures = [...new Set(events.map((event) => event.figure))];
  const chances = new Array<number>(events.length + 1).fill(0);
  const draw = (place: number, drawn: readonly number[], weight: number): void => {
    if (place === figures.length) {
      const hits = events.filter((event) =>
        (event as PitchEvent).counts(drawn[figures.indexOf(event.figure)]!, -1, -1),
      ).length;
      chances[hits] = chances[hits]! + weight;
      return;
    }
    own.forEach((share, pitchClass) => {
      if (share > 0) draw(place + 1, [...drawn, pitchClass], weight * share);
    });
  };
  draw(0, [], 1);
  return chances;
}

describe('one draw a figure', () => {
  // The check value of the project's definition: one figure at three changes whose thirds are three different tones.
  it('one figure at three changes: P(1) = 0.4, P(2 or more) = 0', () => {
    const figure = [onOne('a', [4]), onOne('a', [9]), onOne('a', [11])];
    const weights = hitsOfFigure(figure, evenly(0, 2, 4, 7, 9));
    expect(weights[1]).toBeCloseTo(0.4, 12);
    expect(weights[2]! + weights[3]!).toBe(0);
  });

  it('equals every outcome counted one by one, on forty small takes', () => {
    const random = mulberry32(11);
    for (let take = 0; take < 40; take++) {
      const own = Array.from({ length: 12 }, (_, i) => (i < 5 ? random() : 0));
      const sum = own.reduce((total, share) => total + share, 0);
      const shares = own.map((share) => share / sum);
      const events = Array.from({ length: 6 }, () =>
        onOne(
          'abc'.charAt(Math.floor(random() * 3)),
          [0, 1, 2, 3, 4, 5].filter(() => random() < 0.4),
        ),
      );
      const { total } = luckOf(events, shares);
      byEnumeration(events, shares).forEach((chance, hits) => {
        expect(total.weights[hits - total.from] ?? 0).toBeCloseTo(chance, 12);
      });
    }
  });

  it('is the Poisson binomial where no figure comes twice', () => {
    const own = evenly(0, 3, 5, 7, 10);
    const sets = [[0], [0, 3], [5, 7, 10], [1], [0, 3, 5, 7]];
    const { total } = luckOf(
      sets.map((tones, i) => onOne(String(i), tones)),
      own,
    );
    poissonBinomial([0.2, 0.4, 0.6, 0, 0.8]).forEach((weight, hits) =>
      expect(total.weights[hits - total.from] ?? 0).toBeCloseTo(weight, 12),
    );
  });

  // By hand: the first go is the landing where it fits (C E G Bb of C7); where it does not, the second go is. Own notes
  // C, D, E evenly: the third is drawn first (1/3), or D is drawn first, which does not fit (1/3), and then E (1/3).
  it('gives luck the second go of an early note: 1/3 + 1/9', () => {
    const fits = [0, 4, 7, 10];
    const event: PitchEvent = {
      figure: 'a',
      hit: true,
      hasEarlier: false,
      hasLater: true,
      counts: (drawn, later) => (fits.includes(drawn) ? drawn === 4 : later === 4),
    };
    expect(hitsOfFigure([event], evenly(0, 2, 4))[1]).toBeCloseTo(1 / 3 + 1 / 9, 12);
  });

  it('counts events of known chances by one draw too', () => {
    const figure = [0.2, 0.5].map((chance) => ({ figure: 'a', hit: true, chance }));
    // The draw is under 0.2 (both), between 0.2 and 0.5 (one), or above (none).
    expect(hitsOfFigure(figure, evenly(0)).map((weight) => Number(weight.toFixed(12)))).toEqual([
      0.5, 0.3, 0.2,
    ]);
  });
});

describe('the figure that ends at a note', () => {
  const figures = (...line: readonly number[]) => {
    const notes = line.map((pitchClass) => ({ pitchClass }));
    return line.map((_, index) => figureAt(notes, index));
  };

  it('is its pitch class and the two before it', () => {
    expect(figures(4, 0, 7, 9)).toEqual(['4', '4 0', '4 0 7', '0 7 9']);
  });

  // By hand: the riff 4 0 7 | 4 0 7 | 4 0 7; its first 4 is the 4 after 0 7, its first 0 the one after 7 4.
  it('of the first notes of a riff is the one that they end when the riff comes again', () => {
    expect(figures(4, 0, 7, 4, 0, 7, 4, 0, 7).slice(0, 3)).toEqual(['0 7 4', '7 4 0', '4 0 7']);
  });

  // The 4 comes again, but goes on to 2: that is another figure.
  it('of first notes that come again with others after them is their own', () => {
    expect(figures(4, 0, 7, 4, 2, 9, 4, 2)[0]).toBe('4');
  });
});

describe('the Poisson binomial against scipy.stats.poisson_binom', () => {
  const { cases } = JSON.parse(
    readFileSync(
      fileURLToPath(new URL('../../fixtures/poisson-binomial/cases.json', import.meta.url)),
      'utf8',
    ),
  ) as { cases: { chances: number[]; pmf: number[]; tails: number[] }[] };

  it.each(cases.map((one) => [one.chances.length, one] as const))(
    '%i events',
    (_, { chances, pmf, tails }) => {
      const events = chances.map((chance, i) => ({ figure: String(i), hit: false, chance }));
      const { total } = luckOf(events, evenly(0));
      pmf.forEach((weight, hits) => expect(total.weights[hits - total.from] ?? 0).toBeCloseTo(weight, 10));
      tails.forEach((tail, hits) => expect(tailFrom(total, hits)).toBeCloseTo(tail, 10));
      const { mean, variance } = momentsOf(total);
      expect(mean).toBeCloseTo(
        chances.reduce((sum, chance) => sum + chance, 0),
        10,
      );
      expect(variance).toBeCloseTo(
        chances.reduce((sum, chance) => sum + chance * (1 - chance), 0),
        10,
      );
    },
  );
});

describe('Holm', () => {
  // The example that articles on the Holm-Bonferroni method print: 0.01, 0.04, 0.03, 0.005 at 5 % rejects the first
  // and the fourth alone. Corrected by hand: 4 x 0.005, 3 x 0.01, 2 x 0.03, and 0.04 not under the one before.
  it('corrects the published example', () => {
    const corrected = holm([0.01, 0.04, 0.03, 0.005]);
    expect(corrected.map((p) => Number(p.toFixed(12)))).toEqual([0.03, 0.06, 0.06, 0.02]);
    expect(corrected.map((p) => p < 0.05)).toEqual([true, false, false, true]);
  });

  it('leaves one p as it is, and none above 1', () => {
    expect(holm([0.2])).toEqual([0.2]);
    expect(holm([0.9, 0.8, 0.7])).toEqual([1, 1, 1]);
    expect(holm([])).toEqual([]);
  });
});

describe('the tail of the normal distribution', () => {
  // Any table of it: 1.645 leaves 5 %, 1.96 leaves 2.5 %, 2.576 leaves 0.5 %.
  it.each([
    [0, 0.5],
    [1.644854, 0.05],
    [1.959964, 0.025],
    [2.575829, 0.005],
    [-1.644854, 0.95],
  ])('%f', (z, tail) => expect(normalTail(z)).toBeCloseTo(tail, 5));
});

describe('a sum of rotated parts', () => {
  // By hand: two parts, each 0, 1 or 2 by its rotation. A sum of 4 comes in one of nine ways, of 3 or more in three.
  it('counts every way', () => {
    const rotations = [Float64Array.of(0, 0), Float64Array.of(1, 1), Float64Array.of(2, 2)];
    expect(sumOfRotations(rotations, Float64Array.of(2, 2)).upper).toBeCloseTo(1 / 9, 10);
    expect(sumOfRotations(rotations, Float64Array.of(2, 1)).upper).toBeCloseTo(3 / 9, 10);
    expect(sumOfRotations(rotations, Float64Array.of(0, 0)).lower).toBeCloseTo(1 / 9, 10);
    expect(sumOfRotations(rotations, Float64Array.of(2, 2)).variance).toBeCloseTo(4 / 3, 10);
  });
});
