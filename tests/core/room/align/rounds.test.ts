import { describe, expect, test } from 'vitest';
import { bandInARoom } from '../../../../fixtures/room/band-in-a-room.ts';
import { speakerPath, throughSpeaker } from '../../../../fixtures/room/band-in-a-room.ts';
import { align } from '../../../../src/core/room/align/align.ts';
import { ROOM_HZ } from '../../../../src/core/room/align/room-rate.ts';

const { player, band } = await bandInARoom({
  instrument: 'jazz',
  sampleRate: ROOM_HZ,
  seconds: 24,
  seed: 742,
  delaySeconds: 0.04,
  bandDb: 0,
});
const path = speakerPath(ROOM_HZ, 0.04, 17);
const loop = band.slice(2 * ROOM_HZ, 9 * ROOM_HZ);
/** A take with the loop in it: `played` tells the loop's sample of each moment. */
const takeWith = (played: (i: number) => number) => {
  const echo = throughSpeaker(
    player.map((_, i) => played(i)),
    path,
  );
  return player.map((x, i) => x + echo[i]!);
};
const at = (seconds: number) => Math.round(seconds * ROOM_HZ);
const close = (found: readonly number[], wanted: readonly number[]) => {
  expect(found.length).toBe(wanted.length);
  for (const [i, seconds] of wanted.entries()) expect(Math.abs(found[i]! - seconds)).toBeLessThan(0.001);
};

describe('where a backing begins anew', () => {
  test('a loop without a gap, its first round found though every round fits', () => {
    const take = takeWith((i) => loop[i % loop.length]!);
    close(
      align(take, loop, ROOM_HZ)!.runs.map(({ offsetSeconds }) => offsetSeconds),
      [0.04, 7.04, 14.04, 21.04],
    );
  });

  test('played a second time after a pause', () => {
    const again = at(10.3);
    const take = takeWith((i) => loop[i < again ? i : i - again] ?? 0);
    close(
      align(take, loop, ROOM_HZ)!.runs.map(({ offsetSeconds }) => offsetSeconds),
      [0.04, 10.34],
    );
  });

  test('it ends, and the player goes on alone', () => {
    close(
      align(
        takeWith((i) => loop[i] ?? 0),
        loop,
        ROOM_HZ,
      )!.runs.map(({ offsetSeconds }) => offsetSeconds),
      [0.04],
    );
  });
});

describe('a browser that slips', () => {
  test.each([
    [0.03, 13],
    [-0.021, 8.5],
  ])('by %s s at %s s: the band is followed on both sides', (by, moment) => {
    const echo = throughSpeaker(band, path);
    const late = Math.round(by * ROOM_HZ);
    const take = player.map((x, i) => x + (i < at(moment) ? echo[i]! : (echo[i - late] ?? 0)));
    const { runs, slips } = align(take, band, ROOM_HZ)!;
    expect(runs.length).toBe(2);
    expect(runs[0]!.offsetSeconds).toBeCloseTo(0.04, 3);
    expect(runs[1]!.offsetSeconds).toBeCloseTo(0.04 + by, 3);
    expect(slips[0]!.bySeconds).toBeCloseTo(by, 3);
    expect(Math.abs(slips[0]!.atSeconds - moment)).toBeLessThan(1.5);
  });
});
