import { expect, it } from 'vitest';
import { titleOf } from '../../../src/ui/ready/form-choice.ts';

it('sets form names as titles', () => {
  expect(titleOf('minor ii-V-I')).toBe('Minor ii–V–I');
  expect(titleOf('12-bar blues')).toBe('12-bar blues');
});
