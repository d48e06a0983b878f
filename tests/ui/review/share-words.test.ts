import { expect, it } from 'vitest';
import type { Share } from '../../../src/core/take/schema.ts';
import { en } from '../../../src/core/words/en.ts';
import { shareWords } from '../../../src/ui/review/share-words.ts';

/** 7 of 12 and its Wilson interval 0.320 to 0.807: a check value of the grading definitions. */
const share: Share = {
  hits: 7,
  of: 12,
  share: 7 / 12,
  low: 0.32,
  high: 0.807,
  chance: 1 / 3,
  expected: 4,
  tail: 0.07,
  fairTail: 0.07,
  fairExpected: 4.4,
  correctedTail: 1,
  moreChoruses: null,
  chanceBy: 'own notes',
  verdict: 'at chance',
};

it('tells counts first, then doubt and chance', () => {
  expect(shareWords(share, false, en)).toEqual({
    counts: '7 of 12',
    told: '58\u00a0%, somewhere from 32\u00a0% to 81\u00a0%; chance gives 33\u00a0%. No more than luck.',
  });
});

it('tells no per cent of a handful', () => {
  const few: Share = {
    ...share,
    hits: 0,
    of: 2,
    share: 0,
    low: 0,
    high: 0.658,
    verdict: 'too short to tell',
  };
  expect(shareWords(few, false, en).told).toMatch(/^Somewhere from 0.% to 66.%; .*Too short to tell\.$/);
});

it('has words for nothing', () => {
  const nothing = { ...share, hits: 0, of: 0, share: null, low: null, high: null, chance: null };
  expect(shareWords(nothing, false, en).counts).toBe('none');
});

it('tells seconds where the share is by length', () => {
  expect(shareWords(share, true, en).counts).toBe('7.0 of 12.0 s');
});
