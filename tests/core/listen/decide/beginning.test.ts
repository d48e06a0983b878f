/** Where a note begins without a stroke of a known pitch: each limit on both sides. */
import { describe, expect, test } from 'vitest';
import { beginningOf, levelHasRisen, pitchThatStands } from '../../../../src/core/listen/decide/beginning.ts';
import { isAtRest, standOn } from '../../../../src/core/listen/decide/maker.ts';
import type { OpenNote } from '../../../../src/core/listen/decide/open-note.ts';
import { RecentLevels } from '../../../../src/core/listen/decide/recent-levels.ts';
import { pitches, times, trackOf } from './made-track.ts';

const levelsAfter = (...levelsDb: readonly number[]): RecentLevels => {
  const levels = new RecentLevels();
  for (const levelDb of levelsDb) levels.take(levelDb);
  return levels;
};
const many = (count: number, levelDb: number) => new Array<number>(count).fill(levelDb);
const at = (levelDb: number) => trackOf(times(10, { levelDb }));

describe('the level that a note must stand out from', () => {
  test('is 9 dB over the quietest of late', () => {
    const room = levelsAfter(...many(200, -60));
    expect(room.isTooQuiet(at(-51.5), 0)).toBe(true);
    expect(room.isTooQuiet(at(-50.5), 0)).toBe(false);
  });

  test('is −36 dBFS before anything was heard', () => {
    expect(new RecentLevels().isTooQuiet(at(-36.5), 0)).toBe(true);
    expect(new RecentLevels().isTooQuiet(at(-35.5), 0)).toBe(false);
  });

  test('the quietest falls by 0.3 of the way and rises by 0.024 dB a frame', () => {
    // −45, and 0.3 of the 15 dB down to −60 is −49.5: the limit is −40.5.
    expect(levelsAfter(-60).isTooQuiet(at(-40.7), 0)).toBe(true);
    expect(levelsAfter(-60).isTooQuiet(at(-40.3), 0)).toBe(false);
    // After 100 louder frames −42.6 from −45: the limit is −33.6.
    const risen = levelsAfter(...many(100, -30));
    expect(risen.isTooQuiet(at(-33.8), 0)).toBe(true);
    expect(risen.isTooQuiet(at(-33.4), 0)).toBe(false);
  });

  test('is 32 dB under the loudest of late, which falls by 0.08 dB a frame', () => {
    const loud = levelsAfter(...many(200, -60), 0);
    expect(loud.isTooQuiet(at(-32.5), 0)).toBe(true);
    expect(loud.isTooQuiet(at(-31.5), 0)).toBe(false);
    // 100 frames later it is −8, the limit −40.
    const later = levelsAfter(...many(200, -60), 0, ...many(100, -60));
    expect(later.isTooQuiet(at(-40.5), 0)).toBe(true);
    expect(later.isTooQuiet(at(-39.5), 0)).toBe(false);
  });

  test('may be reached two frames late', () => {
    const room = levelsAfter(...many(200, -60));
    const rising = (frame: number) =>
      room.isTooQuiet(trackOf(times(6, {}).map((_, f) => ({ levelDb: f === frame ? -20 : -60 }))), 1);
    expect(rising(3)).toBe(false);
    expect(rising(2)).toBe(true);
    expect(rising(4)).toBe(true);
  });
});

describe('a note without a stroke', () => {
  const levels = levelsAfter(...many(200, -60));

  test('stands within a semitone for four frames', () => {
    const standing = (...midis: readonly number[]) =>
      pitchThatStands({
        track: trackOf([...pitches(...midis), ...times(6, { midi: NaN })]),
        frame: 0,
        levels,
      });
    expect(standing(60, 60.3, 60.6, 60.95)).toBeCloseTo(60.4625, 3);
    expect(standing(60, 60.3, 60.6, 61.05)).toBeNaN();
    expect(standing(60, 60, 60)).toBeCloseTo(60, 9);
    expect(standing(60, 60)).toBeNaN();
    expect(standing(NaN, 60, 60, 60)).toBeNaN();
  });

  test('the level has risen by 6 dB from the lowest of ten frames before to the third after', () => {
    const risen = (lowest: number, after: number, lowAt = 10, highAt = 23) =>
      levelHasRisen(
        trackOf(
          times(40, {}).map((_, f) => ({ levelDb: f === lowAt ? lowest : f === highAt ? after : -30 })),
        ),
        20,
      );
    expect(risen(-40, -33.9)).toBe(true);
    expect(risen(-40, -34.1)).toBe(false);
    expect(risen(-40, -30, 9)).toBe(false);
    expect(risen(-30, -20, 10, 22)).toBe(false);
    expect(risen(-30, -20, 10, 24)).toBe(false);
  });

  test('begins with the stroke whose pitch was still to come, within 100 ms', () => {
    const track = trackOf(times(40, {}));
    const after = (seconds: number) =>
      beginningOf(60, {
        track,
        frame: 20,
        pending: { seconds: 0.16 - seconds, flux: 0.4, ratio: 9, energyRatio: 2 },
      });
    expect(after(0.098)).toEqual({ onsetSeconds: 0.16 - 0.098, pitch: 60, flux: 0.4 });
    expect(after(0.102)).toBeNull();
  });
});

describe('a note that goes on', () => {
  const openOf = (values: Partial<OpenNote> = {}): OpenNote => ({
    onsetSeconds: 0.08,
    attack: 'struck',
    from: 10,
    last: 20,
    pitch: 60,
    plateauFrom: 10,
    peakDb: -20,
    flux: 0.5,
    pitchFromAttack: false,
    ringing: null,
    handedOut: false,
    framesAway: 0,
    ...values,
  });

  test('its centre follows over two frames at first and twelve later', () => {
    const after = (frame: number) => {
      const open = openOf();
      standOn(open, frame, 60.24);
      return open.pitch;
    };
    expect(after(10)).toBeCloseTo(60.12, 9);
    expect(after(14)).toBeCloseTo(60.04, 9);
    expect(after(20)).toBeCloseTo(60.02, 9);
    expect(after(60)).toBeCloseTo(60.02, 9);
  });

  test('is handed out live after 100 ms, once it rests within a quarter tone as far as can be seen', () => {
    const seen = (frame: number, semitones: number, movedAt = 28) => {
      const midis = times(30, {}).map((_, f) => ({ midi: f === movedAt ? 60 + semitones : 60 }));
      return isAtRest(trackOf(midis), frame, openOf({ last: frame }));
    };
    // Onset 80 ms: frame 23 is 104 ms later, frame 22 96 ms.
    expect(seen(23, 0.24)).toBe(true);
    expect(seen(22, 0.24)).toBe(false);
    expect(seen(23, 0.26)).toBe(false);
    expect(seen(23, 1, 19)).toBe(false);
    expect(seen(23, 1, 18)).toBe(true);
  });
});
