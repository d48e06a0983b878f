/** Each rule against a new breath or bow, on both sides of each of its limits. */
import { describe, expect, test } from 'vitest';
import {
  isNewBreath,
  levelDoesNotDip,
  pitchAfterDip,
  pitchDoesNotStay,
  ripplesWithPeriod,
  rulesAgainstBreath,
  stringsBeat,
  strongAttackNear,
  tooSoonForBreath,
  type BreathEvidence,
} from '../../../../src/core/listen/decide/breath.ts';
import type { Ringing } from '../../../../src/core/listen/decide/ringing.ts';
import { times, trackOf } from './made-track.ts';

/** −20 dBFS, with one frame (30) so many dB lower; `rest` are the levels from there on. */
function dipped(dropDb: number, riseDb = dropDb, before: readonly number[] = times(30, {}).map(() => -20)) {
  const levels = [...before, -20 - dropDb, ...times(20, {}).map(() => -20 - dropDb + riseDb)];
  return trackOf(levels.map((levelDb) => ({ levelDb })));
}
const evidenceOf = (values: Partial<BreathEvidence> = {}): BreathEvidence => ({
  track: dipped(6),
  frame: 30,
  open: { from: 5, pitch: 60, ringing: null },
  later: [],
  ...values,
});

describe('a new breath or bow', () => {
  test('is a dip in level that fills again, with no rule against it', () => {
    expect(isNewBreath(evidenceOf())).toBe(true);
    expect(rulesAgainstBreath.map((rule) => rule(evidenceOf()))).toEqual(rulesAgainstBreath.map(() => false));
  });

  test('comes no sooner than five frames after the beginning', () => {
    expect(tooSoonForBreath(evidenceOf({ open: { from: 26, pitch: 60, ringing: null } }))).toBe(true);
    expect(tooSoonForBreath(evidenceOf({ open: { from: 25, pitch: 60, ringing: null } }))).toBe(false);
  });

  test('is not told under C2', () => {
    expect(ripplesWithPeriod(evidenceOf({ open: { from: 5, pitch: 35.8, ringing: null } }))).toBe(true);
    expect(ripplesWithPeriod(evidenceOf({ open: { from: 5, pitch: 36.2, ringing: null } }))).toBe(false);
  });

  test('dips by 4.5 dB and rises by 5', () => {
    const against = (dropDb: number, riseDb: number) =>
      levelDoesNotDip(evidenceOf({ track: dipped(dropDb, riseDb) }));
    expect(against(4.7, 5.2)).toBe(false);
    expect(against(4.3, 5.2)).toBe(true);
    expect(against(4.7, 4.8)).toBe(true);
    expect(levelDoesNotDip(evidenceOf({ frame: 29 }))).toBe(true);
    expect(levelDoesNotDip(evidenceOf({ frame: 31 }))).toBe(true);
  });

  test('falls within 72 ms, and fills within 64', () => {
    // Loud until frame 20 or 21, then 5.5 dB lower, and 0.1 dB lower still at frame 30.
    const since = (last: number) => {
      const levels = Array.from({ length: 52 }, (_, f) =>
        f <= last ? -20 : f === 30 ? -25.6 : f < 30 ? -25.5 : -20,
      );
      return levelDoesNotDip(evidenceOf({ track: trackOf(levels.map((levelDb) => ({ levelDb }))) }));
    };
    expect(since(21)).toBe(false);
    expect(since(20)).toBe(true);
    const until = (first: number) => {
      const levels = Array.from({ length: 52 }, (_, f) =>
        f < 30 ? -20 : f === 30 ? -26 : f >= first ? -20 : -25.9,
      );
      return levelDoesNotDip(evidenceOf({ track: trackOf(levels.map((levelDb) => ({ levelDb }))) }));
    };
    expect(until(38)).toBe(false);
    expect(until(39)).toBe(true);
  });

  test('is none where two strings beat', () => {
    const ringing = { draws: () => true } as unknown as Ringing;
    expect(stringsBeat(evidenceOf({ open: { from: 5, pitch: 60, ringing } }))).toBe(true);
  });

  test('is none where a strong attack comes within 45 ms', () => {
    const near = (seconds: number, flux: number) =>
      strongAttackNear(evidenceOf({ later: [{ seconds, flux, ratio: 20, energyRatio: 1 }] }));
    expect(near(0.24 + 0.043, 0.3)).toBe(true);
    expect(near(0.24 + 0.047, 0.3)).toBe(false);
    expect(near(0.24 + 0.043, 0.1)).toBe(false);
  });

  test('keeps its pitch, which is judged from the second frame after the dip on', () => {
    const after = (midi: number) => {
      const track = trackOf([...times(32, {}), ...times(20, { midi })]);
      return [pitchAfterDip(track, 30), pitchDoesNotStay(evidenceOf({ track }))];
    };
    expect(after(60.57)[0]).toBeCloseTo(60.57, 4);
    expect(after(60.57)[1]).toBe(false);
    expect(after(60.63)[1]).toBe(true);
    const two = trackOf([...times(31, {}), ...times(2, { midi: 70 }), ...times(20, { midi: NaN })]);
    expect(pitchAfterDip(two, 30)).toBeNaN();
    const next = trackOf([...times(32, {}), ...times(2, { midi: 61 }), ...times(20, { midi: NaN })]);
    expect(pitchAfterDip(next, 30)).toBeCloseTo(61, 6);
  });
});
