/** Space, swing and range of small lines, counted by hand. Bars have four beats. */
import { describe, expect, it } from 'vitest';
import { findPhrases } from '../../../../src/core/grade/assign/phrases.ts';
import { findAccents } from '../../../../src/core/grade/teach/accents.ts';
import { findRange } from '../../../../src/core/grade/teach/range.ts';
import { findSpace } from '../../../../src/core/grade/teach/space.ts';
import { findSwing } from '../../../../src/core/grade/teach/swing-played.ts';
import { gradedOver } from '../graded.ts';
import type { Played } from '../line.ts';

const space = (played: readonly Played[], beatsPerBar = 4) => {
  const notes = gradedOver('| C7 |', played);
  return findSpace(notes, findPhrases(notes, 1), { beatsPerBar });
};

describe('the space of a line', () => {
  it('counts silences of half a beat or more as rest', () => {
    expect(
      space([
        [0, 1, 60],
        [1.5, 1.5, 62],
      ]).restShare,
    ).toBeCloseTo(0.5 / 3, 9);
    expect(
      space([
        [0, 1, 60],
        [1.4, 1.6, 62],
      ]).restShare,
    ).toBe(0);
    expect(
      space([
        [0, 2, 60],
        [1, 0.5, 62],
        [2, 2, 64],
      ]).restShare,
    ).toBe(0);
  });

  it('counts from the first downbeat, or from an upbeat before it', () => {
    expect(space([[2, 2, 60]]).restShare).toBe(0.5);
    expect(
      space([
        [-2, 2, 60],
        [2, 2, 60],
      ]).restShare,
    ).toBeCloseTo(2 / 6, 9);
    expect(space([[0, 0, 60]]).restShare).toBe(0);
  });

  it('has the middle length of the phrases and the longest run without a rest, in bars', () => {
    const found = space([
      [0, 2, 60],
      [4, 3, 62],
      [7, 3, 62],
      [12, 1, 64],
    ]);
    // Phrases of 2, 6 and 1 beats.
    expect(found).toMatchObject({ phrases: 3, medianPhraseBars: 0.5, longestRunBars: 1.5 });
    // A gap of three quarters of a beat ends a run, but no phrase.
    expect(
      space([
        [0, 2, 60],
        [2.75, 1.25, 62],
      ]),
    ).toMatchObject({ phrases: 1, medianPhraseBars: 1, longestRunBars: 0.5 });
    // A phrase lasts as long as its longest note.
    expect(
      space([
        [0, 4, 60],
        [1, 1, 62],
      ]).medianPhraseBars,
    ).toBe(1);
  });

  it('has the beat of the bar on which most phrases start, to half a beat; of several the first', () => {
    expect(
      space([
        [0.5, 0.5, 60],
        [4.6, 0.5, 60],
        [9, 1, 60],
      ]).starts,
    ).toEqual({ beatOfBar: 0.5, count: 2 });
    expect(
      space([
        [3, 0.5, 60],
        [6, 1, 60],
      ]).starts,
    ).toEqual({ beatOfBar: 2, count: 1 });
    expect(
      space([
        [-1, 0.5, 60],
        [7, 1, 60],
      ]).starts,
    ).toEqual({ beatOfBar: 3, count: 2 });
    expect(
      space(
        [
          [3, 1, 60],
          [6, 1, 60],
        ],
        3,
      ).starts,
    ).toEqual({ beatOfBar: 0, count: 2 });
  });

  it('is nothing without notes', () => {
    expect(space([])).toEqual({
      ...{ restShare: null, phrases: 0, medianPhraseBars: null, longestRunBars: null, starts: null },
    });
  });
});

describe('the swing that was played', () => {
  /** Eight beats of two eighths, the second at this share of the beat; some are played otherwise. */
  const swing = (second: number, otherwise: readonly (readonly Played[])[] = [], beats = 8) =>
    findSwing(
      gradedOver('| C7 |', [
        ...Array.from({ length: beats }, (_, beat): Played[] => [
          [beat, 0.4, 60],
          [beat + second, 0.2, 62],
        ]).flat(),
        ...otherwise.flatMap((bar, i) =>
          bar.map(([beat, ...rest]): Played => [beats + 2 * i + beat, ...rest]),
        ),
      ]),
    );

  it('takes eight pairs to tell', () => {
    expect(swing(0.6)).toEqual({ pairs: 8, share: expect.closeTo(0.6, 9) as number });
    expect(swing(0.6, [], 7)).toEqual({ pairs: 7, share: null });
  });

  it('asks second eighths from straight to past a triplet, and no sixteenths', () => {
    expect([0.43, 0.79].map((second) => swing(second).pairs)).toEqual([8, 8]);
    expect([0.41, 0.81].map((second) => swing(second).pairs)).toEqual([0, 0]);
  });

  it('asks beats with two notes alone', () => {
    const triplet: readonly Played[] = [
      [0, 0.3, 60],
      [0.5, 0.3, 62],
      [0.75, 0.2, 64],
    ];
    const late: readonly Played[] = [
      [0.25, 0.3, 60],
      [0.6, 0.2, 62],
    ];
    expect(swing(0.6, [triplet, late]).pairs).toBe(8);
    // A note at the end of the beat before makes the next beat no pair of its own.
    const before: readonly Played[] = [
      [-0.1, 0.1, 60],
      [0.15, 0.3, 60],
      [0.6, 0.2, 62],
    ];
    expect(swing(0.5, [before]).pairs).toBe(8);
    // The last pair needs no note after it; one on the next beat is no hindrance.
    expect(
      swing(0.6, [
        [
          [0, 0.4, 60],
          [0.6, 0.2, 62],
        ],
        [[-1, 0.4, 60]],
      ]).pairs,
    ).toBe(9);
  });
});

describe('the range of a line', () => {
  const range = (...phrases: readonly (readonly number[])[]) => {
    const notes = gradedOver(
      '| C7 |',
      phrases.flatMap((pitches, i) => pitches.map((midi, j): Played => [8 * i + j / 2, 0.5, midi])),
    );
    return findRange(notes, findPhrases(notes, 1));
  };
  const shapes = (...pitches: readonly number[]) => {
    const { rising, falling, arched, level } = range(pitches);
    return { rising, falling, arched, level };
  };
  const none = { rising: 0, falling: 0, arched: 0, level: 0 };

  it('has the first of the lowest notes and of the highest', () => {
    expect(range([62, 60, 67, 60, 67])).toMatchObject({ lowestNote: 1, highestNote: 2, semitones: 7 });
    expect(range()).toEqual({ lowestNote: null, highestNote: null, semitones: null, ...none });
  });

  it('goes up, down, over an arch or nowhere by more than a whole step', () => {
    expect(shapes(60, 61, 62, 63)).toEqual({ ...none, rising: 1 });
    expect(shapes(60, 61, 61, 62)).toEqual({ ...none, level: 1 });
    expect(shapes(63, 62, 61, 60)).toEqual({ ...none, falling: 1 });
    expect(shapes(62, 61, 61, 60)).toEqual({ ...none, level: 1 });
    expect(shapes(60, 65, 64, 62)).toEqual({ ...none, arched: 1 });
    expect(shapes(60, 64, 64, 62)).toEqual({ ...none, level: 1 });
  });

  it('asks phrases of four notes or more', () => {
    expect(shapes(60, 64, 67)).toEqual(none);
    expect(range([60, 64, 67, 72], [72, 67, 64, 60], [60, 72])).toMatchObject({ rising: 1, falling: 1 });
  });
});

describe('accents', () => {
  const accents = (levels: readonly (number | null)[]) => {
    const notes = gradedOver(
      '| C7 |',
      levels.map((levelDb, i): Played => [i, 1, 60, { levelDb }]),
    );
    return findAccents(
      notes,
      levels.map((_, i) => i % 2 === 0),
    );
  };
  it('compare the middle levels on and off the strong beats, of notes that have one', () => {
    expect(accents([-10, -20, -14, -21, null, Number.NEGATIVE_INFINITY])).toEqual({
      ...{ strongNotes: 2, otherNotes: 2, differenceDb: 8.5 },
    });
    expect(accents([-10])).toEqual({ strongNotes: 1, otherNotes: 0, differenceDb: null });
    expect(accents([null, -10])).toEqual({ strongNotes: 0, otherNotes: 1, differenceDb: null });
  });
});
