import { english } from '../../../english.ts';
import { describe, expect, test } from 'vitest';
import { random } from '../../../../fixtures/lines/random.ts';
import { convolve } from '../../../../fixtures/lines/room.ts';
import { speakerPath } from '../../../../fixtures/room/band-in-a-room.ts';
import { measurePath } from '../../../../src/core/room/path/measure-path.ts';
import { sweep, sweepShape } from '../../../../src/core/room/path/sweep.ts';

const rate = 48_000;
const played = sweep(sweepShape(rate)).map((x) => 0.1 * x);

function recorded(delaySeconds: number, snrDb: number, gain = 1): Float32Array {
  const dice = random(Math.round(1e4 * delaySeconds) + snrDb);
  const padded = new Float32Array(played.length + rate);
  padded.set(played);
  const echo = convolve(padded, speakerPath(rate, delaySeconds, 12)).map((x) => gain * x);
  const loudness = Math.sqrt(echo.reduce((sum, x) => sum + x * x, 0) / played.length);
  return echo.map((x) => x + loudness * 10 ** (-snrDb / 20) * dice.normal());
}

const measured = (sound: Float32Array) => {
  const path = measurePath(sound, played, rate);
  if (!path.ok) throw new Error(english(path.problem));
  return path.value;
};

describe('one sweep', () => {
  test.each([5, 60, 147.3, 300])('finds a delay of %s ms within 0.1 ms, down to 10 dB of noise', (ms) => {
    const truth = Math.round((ms / 1000) * rate) / rate;
    for (const snr of [40, 10]) {
      const { delaySeconds } = measured(recorded(ms / 1000, snr));
      expect(Math.abs(delaySeconds - truth)).toBeLessThan(0.0001);
    }
  });

  test('how loudly the band leaks is not made larger by noise', () => {
    const quiet = measured(recorded(0.06, 60)).leakDb;
    for (const snr of [20, 10])
      expect(Math.abs(measured(recorded(0.06, snr)).leakDb - quiet)).toBeLessThan(1);
    expect(measured(recorded(0.06, 60, 0.1)).leakDb).toBeCloseTo(quiet - 20, 1);
  });

  test('tells speakers from headphones', () => {
    expect(measured(recorded(0.06, 40)).through).toBe('speakers');
    const dice = random(4);
    const hiss = Float32Array.from({ length: played.length + rate }, () => 1e-3 * dice.normal());
    expect(measured(hiss).through).toBe('headphones');
  });

  test('silence, clipping and a noisy room get a sentence', () => {
    const silent = measurePath(new Float32Array(played.length + rate), played, rate);
    const clipped = measurePath(
      recorded(0.06, 60, 40).map((x) => Math.max(-1, Math.min(1, x))),
      played,
      rate,
    );
    const dice = random(5);
    const noisy = measurePath(
      Float32Array.from({ length: played.length + rate }, () => 0.1 * dice.normal()),
      played,
      rate,
    );
    for (const answer of [silent, clipped, noisy]) expect(answer.ok).toBe(false);
    expect(!silent.ok && english(silent.problem)).toMatch(/silence/);
    expect(!clipped.ok && english(clipped.problem)).toMatch(/too loud for the microphone/);
    expect(!noisy.ok && english(noisy.problem)).toMatch(/room is too loud/);
  });
});
