/** Every field of a note that is set against its chart. At 120 bpm a beat lasts half a second. */
import { describe, expect, it } from 'vitest';
import { gradeNotes } from '../../../../src/core/grade/assign/grade-notes.ts';
import { gradedOver, rulesFor } from '../graded.ts';
import { chart, line } from '../line.ts';

describe('a note set against its chart', () => {
  it('knows its pitch, place, chord, degree and role', () => {
    const [note] = gradedOver('| C7 | F7 |', [[1, 2, 64.2]], 'C');
    expect(note).toMatchObject({
      ...{ index: 0, pitch: 64, pitchClass: 4, second: null, onsetBeat: 1, offsetBeat: 3 },
      ...{ anticipates: null, early: null, heldInto: null, degree: '3', role: 'third', keyDegree: '3' },
      ...{ rule: 'onset', aheadBeats: null },
    });
    expect(note!.chord!.symbol).toBe('C7');
    expect(note!.cents).toBeCloseTo(20, 6);
  });

  it('knows the change that it runs ahead to, and the chords on either side', () => {
    const [note] = gradedOver('| C7 | F7 |', [[3.5, 1, 57]], 'C');
    expect(note).toMatchObject({
      anticipates: 4,
      aheadBeats: 0.5,
      rule: 'anticipation',
      degree: '3',
      heldInto: null,
    });
    expect(note!.chord!.symbol).toBe('F7');
    expect(note!.early).toMatchObject({ beat: 4, chord: { symbol: 'F7' }, from: { symbol: 'C7' } });
  });

  it('knows a change that it is early enough for and does not fit', () => {
    const [note] = gradedOver('| C7 | F7 |', [[3.5, 1, 64]], 'C');
    expect(note).toMatchObject({ anticipates: null, rule: 'onset', degree: '3', aheadBeats: null });
    expect(note!.early).toMatchObject({ beat: 4, chord: { symbol: 'F7' } });
    expect(note!.heldInto!.symbol).toBe('F7');
  });

  it('is held into the next chord only where it sounds past the change', () => {
    const heldInto = (beats: number) =>
      gradedOver('| C7 | F7 |', [[2, beats, 60]])[0]!.heldInto?.symbol ?? null;
    expect(heldInto(2)).toBeNull();
    expect(heldInto(2.01)).toBe('F7');
    // Over N.C. nothing is asked for, so that nothing is held into it.
    expect(gradedOver('| C7 | N.C. |', [[2, 3, 60]])[0]!.heldInto).toBeNull();
  });

  it('has neither chord nor role over N.C., and its degree of the key all the same', () => {
    const [note] = gradedOver('| N.C. | C7 |', [[1, 1, 64]], 'C');
    expect(note).toMatchObject({ chord: null, degree: null, role: null, keyDegree: '3' });
  });

  it('comes in the order of onsets, its second pitch with it', () => {
    const timeline = chart('| C7 |');
    const heard = line([
      [2, 1, 60, { second: 64.3 }],
      [0, 1, 62],
    ]);
    const graded = gradeNotes(heard, timeline, rulesFor(timeline));
    expect(graded.map(({ index, pitch, second }) => [index, pitch, second])).toEqual([
      [0, 62, null],
      [1, 60, 64],
    ]);
  });
});
