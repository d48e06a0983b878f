/** Strokes are made of noise that dies within 60 ms, as a muted string sounds (common practice). */
import { describe, expect, it } from 'vitest';
import { chance } from '../../../../src/core/base/random.ts';

import { delayOfStrokes, findStrokes } from '../../../../src/core/room/check/stroke-delay.ts';

const RATE = 48_000;
const clicks = Array.from({ length: 8 }, (_, i) => 1 + 0.75 * i);

/** Muted strokes at these moments over a noise floor, in full scale. */
function recordingOf(strokeSeconds: readonly number[], floor = 0.0005): Float32Array {
  const random = chance(7).next;
  const samples = Float32Array.from({ length: 9 * RATE }, () => floor * (2 * random() - 1));
  for (const start of strokeSeconds) {
    const from = Math.round(start * RATE);
    for (let i = 0; i < 0.06 * RATE; i++)
      samples[from + i]! += 0.2 * Math.exp(-i / (0.012 * RATE)) * (2 * random() - 1);
  }
  return samples;
}

describe('the delay from muted strokes', () => {
  it('dates each stroke within 4 ms', () => {
    const played = clicks.map((click) => click + 0.19);
    const found = findStrokes(recordingOf(played), RATE);
    expect(found).toHaveLength(8);
    for (const [i, stroke] of found.entries()) expect(Math.abs(stroke - played[i]!)).toBeLessThan(0.004);
  });

  it('hears no stroke in hum and noise', () => {
    const random = chance(3).next;
    const hum = Float32Array.from(
      { length: 5 * RATE },
      (_, i) => 0.02 * Math.sin((2 * Math.PI * 50 * i) / RATE) + 0.001 * (2 * random() - 1),
    );
    expect(findStrokes(hum, RATE)).toEqual([]);
  });

  it.each([0.04, 0.19, 0.48])('finds a round trip of %f s from a player who scatters by 15 ms', (delay) => {
    const random = chance(11).next;
    const scatter = () => 0.03 * (random() + random() + random() - 1.5);
    const measured = delayOfStrokes(
      clicks.map((click) => click + delay + scatter()),
      clicks,
    );
    expect(Math.abs(measured!.delaySeconds - delay)).toBeLessThan(0.02);
    expect(measured!.strokes).toBe(8);
    expect(measured!.spreadSeconds).toBeLessThan(0.05);
  });

  it('takes the median, so that one late and one missing stroke change little', () => {
    const played = clicks.slice(1).map((click, i) => click + 0.12 + (i === 3 ? 0.07 : 0));
    expect(delayOfStrokes(played, clicks)).toMatchObject({
      delaySeconds: expect.closeTo(0.12, 3),
      strokes: 7,
    });
  });

  it('says nothing of five strokes, nor of strokes that do not follow the click', () => {
    expect(
      delayOfStrokes(
        clicks.slice(0, 5).map((click) => click + 0.1),
        clicks,
      ),
    ).toBeNull();
    const random = chance(5).next;
    expect(
      delayOfStrokes(
        clicks.map((click) => click + 0.65 * random()),
        clicks,
      ),
    ).toBeNull();
  });
});
