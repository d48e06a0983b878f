import { expect, it } from 'vitest';
import { nextOf, REVIEW_KEYS, reviewCommand } from '../../../src/ui/review/review-keys.ts';

it('has one command a key, and every key works on the bare page', () => {
  expect(new Set(REVIEW_KEYS.map(([key]) => key)).size).toBe(REVIEW_KEYS.length);
  for (const [key, command] of REVIEW_KEYS) expect(reviewCommand(key, null)).toBe(command);
  expect(reviewCommand('L', null)).toBe('loop');
  expect(reviewCommand('x', null)).toBeNull();
});

it('leaves a field its letters, a button its space, a list and a slider their arrows', () => {
  for (const [key] of REVIEW_KEYS) expect(reviewCommand(key, 'text')).toBeNull();
  expect(reviewCommand(' ', 'button')).toBeNull();
  expect(reviewCommand('l', 'button')).toBe('loop');
  for (const key of ['ArrowLeft', 'ArrowRight', 'Home']) expect(reviewCommand(key, 'list')).toBeNull();
  expect(reviewCommand(' ', 'list')).toBe('play');
});

it('goes through a few, round and round', () => {
  expect([1, 0.75, 0.5].map((one) => nextOf([1, 0.75, 0.5], one))).toEqual([0.75, 0.5, 1]);
});
