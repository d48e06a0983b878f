import { describe, expect, it } from 'vitest';
import { gradeLine, type Played } from '../line.ts';

const CHART = '| C7 | F7 | C7 | G7 |';
const landings = (played: readonly Played[], text = CHART) => gradeLine(text, played).landings;

/** A line that reaches into the fourth bar, so that its changes are all asked about. */
const LAST: Played = [12, 4, 59];

describe('landings', () => {
  it('takes the first note on the new chord, with degree, role, step and time', () => {
    const [, second] = landings([[2, 1, 58], [4.02, 1, 57], [5, 1, 60], LAST]);
    expect(second).toMatchObject({
      kind: 'landing',
      chord: 'F7',
      fromChord: 'C7',
      degree: '3',
      role: 'third',
      note: 1,
    });
    expect(second).toMatchObject({ beat: 4, bar: 1, chorus: 0, beatOfBar: 0, stepSemitones: -1 });
    expect(second!.offsetMs).toBeCloseTo(10, 6);
    expect(second!.guideTone).toEqual({ from: 'b7', to: '3', semitones: -1, kind: 'resolved' });
  });

  it('takes an anticipation that is a tone of the new chord and still sounds', () => {
    const [, second] = landings([[0, 1, 60], [3.5, 1, 57], [4.5, 0.5, 60], LAST]);
    expect(second).toMatchObject({ kind: 'landing', note: 1, role: 'third', offsetMs: -250 });
  });

  it('leaves a note that ends before the change to the old chord', () => {
    const [, second] = landings([[0, 1, 60], [3.5, 0.35, 57], [4.5, 0.5, 60], LAST]);
    expect(second).toMatchObject({ kind: 'landing', note: 2, degree: '5' });
    // One that ends as the chord arrives anticipates it.
    expect(landings([[0, 1, 60], [3.5, 0.5, 57], [4.5, 0.5, 60], LAST])[1]).toMatchObject({
      note: 1,
      degree: '3',
    });
  });

  it('waits one beat and the tolerance, and no longer', () => {
    expect(landings([[0, 1, 60], [5, 1, 57], LAST])[1]).toMatchObject({ kind: 'landing', note: 1 });
    expect(landings([[0, 1, 60], [5.09, 1, 57], LAST])[1]).toMatchObject({ kind: 'landing', note: 1 });
    expect(landings([[0, 1, 60], [5.11, 1, 57], LAST])[1]).toMatchObject({
      kind: 'open',
      note: null,
      degree: null,
    });
  });

  it('falls back on a note held across, judged against the new chord', () => {
    const [, second] = landings([[2, 4, 58], LAST]);
    expect(second).toMatchObject({
      kind: 'held',
      note: 0,
      degree: '11',
      role: 'colour',
      offsetMs: null,
      function: 'free',
    });
  });

  it('calls a held note that steps into the chord a suspension', () => {
    const [, second] = landings([[2, 3.5, 58], [5.5, 1, 57], LAST]);
    expect(second).toMatchObject({ kind: 'held', degree: '11', function: 'suspension' });
  });

  it('tells what a held note does: it steps on, or is free', () => {
    const held = (...after: readonly Played[]) => landings([[2, 3.5, 58], ...after, LAST])[1]!.function;
    expect(held([5.5, 1, 60])).toBe('suspension');
    expect(held([5.5, 0.5, 58], [6, 1, 57])).toBe('suspension');
    expect(held([5.5, 1, 59])).toBe('passing');
    expect(held([5.5, 1, 61])).toBe('free');
  });

  // F7 arrives at beat 4; hands lie 0.03 of a beat behind it on average, and the tolerance is a tenth of a beat.
  it('of two notes struck round a change, is the one nearer to it, where the first is let go as the second is struck', () => {
    const landed = (first: Played, second: Played) => landings([[0, 1, 64], first, second, LAST])[1]!.note;
    expect(landed([3.92, 0.2, 60], [4.05, 1, 57])).toBe(2);
    expect(landed([3.92, 0.6, 60], [4.05, 1, 57])).toBe(1);
    expect(landed([3.98, 0.2, 60], [4.2, 1, 57])).toBe(1);
    // An eighth early it leads into the note that is struck a little late, up to 0.3 of a beat.
    expect(landed([3.7, 0.5, 57], [4.2, 1, 60])).toBe(2);
    expect(landed([3.7, 0.5, 57], [4.35, 1, 60])).toBe(1);
  });

  it('counts a rest apart', () => {
    const { landings: all, summary } = gradeLine(CHART, [[0, 1, 64], LAST]);
    expect(all.map(({ kind }) => kind)).toEqual(['landing', 'open', 'open', 'landing']);
    expect(summary.landings).toEqual({ count: 4, open: 2, chordTones: 2, thirds: 2 });
  });

  it('tells a guide tone that stays', () => {
    const [, second] = landings([[2, 1, 65], [4, 1, 65], [8, 1, 64], LAST], '| Dm7 | G7 | Cmaj7 | Cmaj7 |');
    expect(second!.guideTone).toEqual({ from: 'b3', to: 'b7', semitones: 0, kind: 'kept' });
  });

  it('sees where a landing on the b3 leans', () => {
    const [first] = landings([[0, 0.25, 63], [0.25, 1, 64], LAST]);
    expect(first).toMatchObject({ role: 'blue', leansInto: 1 });
  });

  it('asks for nothing over N.C., and again when a chord comes back', () => {
    const chords = landings([[0, 1, 60], [8, 1, 60], LAST], '| C7 | N.C. | C7 | G7 |').map(
      ({ chord }) => chord,
    );
    expect(chords).toEqual(['C7', 'C7', 'G7']);
  });

  it('does not ask about the same chord written again, nor about what comes after the last note', () => {
    expect(landings([[0, 1, 60]], '| C7 | C7 | F7 | G7 |')).toHaveLength(1);
    expect(landings([[0, 4.005, 60]])).toHaveLength(1);
  });

  it('asks about a change into which the last note is held, however briefly', () => {
    const [, second] = landings([[0, 4.1, 60]]);
    expect(second).toMatchObject({ kind: 'held', note: 0, degree: '5' });
  });

  it('does not ask about another chorus into which the last note merely rings', () => {
    expect(landings([[12, 4.2, 59]])).toHaveLength(4);
    expect(landings([[12, 4.3, 59]])).toHaveLength(5);
  });

  it('begins with the first chord of the chart, also when the player comes in later', () => {
    expect(landings([[6, 1, 57], LAST])[0]).toMatchObject({ kind: 'open', fromChord: null });
  });
});

describe('changes over the choruses', () => {
  /** Two bars, four times: C7 with the b3 leaning into the 3, F7 on B. */
  const played = [0, 8, 16, 24].flatMap((at): readonly Played[] => [
    [at, 0.25, 63],
    [at + 0.25, 1, 64],
    [at + 4, 1, 71],
  ]);

  it('names what always and what never works, by bar and by chord', () => {
    const { byBar, byChord } = gradeLine('| C7 | F7 |', played).changes;
    expect(byBar.map(({ bar, chord, count, habit }) => [bar, chord, count, habit])).toEqual([
      [0, 'C7', 4, 'mixed'],
      [1, 'F7', 4, 'never a chord tone'],
    ]);
    expect(byChord.map(({ chord, chordTones, thirds }) => [chord, chordTones, thirds])).toEqual([
      ['C7', 0, 0],
      ['F7', 0, 0],
    ]);
  });

  it('needs to have seen a change twice', () => {
    expect(gradeLine('| C7 | F7 |', played.slice(0, 3)).changes.byBar[1]!.habit).toBe('seldom');
  });
});
