import { expect, it } from 'vitest';
import { titleOf } from '../../../src/ui/ready/form-choice.ts';
import { troubleSpot } from '../../../src/ui/ready/trouble-spot.ts';

it('points at the symbol that can’t be read', () => {
  expect(troubleSpot('| A7 | H7 | D7 |')).toEqual({ before: '| A7 | ', symbol: 'H7', after: ' | D7 |' });
});

it('points at the right one of two that look alike, on its own line', () => {
  const spot = troubleSpot('| A7 | D7 |\n| E7 | A7zz |');
  expect(spot?.symbol).toBe('A7zz');
  expect(spot?.before).toBe('| E7 | ');
});

it('has nothing to point at in a good chart, or an empty one', () => {
  expect(troubleSpot('| A7 |')).toBeNull();
  expect(troubleSpot('')).toBeNull();
});

it('sets form names as titles', () => {
  expect(titleOf('minor ii-V-I')).toBe('Minor ii–V–I');
  expect(titleOf('12-bar blues')).toBe('12-bar blues');
});
