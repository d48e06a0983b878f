/** The metric's own tests: perfect, empty, boundary, greedy traps. Against mir_eval: tests/outside/mir-eval.test.ts. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { breakDown } from './note-errors.ts';
import { matchNotes, noteScore, onsetScore, percentile, type MetricNote } from './note-metrics.ts';

const note = (onsetSeconds: number, midi: number): MetricNote => ({
  onsetSeconds,
  offsetSeconds: onsetSeconds + 0.2,
  midi,
});

const anyNotes = fc.array(
  fc
    .record({ onset: fc.integer({ min: 0, max: 60 }), midi: fc.integer({ min: 58, max: 62 }) })
    .map(({ onset, midi }) => note(onset / 40, midi)),
  { maxLength: 12 },
);

/** The largest matching by trying everything. */
function largest(reference: readonly MetricNote[], estimate: readonly MetricNote[]): number {
  const [first, ...rest] = reference;
  if (!first) return 0;
  let best = largest(rest, estimate);
  estimate.forEach((e, index) => {
    if (matchNotes([first], [e]).length === 0) return;
    best = Math.max(best, 1 + largest(rest, estimate.toSpliced(index, 1)));
  });
  return best;
}

describe('note metric', () => {
  test('perfect and empty', () => {
    const melody = [note(0, 60), note(0.1, 62), note(0.2, 64)];
    expect(noteScore(melody, melody)).toEqual({ precision: 1, recall: 1, f1: 1 });
    expect(noteScore(melody, []).f1).toBe(0);
    expect(noteScore([], melody).f1).toBe(0);
    expect(noteScore([], []).f1).toBe(0);
  });

  test('50 ms counts, 50.1 ms does not', () => {
    expect(matchNotes([note(1, 60)], [note(1.05, 60)])).toEqual([[0, 0]]);
    expect(matchNotes([note(1, 60)], [note(1.0501, 60)])).toEqual([]);
  });

  test('the nearest first would lose a note', () => {
    expect(matchNotes([note(1, 60), note(1.06, 60)], [note(1.05, 60), note(1.1, 60)]).length).toBe(2);
  });

  test('no other matching is larger', () => {
    fc.assert(
      fc.property(
        anyNotes.map((n) => n.slice(0, 6)),
        anyNotes.map((n) => n.slice(0, 6)),
        (reference, estimate) => {
          expect(matchNotes(reference, estimate).length).toBe(largest(reference, estimate));
        },
      ),
      { numRuns: 200 },
    );
  });

  test('onsets alone never match less', () => {
    fc.assert(
      fc.property(anyNotes, anyNotes, (reference, estimate) => {
        expect(onsetScore(reference, estimate).f1).toBeGreaterThanOrEqual(noteScore(reference, estimate).f1);
      }),
    );
  });

  test('percentile takes the nearest rank', () => {
    expect(percentile([3, 1, 2], 0.5)).toBe(2);
    expect(percentile([1, 2, 3, 4], 0.95)).toBe(4);
    expect(percentile([], 0.5)).toBeNaN();
  });
});

describe('error breakdown', () => {
  test('gives every error one name', () => {
    const reference = [note(0, 60), note(1, 62), note(2, 64), note(3, 65), note(4, 67)];
    const estimate = [note(0, 60), note(0.1, 60), note(1, 50), note(2.08, 64), note(3, 66), note(4.9, 40)];
    const { counts, matches } = breakDown(reference, estimate);
    expect(matches).toEqual([[0, 0]]);
    expect(counts).toEqual({ octave: 1, pitch: 1, onset: 1, missed: 1, split: 1, ghost: 0, invented: 1 });
  });

  test('adds up', () => {
    fc.assert(
      fc.property(anyNotes, anyNotes, (reference, estimate) => {
        const { matches, errors } = breakDown(reference, estimate);
        const wrongReferences = errors.filter((e) => e.reference !== null).length;
        const wrongEstimates = errors.filter((e) => e.estimate !== null).length;
        expect(matches.length + wrongReferences).toBe(reference.length);
        expect(matches.length + wrongEstimates).toBe(estimate.length);
      }),
    );
  });
});
