/** Habits over the choruses. A landing of each kind is written by hand; only what a habit asks for is in it. */
import { describe, expect, it } from 'vitest';
import { gatherChanges } from '../../../../src/core/grade/landings/changes.ts';
import type { Landing } from '../../../../src/core/take/schema.ts';

const landing = (change: Partial<Landing>): Landing => ({
  ...{ beat: 0, seconds: 0, bar: 0, chorus: 0, beatOfBar: 0, chord: 'C7', fromChord: 'G7' },
  ...{ kind: 'landing', note: 0, degree: '3', role: 'third', cents: 0, offsetMs: 0, anticipates: false },
  ...{ stepSemitones: null, guideTone: null, leansInto: null, putRight: null, function: null },
  ...change,
});
const third = landing({});
const fifth = landing({ role: 'fifth' });
const foreign = landing({ role: 'outside' });
const open = landing({ kind: 'open', note: null, role: null });
const habit = (landings: readonly Landing[], blue: readonly number[] = []) =>
  gatherChanges(landings, new Set(blue)).byBar[0]!.habit;

describe('the habit at a change', () => {
  it('is to arrive on the third, on a chord tone, on none, or now this, now that', () => {
    expect(habit([third, third])).toBe('always the third');
    expect(habit([third, fifth])).toBe('always a chord tone');
    expect(habit([foreign, foreign])).toBe('never a chord tone');
    expect(habit([third, foreign])).toBe('mixed');
  });

  it('must have been seen twice, rests aside', () => {
    expect(habit([third])).toBe('seldom');
    expect(habit([third, open])).toBe('seldom');
    expect(habit([third, third, open])).toBe('always the third');
  });

  it('is no miss where the b3 leans into the 3, or is a blue third', () => {
    expect(habit([foreign, landing({ role: 'blue', leansInto: 5 })])).toBe('mixed');
    expect(habit([foreign, landing({ role: 'blue', note: 7 })], [7])).toBe('mixed');
    expect(habit([foreign, landing({ role: 'blue', note: 7 })], [8])).toBe('never a chord tone');
  });
});

describe('the changes of a take', () => {
  const told = [
    landing({ bar: 1, beatOfBar: 2, chord: 'F7', fromChord: null }),
    landing({ bar: 0, chord: 'C7', guideTone: { from: 'b7', to: '3', semitones: -1, kind: 'resolved' } }),
    landing({ bar: 1, beatOfBar: 0, chord: 'C7', role: 'fifth' }),
    landing({
      bar: 1,
      beatOfBar: 2,
      chord: 'F7',
      guideTone: { from: '3', to: 'b7', semitones: 0, kind: 'kept' },
    }),
    landing({ bar: 1, beatOfBar: 2, chord: 'F7', kind: 'open', note: null, role: null }),
  ];
  const changes = () => gatherChanges(told, new Set());

  it('are told by place in the form, in its order', () => {
    expect(changes().byBar).toEqual([
      { bar: 0, beatOfBar: 0, chord: 'C7', count: 1, open: 0, thirds: 1, chordTones: 1, habit: 'seldom' },
      { bar: 1, beatOfBar: 0, chord: 'C7', count: 1, open: 0, thirds: 0, chordTones: 1, habit: 'seldom' },
      {
        bar: 1,
        beatOfBar: 2,
        chord: 'F7',
        count: 3,
        open: 1,
        thirds: 2,
        chordTones: 2,
        habit: 'always the third',
      },
    ]);
  });

  it('are told by chord, in the order of their first arrival, with no place', () => {
    expect(
      changes().byChord.map(({ bar, beatOfBar, chord, count }) => [bar, beatOfBar, chord, count]),
    ).toEqual([
      [null, null, 'F7', 3],
      [null, null, 'C7', 2],
    ]);
  });

  it('could move a guide tone where they come from another chord and are landed on', () => {
    expect(changes().guideTones).toEqual({ changes: 3, resolved: 1, kept: 1 });
  });
});
