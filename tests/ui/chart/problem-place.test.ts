import { expect, it } from 'vitest';
import { problemPlace } from '../../../src/ui/chart/problem-place.ts';

it('points at the symbol that can’t be read', () => {
  expect(problemPlace('| A7 | H7 | D7 |')).toEqual({ before: '| A7 | ', symbol: 'H7', after: ' | D7 |' });
});

it('points at the right one of two that look alike, on its own line', () => {
  const spot = problemPlace('| A7 | D7 |\n| E7 | A7zz |');
  expect(spot?.symbol).toBe('A7zz');
  expect(spot?.before).toBe('| E7 | ');
});

it('has nothing to point at in a good chart, or an empty one', () => {
  expect(problemPlace('| A7 |')).toBeNull();
  expect(problemPlace('')).toBeNull();
});
