/**
 * The shipped weights of the chord network are those that fixtures/chords/make-weights.ts makes of its recipe. The test stands
 * here, where no other file shares its modules: the synthesiser's sound depends a little on what it played before.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { smallPart, weightsSha256, type WrittenWeights } from '../../../fixtures/chords/fingerprint.ts';
import { FIT, PARTS } from '../../../fixtures/chords/recipe.ts';
import { RENDER_HZ } from '../../../fixtures/chords/render-backing.ts';
import { chordWeights } from '../../../src/core/harmony/weights.ts';
import { kitSynth } from './kit-file.ts';

const read = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8'));
const weights = read('src/core/harmony/weights.json') as WrittenWeights;
const made = read('fixtures/chords/weights-made.json') as { weightsSha256: string; small: unknown };

test('the weights are those that the command wrote, by the recipe as it stands', () => {
  expect(made).toMatchObject({ parts: PARTS, fit: FIT });
  expect(weightsSha256(weights)).toBe(made.weightsSha256);
  const other = { ...weights, none: [weights.none[0]! + 1e-4, ...weights.none.slice(1)] };
  expect(weightsSha256(other)).not.toBe(made.weightsSha256);
});

test('one band of the recipe gives the same rows, a small fit on them the same weights, the shipped weights the same loss', async () => {
  expect(smallPart(await kitSynth(RENDER_HZ), chordWeights())).toEqual(made.small);
});
