import { describe, expect, test } from 'vitest';
import {
  bandInARoom,
  levelDb,
  lineAndParts,
  speakerPath,
  throughSpeaker,
} from '../../../../fixtures/room/band-in-a-room.ts';
import { roomPath } from '../../../../fixtures/room/rooms.ts';
import { align } from '../../../../src/core/room/align/align.ts';
import { interpolated } from '../../../../src/core/base/interpolate.ts';
import { removeBand } from '../../../../src/core/room/cancel/remove-band.ts';
import { ROOM_HZ, toRoomRate } from '../../../../src/core/room/align/room-rate.ts';

const scene = {
  instrument: 'nylon',
  sampleRate: ROOM_HZ,
  seconds: 30,
  seed: 741,
  delaySeconds: 0.04,
  bandDb: 0,
};
const heard = await bandInARoom(scene);

/** Later by so many seconds; earlier where negative. */
const late = (signal: Float32Array, seconds: number) => {
  const by = Math.round(seconds * ROOM_HZ);
  return signal.map((_, i) => signal[i - by] ?? 0);
};

describe('where the backing lies in the take', () => {
  test.each([
    [0, 0],
    [3.217, 100],
    [-4.5, -80],
    [9.4, 50],
  ])('%s s away, drifting by %s ppm', (seconds, ppm) => {
    const microphone = heard.player.map(
      (x, i) => x + interpolated(heard.echo, (i - seconds * ROOM_HZ) * (1 + ppm / 1e6)),
    );
    const found = align(microphone, heard.band, ROOM_HZ)!;
    expect(Math.abs(found.offsetSeconds - seconds - scene.delaySeconds)).toBeLessThan(0.002);
    expect(Math.abs(found.driftPpm - ppm)).toBeLessThan(4);
    expect(found.slips).toEqual([]);
    expect(found.runs.length).toBe(1);
  });

  test('with reflections ten decibels above the direct sound the direct sound is found, not the strongest arrival', () => {
    const path = roomPath({ rt60Seconds: 0.4, wetDb: 10 }, ROOM_HZ, 0.07, 11);
    const echo = throughSpeaker(heard.band, path);
    const loudness = 10 ** (-levelDb(echo, heard.player, ROOM_HZ, [0, 30]) / 20);
    const found = align(
      heard.player.map((x, i) => x + loudness * echo[i]!),
      heard.band,
      ROOM_HZ,
    )!;
    expect(Math.abs(found.offsetSeconds - 0.07)).toBeLessThan(0.001);
  });

  test('a band that is not in the take is not found', () => {
    expect(align(heard.player, heard.band, ROOM_HZ)).toBeNull();
    expect(
      removeBand(
        { samples: heard.player, sampleRate: ROOM_HZ },
        { samples: heard.band, sampleRate: ROOM_HZ },
      ),
    ).toBeNull();
  });
});

describe('without a sweep', () => {
  test('the band goes, the player stays', () => {
    const take = sumOf(heard.player, late(heard.echo, 1.3));
    const out = removeBand(
      { samples: take, sampleRate: ROOM_HZ },
      { samples: heard.band, sampleRate: ROOM_HZ },
    )!;
    const error = out.samples.map((x, i) => x - heard.player[i]!);
    expect(levelDb(error, heard.player, ROOM_HZ, [2, 29])).toBeLessThan(-20);
    expect(out.removedDb).toBeGreaterThan(6);
    expect(out.samples.length).toBe(take.length);
  });

  test('take and backing may come at rates of their own', async () => {
    const at44 = await bandInARoom({ ...scene, seconds: 12, sampleRate: 44_100 });
    const out = removeBand(
      { samples: at44.microphone, sampleRate: 44_100 },
      { samples: toRoomRate(at44.band, 44_100), sampleRate: ROOM_HZ },
    )!;
    const player = toRoomRate(at44.player, 44_100);
    const error = out.samples.map((x, i) => x - player[i]!);
    expect(levelDb(error, player, ROOM_HZ, [3, 11])).toBeLessThan(-10);
    expect(Math.abs(out.alignment.offsetSeconds - scene.delaySeconds)).toBeLessThan(0.002);
  });

  test('a backing in stereo goes by two paths, from two speakers', async () => {
    const { player, parts } = await lineAndParts({ ...scene, seconds: 8, seed: 743 });
    const [bass, chords, drums] = parts as [Float32Array, Float32Array, Float32Array];
    const left = bass.map((x, i) => x + 1.4 * chords[i]! + 0.4 * drums[i]!);
    const right = bass.map((x, i) => x + 1.4 * drums[i]!);
    const echo = sumOf(
      throughSpeaker(left, speakerPath(ROOM_HZ, 0.04, 5)),
      throughSpeaker(right, speakerPath(ROOM_HZ, 0.0405, 6)),
    );
    const take = { samples: sumOf(player, echo), sampleRate: ROOM_HZ };
    const middle = left.map((x, i) => (x + right[i]!) / 2);
    const side = left.map((x, i) => (x - right[i]!) / 2);
    const leftDb = (backing: { samples: Float32Array; side?: Float32Array }) => {
      const out = removeBand(take, { ...backing, sampleRate: ROOM_HZ })!;
      return levelDb(
        out.samples.map((x, i) => x - player[i]!),
        player,
        ROOM_HZ,
        [1, 7],
      );
    };
    const both = leftDb({ samples: middle, side });
    expect(both).toBeLessThan(leftDb({ samples: middle }) - 3);
  });

  test('resamples inputs of any length, also very short ones', () => {
    for (const length of [0, 1, 500]) {
      const samples = new Float32Array(length);
      expect(removeBand({ samples, sampleRate: 48_000 }, { samples, sampleRate: 48_000 })).toBeNull();
    }
  });
});

function sumOf(a: Float32Array, b: Float32Array): Float32Array {
  return a.map((x, i) => x + b[i]!);
}
