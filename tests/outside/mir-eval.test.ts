/**
 * Our note metric against mir_eval.transcription (Raffel et al., ISMIR 2014), to 1e-9: on pairs kept in
 * fixtures/note-metrics with mir_eval's own answers, and on fresh pairs where mir_eval is installed.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { needs, pythonWith } from '../needs.ts';
import { noteScore, onsetScore, type MetricNote, type Score } from '../bench/note-metrics.ts';

type ListedNote = readonly [onsetSeconds: number, offsetSeconds: number, midi: number];
interface Pair {
  readonly reference: readonly ListedNote[];
  readonly estimate: readonly ListedNote[];
}
const answers = ['usual', 'narrow', 'wide', 'onset'] as const;
type Answer = Readonly<Record<(typeof answers)[number], Score>>;

const folder = fileURLToPath(new URL('../../fixtures/note-metrics/', import.meta.url));
const read = (file: string): unknown => JSON.parse(readFileSync(folder + file, 'utf8'));

const notesOf = (listed: readonly ListedNote[]): readonly MetricNote[] =>
  listed.map(([onsetSeconds, offsetSeconds, midi]) => ({ onsetSeconds, offsetSeconds, midi }));

function ours(pair: Pair): Answer {
  const reference = notesOf(pair.reference);
  const estimate = notesOf(pair.estimate);
  const within = (onsetToleranceSeconds: number, pitchToleranceCents: number): Score =>
    noteScore(reference, estimate, { onsetToleranceSeconds, pitchToleranceCents });
  return {
    usual: within(0.05, 50),
    narrow: within(0.02, 20),
    wide: within(0.1, 100),
    onset: onsetScore(reference, estimate),
  };
}

function agree(pairs: readonly Pair[], expected: readonly Answer[]): void {
  expect(pairs.length).toBe(expected.length);
  pairs.forEach((pair, index) => {
    const mine = ours(pair);
    for (const answer of answers)
      for (const part of ['precision', 'recall', 'f1'] as const)
        expect(
          Math.abs(mine[answer][part] - (expected[index]?.[answer][part] ?? NaN)),
          `pair ${index}, ${answer} ${part}`,
        ).toBeLessThan(1e-9);
  });
}

const python = pythonWith('mir_eval');

describe('note metric against mir_eval', () => {
  test('on the kept pairs', () => {
    const pairs = read('pairs.json') as readonly Pair[];
    expect(pairs.length).toBeGreaterThan(100);
    agree(pairs, read('expected.json') as readonly Answer[]);
  });

  test('live, on other pairs', needs(python !== null, 'No Python with mir_eval is installed.'), () => {
    const text = execFileSync(python!, [`${folder}regenerate.py`, '--seed', '7'], {
      encoding: 'utf8',
      maxBuffer: 64e6,
    });
    const fresh = JSON.parse(text) as { cases: readonly Pair[]; expected: readonly Answer[] };
    agree(fresh.cases, fresh.expected);
  });
});
