/** Corrections of a beat track: what must hold for any track and any move. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  CLOSEST_SECONDS,
  evenOut,
  fillOut,
  goOnFrom,
  insertBeat,
  moveBeat,
  nearestMark,
  pinBeat,
  REACH_BEATS,
  removeBeat,
  secondsOf,
  trackOf,
  type BeatTrack,
} from '../../../src/core/beats/track.ts';

const steady = (count: number, step = 0.5, from = 1) =>
  trackOf(Array.from({ length: count }, (_, i) => from + i * step));

/** Tracks whose tempo wanders, some beats of them pinned. */
const tracks: fc.Arbitrary<BeatTrack> = fc
  .array(fc.tuple(fc.double({ min: 0.15, max: 1.2, noNaN: true }), fc.boolean()), {
    minLength: 3,
    maxLength: 40,
  })
  .map((steps) => {
    let at = 0;
    return {
      downbeat: 1,
      marks: steps.map(([step, pinned]) => ({ seconds: (at += step), pinned: pinned && step > 0.9 })),
    };
  });
const rises = (track: BeatTrack) =>
  secondsOf(track).every((seconds, i, all) => i === 0 || seconds > all[i - 1]!);

describe('moving a beat', () => {
  test('re-times its neighbours, the nearest most, and leaves those far away', () => {
    const moved = secondsOf(moveBeat(steady(33), 16, 9.04));
    const shift = moved.map((seconds, i) => seconds - (1 + i * 0.5));
    expect(shift[16]).toBeCloseTo(0.04, 9);
    for (let k = 1; k < REACH_BEATS; k++) {
      expect(shift[16 + k]!).toBeLessThan(shift[15 + k]!);
      expect(shift[16 + k]).toBeCloseTo(shift[16 - k]!, 9);
    }
    expect(shift[16 + REACH_BEATS]).toBe(0);
    expect(shift[0]).toBe(0);
  });

  test('a pinned beat stays, and so does all behind it', () => {
    const track = pinBeat(steady(33), 20, true);
    const moved = secondsOf(moveBeat(track, 16, 9.1));
    expect(moved.slice(20)).toEqual(secondsOf(track).slice(20));
    expect(moved[18]).toBeGreaterThan(10);
  });

  test('any track and any move: beats stay in order, no two come nearer than they may, pinned ones stay', () => {
    fc.assert(
      fc.property(tracks, fc.nat(), fc.double({ min: -3, max: 60, noNaN: true }), (track, any, seconds) => {
        const index = any % track.marks.length;
        const moved = moveBeat(track, index, seconds);
        expect(rises(moved)).toBe(true);
        expect(moved.marks[0]!.seconds).toBeGreaterThanOrEqual(-1e-9);
        moved.marks.forEach((mark, i) => {
          const was = track.marks[i]!;
          if (was.pinned && i !== index) expect(mark.seconds).toBe(was.seconds);
          const before = moved.marks[i - 1];
          if (before) expect(mark.seconds - before.seconds).toBeGreaterThan(CLOSEST_SECONDS - 1e-9);
        });
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  test('a beat that is not there is a bug of the caller', () => {
    expect(() => moveBeat(steady(4), 9, 1)).toThrow(RangeError);
  });
});

describe('beats more and less', () => {
  test('a beat comes in between, pinned, and bar 1 stays where it was', () => {
    const track = { ...steady(8), downbeat: 4 };
    const more = insertBeat(track, 1.25);
    expect(secondsOf(more).slice(0, 3)).toEqual([1, 1.25, 1.5]);
    expect(more.marks[1]!.pinned).toBe(true);
    expect(more.marks[more.downbeat]!.seconds).toBe(3);
    expect(removeBeat(more, 1)).toEqual(track);
  });

  test('one too near another is not taken', () => {
    const track = steady(8);
    expect(insertBeat(track, 1.55)).toBe(track);
  });

  test('where the first downbeat goes, the next beat is it', () => {
    const track = removeBeat({ ...steady(8), downbeat: 7 }, 7);
    expect(track.downbeat).toBe(6);
    expect(nearestMark(track, 99)).toBe(6);
    expect(nearestMark(trackOf([]), 1)).toBe(-1);
  });
});

describe('a stretch that was found wrong', () => {
  test('is laid evenly between two pinned beats', () => {
    let track = steady(9);
    for (const index of [2, 6]) track = pinBeat(track, index, true);
    track = { ...track, marks: track.marks.map((m, i) => (i === 4 ? { ...m, seconds: 3.2 } : m)) };
    expect(secondsOf(evenOut(track, 4)).map((s) => Number(s.toFixed(6)))).toEqual(secondsOf(steady(9)));
    expect(evenOut(track, 7)).toBe(track);
  });

  test('goes on at the pace before it, to the end or to the next pinned beat', () => {
    const lost = trackOf([1, 1.5, 2, 2.5, 3, 3.9, 4.1, 5.3, 6]);
    expect(secondsOf(goOnFrom(lost, 4, 6.2)).map((s) => Number(s.toFixed(6)))).toEqual([
      1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6,
    ]);
    const held = goOnFrom({ ...pinBeat(lost, 8, true), downbeat: 8 }, 4, 9);
    expect(held.marks[held.downbeat]!.seconds).toBe(6);
    expect(secondsOf(held)).toHaveLength(11);
  });

  test('beats go out to both ends of the recording, and bar 1 stays', () => {
    const track = fillOut({ ...steady(8, 0.5, 1.2), downbeat: 2 }, 6.5);
    expect(secondsOf(track)[0]).toBeCloseTo(0.2, 9);
    expect(secondsOf(track).at(-1)).toBeCloseTo(6.2, 9);
    expect(track.marks[track.downbeat]!.seconds).toBeCloseTo(2.2, 9);
  });
});
