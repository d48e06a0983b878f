import { describe, expect, test } from 'vitest';
import { random } from '../../../../fixtures/lines/random.ts';
import { convolve } from '../../../../fixtures/lines/room.ts';
import { roomPath } from '../../../../fixtures/room/rooms.ts';
import { DIRECT_REACH, directSound } from '../../../../src/core/room/path/first-guess.ts';
import { ROOM_HZ } from '../../../../src/core/room/align/room-rate.ts';

const length = 5 * ROOM_HZ;
const dice = random(51);
/** Strokes of coloured noise, another loudness each. */
const band = new Float32Array(length);
let loudness = 0;
for (let i = 0; i < length; i++) {
  if (i % 2000 === 0) loudness = dice.between(0.02, 0.2);
  band[i] = loudness * Math.exp(-(i % 2000) / 900) * dice.normal();
}
/** Plucked tones over it, as loud. */
const player = Float32Array.from({ length }, (_, i) => {
  const t = (i % 4000) / ROOM_HZ;
  const hz = 110 * 2 ** (((Math.floor(i / 4000) * 5) % 12) / 12);
  return [1, 2, 3, 5].reduce(
    (sum, n) => sum + (0.1 / n) * Math.exp(-4 * t) * Math.sin(2 * Math.PI * n * hz * t),
    0,
  );
});

const gainAt = (taps: Float32Array, hz: number) => {
  let [re, im] = [0, 0];
  for (const [i, tap] of taps.entries()) {
    const angle = (2 * Math.PI * hz * (i - DIRECT_REACH)) / ROOM_HZ;
    re += tap * Math.cos(angle);
    im -= tap * Math.sin(angle);
  }
  return Math.hypot(re, im);
};
const guessed = (path: Float32Array) => {
  const take = convolve(band, path).map((x, i) => x + player[i]!);
  return directSound(take, band, 0);
};

describe('the first guess of how the band comes back', () => {
  test('a good speaker: one number', () => {
    const taps = guessed(Float32Array.of(0.5));
    expect(taps[DIRECT_REACH]).toBeCloseTo(0.5, 1);
    for (const hz of [100, 500, 2000]) expect(Math.abs(gainAt(taps, hz) - 0.5)).toBeLessThan(0.05);
  });

  test('a laptop without bass: none there, and what it has above', () => {
    const path = roomPath({ rt60Seconds: 0.2, wetDb: -40, highPassHz: 400 }, ROOM_HZ, 0, 3);
    const taps = guessed(path);
    expect(gainAt(taps, 100)).toBeLessThan(0.25);
    for (const hz of [1000, 2500]) expect(Math.abs(gainAt(taps, hz) - 1)).toBeLessThan(0.12);
  });

  test('no band in the take: nothing', () => {
    const taps = directSound(player, band, 0);
    for (const hz of [100, 500, 2000]) expect(gainAt(taps, hz)).toBeLessThan(0.05);
  });
});
