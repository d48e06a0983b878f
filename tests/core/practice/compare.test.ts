import { describe, expect, it } from 'vitest';
import { compareCounts } from '../../../src/core/practice/compare.ts';

describe('two takes side by side', () => {
  // R. A. Fisher's tea tasting: 3 of 4 against 1 of 4, two-sided p = 0.4857 (Agresti, Categorical Data Analysis, from
  // memory; 34/70 by counting the tables).
  it('gives the published p of the tea tasting', () => {
    expect(compareCounts({ hits: 1, of: 4 }, { hits: 3, of: 4 }).p).toBeCloseTo(34 / 70, 9);
  });

  it('tells a difference only where there is one', () => {
    expect(compareCounts({ hits: 2, of: 12 }, { hits: 10, of: 12 }).told).toBe('better');
    expect(compareCounts({ hits: 10, of: 12 }, { hits: 2, of: 12 }).told).toBe('worse');
    expect(compareCounts({ hits: 5, of: 12 }, { hits: 7, of: 12 }).told).toBe('no difference');
  });

  it('says nothing of a handful of landings, or of none', () => {
    expect(compareCounts({ hits: 0, of: 4 }, { hits: 12, of: 12 }).told).toBe('too few');
    expect(compareCounts({ hits: 0, of: 0 }, { hits: 12, of: 12 })).toEqual({
      p: null,
      told: 'too few',
    });
  });
});
