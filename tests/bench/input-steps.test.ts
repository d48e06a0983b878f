import { expect, it } from 'vitest';
import { chance } from '../../src/core/base/random.ts';
import { inputSteps } from './input-steps.ts';

const RATE = 44_100;
const FRAMES = 441;
const SECONDS = 30;

/** Noise in buffers of 10 ms, as a microphone delivers it. */
function delivered(): Int16Array[] {
  const { next } = chance(7);
  return Array.from({ length: 100 * SECONDS }, () =>
    Int16Array.from({ length: FRAMES }, () => Math.round(20_000 * (next() - 0.5))),
  );
}

const joined = (pieces: readonly Int16Array[]) => Int16Array.from(pieces.flatMap((piece) => [...piece]));
const SILENCE = new Int16Array(FRAMES);
const clockAt = (behindMs: (second: number) => number) =>
  Array.from({ length: 4 * SECONDS }, (_, i) => ({
    machineMs: 250 * i,
    contextSeconds: i / 4 - behindMs(i / 4) / 1000,
  }));
const logOf = (buffers: readonly Int16Array[], leftOut = Infinity) =>
  buffers.map((piece, i) => ({
    capturedMs: 10 * i + (i < leftOut ? 0 : 20),
    frames: FRAMES,
    sign: [...piece.subarray(0, 6)],
  }));

it('tells silence that was put in, and a buffer that was left out', () => {
  const buffers = delivered();
  const recording = joined([
    ...buffers.slice(0, 700),
    SILENCE,
    ...buffers.slice(700, 1500),
    ...buffers.slice(1501),
  ]);
  const steps = inputSteps({ buffers: logOf(buffers), clock: clockAt(() => 0) }, recording, RATE);
  expect(steps.inBrowser).toEqual([
    { atSeconds: 7.01, ms: 10 },
    { atSeconds: 15.01, ms: -10 },
  ]);
  expect(steps.atMicrophone).toEqual([]);
  expect(steps.againstBandMs.map(Math.round)).toEqual([0, 10, 10, 0, 0, 0]);
});

it('tells what the microphone left out from what the output did: where both stood still alike the sound is at its place', () => {
  const buffers = delivered();
  const clock = clockAt((second) => (second < 12 ? 0 : 20));
  const steps = inputSteps({ buffers: logOf(buffers, 1200), clock }, joined(buffers), RATE);
  expect(steps.inBrowser).toEqual([]);
  expect(steps.atMicrophone).toEqual([{ atSeconds: 12, ms: 20 }]);
  expect(steps.clockBehindMs).toBeCloseTo(20);
  expect(Math.round(steps.againstBandMs.at(-1)!)).toBe(0);
});
