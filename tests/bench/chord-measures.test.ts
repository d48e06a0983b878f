/** Our measures of chords against mir_eval 0.8.2 (fixtures/chords/measures.json, made by measures.py). */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { numberOfSymbol } from '../../src/core/harmony/chord-names.ts';
import { NO_CHORD } from '../../src/core/harmony/chord-types.ts';
import { majmin, root, secondsRight, sevenths, type Stretches } from './chord-measures.ts';

interface Case {
  readonly truth: readonly (readonly [number, number, string])[];
  readonly found: readonly (readonly [number, number, string])[];
  readonly root: number;
  readonly majmin: number;
  readonly sevenths: number;
}
const cases = JSON.parse(
  readFileSync(new URL('../../fixtures/chords/measures.json', import.meta.url), 'utf8'),
) as readonly Case[];
const row = (given: Case['truth']): Stretches =>
  given.map(([from, to, symbol]) => ({
    from,
    to,
    chord: symbol === 'N.C.' ? NO_CHORD : numberOfSymbol(symbol)!,
  }));

test('chords are measured as mir_eval measures them', () => {
  expect(cases.length).toBeGreaterThan(20);
  for (const one of cases) {
    const shares = [root, majmin, sevenths].map((reduce) => {
      const [right, all] = secondsRight(row(one.truth), row(one.found), reduce);
      return all === 0 ? 0 : right / all;
    });
    expect(shares[0]).toBeCloseTo(one.root, 6);
    expect(shares[1]).toBeCloseTo(one.majmin, 6);
    expect(shares[2]).toBeCloseTo(one.sevenths, 6);
  }
});
