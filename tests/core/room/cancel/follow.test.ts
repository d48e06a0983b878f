import { describe, expect, test } from 'vitest';
import {
  bandInARoom,
  levelDb,
  speakerPath,
  throughSpeaker,
} from '../../../../fixtures/room/band-in-a-room.ts';
import { random } from '../../../../fixtures/lines/random.ts';
import { BandFollower, LOOK_AHEAD } from '../../../../src/core/room/cancel/follow.ts';
import { interpolated } from '../../../../src/core/base/interpolate.ts';
import { BLOCK_SIZE, PARTITIONS, ROOM_HZ } from '../../../../src/core/room/align/room-rate.ts';
import { cancelled } from '../cancelled.ts';

const heard = await bandInARoom({
  instrument: 'steel',
  sampleRate: ROOM_HZ,
  seconds: 30,
  seed: 740,
  delaySeconds: 0.06,
  bandDb: 0,
});

/** A path as a sweep measures it: 3 % off. */
function sweptPath(path: Float32Array): Float32Array {
  const dice = random(3);
  return Float32Array.from(
    { length: BLOCK_SIZE * PARTITIONS },
    (_, i) => (path[i] ?? 0) * (1 + 0.03 * dice.normal()),
  );
}

const follower = (path: Float32Array | null) =>
  new BandFollower({
    blockSize: BLOCK_SIZE,
    partitions: PARTITIONS,
    path: [path],
    heldBackSamples: LOOK_AHEAD,
  });
const minus = (a: Float32Array, b: Float32Array) => a.map((x, i) => x - b[i]!);
const sumOf = (a: Float32Array, b: Float32Array) => a.map((x, i) => x + b[i]!);

/** What is left of the band, or gone of the player, against the player, dB, over a stretch of seconds. */
function errorDb(out: Float32Array, player: Float32Array, seconds: readonly [number, number]): number {
  return levelDb(minus(out, player), player, ROOM_HZ, seconds);
}

describe('the band out of the microphone', () => {
  test('by a swept path, band as loud as the player', () => {
    const out = cancelled(follower(sweptPath(heard.path)), heard.microphone, heard.band, LOOK_AHEAD);
    expect(errorDb(out, heard.player, [1, 30])).toBeLessThan(-18);
  });

  test('from nothing, learned from the take itself', () => {
    const out = cancelled(follower(null), heard.microphone, heard.band, LOOK_AHEAD);
    expect(errorDb(out, heard.player, [15, 30])).toBeLessThan(-10);
  });

  test('the player alone keeps his signal, whatever the band is told to have played', () => {
    const silence = new Float32Array(heard.player.length);
    const nothing = new Float32Array(BLOCK_SIZE * PARTITIONS);
    for (const path of [null, nothing, sweptPath(heard.path)]) {
      // No band at all: not a sample is touched.
      const alone = cancelled(follower(path), heard.player, silence, LOOK_AHEAD);
      expect(levelDb(minus(alone, heard.player), heard.player, ROOM_HZ, [0, 29])).toBeLessThan(-120);
    }
    // Headphones: the band plays, the sweep found no path.
    const phones = cancelled(follower(nothing), heard.player, heard.band, LOOK_AHEAD);
    expect(errorDb(phones, heard.player, [0, 29])).toBeLessThan(-25);
  });

  test('a volume knob turned by 6 dB either way: a second later the band is out as cleanly as before', () => {
    for (const gain of [2, 0.5]) {
      const turned = heard.echo.map((x, i) => (i < 6 * ROOM_HZ ? x : gain * x));
      const out = cancelled(
        follower(sweptPath(heard.path)),
        sumOf(heard.player, turned).subarray(0, 12 * ROOM_HZ),
        heard.band,
        LOOK_AHEAD,
      );
      // Against the player; of the band, 6 dB louder, 6 dB more may be left.
      expect(errorDb(out, heard.player, [7, 12])).toBeLessThan(gain > 1 ? -24 : -30);
    }
  });

  test('clocks that drift by 100 ppm from the first sample on are locked within 5 s, and nothing wrong is learned', () => {
    for (const ppm of [100, -100]) {
      const drifting = heard.band.map((_, i) => interpolated(heard.band, i * (1 - ppm * 1e-6)));
      const echo = throughSpeaker(drifting, heard.path);
      const swept = follower(sweptPath(heard.path));
      const out = cancelled(
        swept,
        sumOf(heard.player, echo).subarray(0, 12 * ROOM_HZ),
        heard.band,
        LOOK_AHEAD,
      );
      expect(errorDb(out, heard.player, [2, 5])).toBeLessThan(-20);
      expect(errorDb(out, heard.player, [5, 12])).toBeLessThan(-24);
      expect(Math.abs(swept.driftPpm - ppm)).toBeLessThan(10);
    }
  });

  test('a moved laptop is noticed, and its new path learned', () => {
    const moved = throughSpeaker(heard.band, speakerPath(ROOM_HZ, 0.061, 99));
    const loudness = 10 ** (-levelDb(moved, heard.echo, ROOM_HZ, [0, 30]) / 20);
    const echo = heard.echo.map((x, i) => (i < 8 * ROOM_HZ ? x : moved[i]! * loudness));
    const out = cancelled(follower(sweptPath(heard.path)), sumOf(heard.player, echo), heard.band, LOOK_AHEAD);
    expect(errorDb(out, heard.player, [20, 30])).toBeLessThan(-7);
  });
});

test('a signal between its samples: a tone of 4 kHz at 12 kHz within −60 dB, silence outside', () => {
  const tone = (t: number) => Math.sin((2 * Math.PI * 4000 * t) / ROOM_HZ);
  const signal = Float32Array.from({ length: 400 }, (_, i) => tone(i));
  for (let at = 20; at < 380; at += 0.37) {
    expect(Math.abs(interpolated(signal, at) - tone(at))).toBeLessThan(0.002);
  }
  expect(interpolated(signal, -30)).toBe(0);
  expect(interpolated(signal, 430.5)).toBe(0);
});
