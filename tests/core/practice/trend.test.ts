import { describe, expect, it } from 'vitest';
import { armitageZ, findTrend } from '../../../src/core/practice/trend.ts';

describe('the trend of a share over takes', () => {
  // A. Agresti, Categorical Data Analysis: alcohol and malformation, scores 0, 0.5, 1.5, 4, 7; z² = 6.57 (from memory).
  it('gives the published statistic without the widening', () => {
    const hits = [48, 38, 5, 1, 1];
    const misses = [17066, 14464, 788, 126, 37];
    const scores = [0, 0.5, 1.5, 4, 7];
    const z = armitageZ(
      hits.map((n, i) => ({ hits: n, of: n + misses[i]!, score: scores[i]! })),
      false,
    )!;
    expect(z ** 2).toBeCloseTo(6.57, 2);
  });

  it('tells a rise and a fall', () => {
    const rising = [2, 4, 6, 8, 10].map((hits) => ({ hits, of: 12 }));
    expect(findTrend(rising)).toMatchObject({ direction: 'rising' });
    expect(findTrend([...rising].reverse())).toMatchObject({ direction: 'falling' });
  });

  it('does not sell good and bad days as progress', () => {
    const wobble = [3, 20, 2, 19, 4, 21, 8, 22].map((hits) => ({ hits, of: 24 }));
    expect(findTrend(wobble).direction).toBe('steady');
    expect(
      armitageZ(
        wobble.map((count, score) => ({ ...count, score })),
        false,
      )!,
    ).toBeGreaterThan(1.96);
  });

  it('says nothing of three takes, of ten events, and of shares that can not rise', () => {
    expect(findTrend([1, 5, 9].map((hits) => ({ hits, of: 10 }))).direction).toBe('too few');
    expect(findTrend([0, 1, 2, 2].map((hits) => ({ hits, of: 2 }))).direction).toBe('too few');
    expect(findTrend([10, 10, 10, 10].map((hits) => ({ hits, of: 10 })))).toEqual({
      direction: 'steady',
      p: 1,
    });
  });

  it('leaves takes without events out, and refuses scores that do not fit', () => {
    const takes = [2, 0, 4, 6, 8, 10].map((hits) => ({ hits, of: hits === 0 ? 0 : 12 }));
    expect(findTrend(takes).direction).toBe('rising');
    expect(() => findTrend(takes, [1, 2])).toThrow('as many scores');
  });

  it('is wrong in about one of twenty where nothing changes', () => {
    let state = 12345;
    const next = () => (state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff) / 0x7fffffff;
    let wrong = 0;
    for (let run = 0; run < 400; run++) {
      const takes = Array.from({ length: 8 }, () => {
        const hits = Array.from({ length: 14 }, next).filter((x) => x < 0.3).length;
        return { hits, of: 14 };
      });
      const { direction } = findTrend(takes);
      if (direction !== 'steady') wrong++;
    }
    expect(wrong / 400).toBeLessThan(0.07);
    expect(wrong).toBeGreaterThan(0);
  });
});
