import { english } from '../../english.ts';
import { describe, expect, it } from 'vitest';
import { timelineFromTempo, type TempoOptions } from '../../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import type { Landing } from '../../../src/core/take/schema.ts';
import type { LiveMoment } from '../../../src/state/live-moment.ts';
import { momentOf, passAt, settledLanding } from '../../../src/ui/playing/moment.ts';

const at = (beat: number): LiveMoment =>
  ({ beat, beatInBar: 0, chorus: 0, targets: [] }) as unknown as LiveMoment;
const course = (text: string, options: Partial<TempoOptions> = {}) => {
  const chart = parseChart(text);
  if (!chart.ok) throw new Error(english(chart.problem));
  return timelineFromTempo(chart.value, { bpm: 100, ...options });
};
const turnAt = (beat: number, turnBars?: number) =>
  momentOf(at(beat), course('| C7 | F7 |', turnBars === undefined ? {} : { turnBars })).turn;

describe('whose turn it is', () => {
  it('the player begins; bars and beats are counted to the end of the turn, the one that goes on with them', () => {
    expect(turnAt(0, 4)).toEqual({ whose: 'player', barsLeft: 4, beatsLeft: 16 });
    expect(turnAt(15.5, 4)).toEqual({ whose: 'player', barsLeft: 1, beatsLeft: 1 });
    expect(turnAt(16, 4)).toEqual({ whose: 'band', barsLeft: 4, beatsLeft: 16 });
    expect(turnAt(28.2, 4)).toEqual({ whose: 'band', barsLeft: 1, beatsLeft: 4 });
    expect(turnAt(32, 4)?.whose).toBe('player');
  });

  it('is nobody’s where nobody trades, and while counting in', () => {
    expect(turnAt(5)).toBeNull();
    expect(turnAt(-1, 4)).toBeNull();
  });
});

it('the tempo and the key stand there where they change on the way, and nothing where not', () => {
  const rising = course('| C7 |', { rise: { byBpm: 8, everyBars: 1 } });
  expect([-1, 0, 3.9, 4, 9].map((beat) => momentOf(at(beat), rising).bpm)).toEqual([100, 100, 100, 108, 116]);
  const through = course('key: C\n| C7 |\nkey: F# minor\n| F#m7 |');
  expect([0, 4, 8].map((beat) => momentOf(at(beat), through).key)).toEqual(['C', 'F# minor', 'C']);
  expect(momentOf(at(0), course('| C7 |'))).toMatchObject({ bpm: null, key: null });
});

it('a landing is said once it stands: a beat after its change', () => {
  const [one, two] = [{ beat: 0 }, { beat: 4 }] as [Landing, Landing];
  expect(settledLanding([one], { beat: 0 })).toBeNull();
  expect(settledLanding([one, two], { beat: 4 })).toBe(one);
  expect(settledLanding([one, two], { beat: 5 })).toBe(two);
});

describe('a form that goes through keys', () => {
  it('counts choruses by passes through the form, and says which of the keys it is in', () => {
    // Twelve keys of twelve bars in one round of 576 beats.
    const round = { bars: 144, beatsPerBar: 4 };
    expect(passAt(0, round, 12)).toEqual({ chorus: 0, key: 1, of: 12 });
    expect(passAt(48, round, 12)).toEqual({ chorus: 1, key: 2, of: 12 });
    expect(passAt(47.9, round, 12)?.chorus).toBe(0);
    expect(passAt(576, round, 12)).toEqual({ chorus: 12, key: 1, of: 12 });
    expect(passAt(-4, round, 12)?.chorus).toBe(0);
    expect(passAt(100, { bars: 12, beatsPerBar: 4 }, 1)).toBeNull();
  });
});
