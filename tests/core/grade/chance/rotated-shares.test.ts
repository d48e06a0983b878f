/** Shares whose chance comes from the rotations of the chart by whole bars, counted by hand. At 120 bpm a beat lasts half a second. */
import { describe, expect, it } from 'vitest';
import { rotatedShares } from '../../../../src/core/grade/chance/rotated-shares.ts';
import { gradedOver } from '../graded.ts';
import { chart, type Played } from '../line.ts';

const shares = (text: string, played: readonly Played[], strong: readonly boolean[] = []) =>
  rotatedShares(gradedOver(text, played), strong, chart(text), {
    ...{ anticipation: 'an eighth', toleranceSeconds: 0.05, referenceHz: 440, choruses: 1 },
  });

describe('a share beside the rotated chart', () => {
  /** E over C7 for a beat, A over F7 for three beats: thirds as played, no chord tones when the chart is rotated. */
  const played: readonly Played[] = [
    [0, 1, 64],
    [4, 3, 69],
  ];

  it('has for its chance the mean over all rotations', () => {
    const { thirds } = shares('| C7 | F7 |', played).allNotes;
    expect(thirds.share).toMatchObject({
      ...{ hits: 2, of: 2, share: 1, chance: 0.5, expected: 1, fairExpected: 1, chanceBy: 'rotations' },
      ...{ high: 1, verdict: 'too short to tell' },
    });
    // Two different bars are rotated independently: both are hits in one case of four.
    expect([thirds.share.tail, thirds.share.fairTail, thirds.share.correctedTail]).toEqual(
      [1, 2, 3].map(() => expect.closeTo(0.25, 9) as number),
    );
    expect(thirds.lower).toBeCloseTo(1, 9);
    expect(thirds.question).toMatchObject({ events: 2, chance: 0.5, choruses: 1 });
    // Wilson's interval of 2 in 2, by his formula: 1 / (1 + 3.8415 / 2).
    expect(thirds.share.low).toBeCloseTo(0.342, 3);
  });

  it('may be of strong beats alone', () => {
    const { strongBeats } = shares('| C7 | F7 |', played, [true, false]);
    expect(strongBeats.thirds.share).toMatchObject({ hits: 1, of: 1, chance: 0.5 });
  });

  it('may be of seconds, each part of a note over its own chord', () => {
    const { byLength } = shares('| C7 | F7 |', [
      [3, 2, 64],
      [5, 3, 69],
    ]);
    // E sounds half a second over C7 and half over F7; A a second and a half over F7.
    expect(byLength.thirds.share).toMatchObject({ hits: 2, of: 2.5, share: 0.8 });
    // Rotated, E is the third in its other half second: half a second of two and a half.
    expect(byLength.thirds.share.chance).toBeCloseTo((0.8 + 0.2) / 2, 9);
    // Weights of 0.5, 0.5 and 1.5 are worth 2.5² / 2.75 equal ones (L. Kish, 1965).
    expect(byLength.thirds.question!.events).toBeCloseTo(6.25 / 2.75, 9);
  });

  it('takes bars that hold the same notes for one draw', () => {
    const riff = [0, 8, 16, 24].flatMap((at): Played[] => [
      [at, 1, 64],
      [at + 4, 1, 69],
    ]);
    const { thirds } = shares('| C7 | F7 |', riff).allNotes;
    expect(thirds.share).toMatchObject({ hits: 8, of: 8, chance: 0.5 });
    expect(thirds.share.tail).toBeCloseTo(0.25, 9);
  });

  it('leaves out notes over no chord, and chords that have no such tone', () => {
    const { allNotes } = shares('| C7sus4 | N.C. | F7 |', [
      [0, 1, 65],
      [4, 1, 64],
      [8, 1, 69],
    ]);
    expect([allNotes.thirds.share.of, allNotes.guideTones.share.of, allNotes.chordTones.share.of]).toEqual([
      1, 2, 2,
    ]);
  });

  it('asks nothing of no notes', () => {
    const { allNotes } = shares('| C7 | F7 |', []);
    expect(allNotes.thirds).toMatchObject({ question: null, share: { of: 0, share: null } });
  });
});
