/** The newest 29 ms, as the live screen shows them. At the inner rate of 12 kHz the window holds 352 samples. */
import { describe, expect, it } from 'vitest';
import { NewestFrame } from '../../../../src/core/listen/live/newest.ts';
import { INNER_RATE } from '../../../../src/core/listen/tuning/frames.ts';
import { hzOf } from '../sounds.ts';

const tone = (midi: number, samples: number) =>
  Float32Array.from(
    { length: samples },
    (_, i) => 0.3 * Math.sin((2 * Math.PI * hzOf(midi) * i) / INNER_RATE),
  );
const best = (newest: NewestFrame) => {
  const { midi, clarity, count } = newest.look();
  let at = 0;
  for (let i = 1; i < count; i++) if (clarity[i]! > clarity[at]!) at = i;
  return count === 0 ? null : midi[at]!;
};

describe('the newest frame', () => {
  it('is dated in its middle, half of 29 ms before the newest sample', () => {
    const newest = new NewestFrame();
    newest.push(tone(60, 1200));
    expect(newest.look().seconds).toBeCloseTo(0.1 - 176 / INNER_RATE, 9);
    newest.push(tone(60, 30_000 - 1200 - 14_400));
    newest.push(tone(60, 14_400));
    expect(newest.look().seconds).toBeCloseTo(2.5 - 176 / INNER_RATE, 9);
  });

  it.each([40, 52, 60, 76])('tells the pitch of MIDI %i from one window of it', (midi) => {
    const newest = new NewestFrame();
    newest.push(tone(midi, 352));
    expect(best(newest)).toBeCloseTo(midi, 0);
  });

  it('tells none of silence', () => {
    const newest = new NewestFrame();
    newest.push(new Float32Array(1000));
    expect(best(newest)).toBeNull();
  });
});
