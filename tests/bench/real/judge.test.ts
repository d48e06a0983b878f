/** Cases counted by hand. The matching itself is checked against mir_eval in tests/outside/mir-eval.test.ts. */
import { describe, expect, test } from 'vitest';
import { judge, type SureNote } from './judge.ts';
import { cellOf, confidenceBands, counted, scoreOfSum, sumOf } from './rows.ts';
import type { PlayedNote } from './truth.ts';

const note = (onsetSeconds: number, offsetSeconds: number, midi: number): SureNote => ({
  onsetSeconds,
  offsetSeconds,
  midi,
});
const played = (onsetSeconds: number, offsetSeconds: number, midi: number, setAside = false): PlayedNote => ({
  onsetSeconds,
  offsetSeconds,
  midi,
  setAside,
});
const never = (): boolean => false;
const judgeNotes = (
  notes: readonly PlayedNote[],
  heard: readonly SureNote[],
  onsetToleranceSeconds = 0.05,
  burst = never,
) => judge({ truth: { kind: 'notes', notes }, onsetToleranceSeconds }, heard, burst);

/** Two plain notes, a fifth apart, with a rest after them. */
const two = [played(1, 2, 60), played(2, 3, 67)];
const twoHeard = [note(1.01, 2, 60), note(1.99, 3, 67)];

describe('notes', () => {
  test('both right', () => {
    expect(judgeNotes(two, twoHeard)).toMatchObject({
      right: 2,
      played: 2,
      heard: 2,
      extras: [],
      misses: [],
    });
  });

  test('onsets off by their signed distance', () => {
    const [first, second] = judgeNotes(two, twoHeard).onsetErrorsMs;
    expect(first).toBeCloseTo(10, 6);
    expect(second).toBeCloseTo(-10, 6);
  });

  test('a wider tolerance takes a later onset', () => {
    const late = [note(1.08, 2, 60), twoHeard[1] as SureNote];
    expect(judgeNotes(two, late).right).toBe(1);
    expect(judgeNotes(two, late, 0.1).right).toBe(2);
  });

  test.each([
    ['double stroke', note(1.06, 1.2, 60)],
    ['swell', note(1.5, 1.7, 60)],
    ['octave', note(1.5, 1.7, 72)],
    ['octave', note(1.5, 1.7, 79)],
    ['damping', note(1.95, 1.99, 64)],
    ['damping', note(3.2, 3.25, 64)],
    ['glide', note(1.5, 1.7, 61.5)],
    ['ringing', note(2.5, 2.7, 60)],
    ['noise alone', note(5, 5.1, 60)],
    ['ornament', note(1.5, 1.55, 65)],
    ['other pitch', note(1.5, 1.7, 65)],
  ])('an extra is named %s', (kind, extra) => {
    const { right, heard, extras } = judgeNotes(two, [...twoHeard, extra]);
    expect([right, heard, extras]).toEqual([2, 3, [kind]]);
  });

  test('a burst at its onset makes a swell a click', () => {
    const { extras } = judgeNotes(two, [...twoHeard, note(1.5, 1.7, 60)], 0.05, () => true);
    expect(extras).toEqual(['click or fret']);
  });

  test.each([
    ['late', note(1.1, 2, 60)],
    ['early', note(0.9, 2, 60)],
    ['octave', note(1, 2, 72)],
    ['wrong pitch', note(1, 2, 61)],
  ])('a miss that an estimate stands for is named %s, and the estimate is no extra', (kind, instead) => {
    const { right, extras, misses } = judgeNotes(two, [instead, twoHeard[1] as SureNote]);
    expect([right, extras, misses]).toEqual([1, [], [kind]]);
  });

  test('a miss without any estimate is named by what came before', () => {
    expect(judgeNotes([played(1, 2, 60)], []).misses).toEqual(['nothing']);
    expect(judgeNotes(two, [twoHeard[0] as SureNote]).misses).toEqual(['legato']);
    expect(judgeNotes([played(1, 2, 60), played(2, 3, 60)], [note(1, 2, 60)]).misses).toEqual(['repeat']);
    expect(judgeNotes([played(1, 2, 60), played(1.02, 2, 64)], [note(1, 2, 60)]).misses).toEqual([
      'second voice',
    ]);
  });

  test('a note set aside is neither missed nor wrong when heard', () => {
    const notes = [...two, played(1.5, 1.55, 62, true)];
    expect(judgeNotes(notes, twoHeard)).toMatchObject({ right: 2, played: 2, heard: 2, misses: [] });
    expect(judgeNotes(notes, [...twoHeard, note(1.5, 1.55, 62)])).toMatchObject({
      right: 2,
      heard: 2,
      extras: [],
    });
    // But a second estimate there is an extra.
    expect(judgeNotes(notes, [...twoHeard, note(1.49, 1.5, 62), note(1.51, 1.55, 62)]).extras).toHaveLength(
      1,
    );
  });

  test('a note set aside takes no estimate from a plain note', () => {
    const notes = [played(1, 2, 60), played(1.02, 2, 60, true)];
    expect(judgeNotes(notes, [note(1.02, 2, 60)])).toMatchObject({ right: 1, heard: 1 });
  });
});

describe('sequences', () => {
  const judgeSequence = (midi: readonly number[], heard: readonly number[]) =>
    judge(
      { truth: { kind: 'sequence', midi }, onsetToleranceSeconds: 0.05 },
      heard.map((pitch, index) => note(index, index + 1, pitch)),
      never,
    );

  test.each([
    [[60, 62, 64], [60.2, 61.9, 64], 3, true],
    [[60, 62, 64], [60, 62], 2, false],
    [[60, 62, 64], [60, 60, 62, 64], 3, false],
    [[60, 62, 64], [64, 62, 60], 1, false],
    [[60], [], 0, false],
    [[60], [60.6], 0, false],
  ])('%j heard as %j', (midi, heard, right, isExact) => {
    expect(judgeSequence(midi, heard)).toMatchObject({ right, isExact, heard: heard.length });
  });
});

describe('rows', () => {
  test('sums count notes, not recordings', () => {
    // 2 of 2 right with one extra; then 1 of 2 right: 3 right of 4 played, 4 heard.
    const sum = sumOf([
      judgeNotes(two, [...twoHeard, note(5, 6, 60)]),
      judgeNotes(two, [twoHeard[0] as SureNote]),
    ]);
    expect(scoreOfSum(sum)).toMatchObject({ precision: 3 / 4, recall: 3 / 4 });
    expect(cellOf(sum)).toBe('0.750 (0.75, 0.75)');
    expect(counted([...sum.extras, ...sum.misses, 'legato'])).toBe('legato 2, noise alone 1');
  });

  test('a listener that was not there has a dash', () => {
    expect(cellOf(null)).toBe('–');
  });

  test('bands of confidence hold their notes and the share that is right', () => {
    const sure = (confidence: number, heard: SureNote): SureNote => ({ ...heard, confidence });
    const sum = sumOf([
      judgeNotes(two, [
        sure(0.8, twoHeard[0] as SureNote),
        sure(1, twoHeard[1] as SureNote),
        sure(0.95, note(5, 6, 60)),
      ]),
    ]);
    expect(confidenceBands(sum)).toEqual([
      { from: 0.8, notes: 1, right: 1 },
      { from: 0.9, notes: 2, right: 0.5 },
    ]);
  });
});
