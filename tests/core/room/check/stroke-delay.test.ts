/** Strokes are made of noise that dies within 60 ms, as a muted string sounds (common practice). */
import { describe, expect, it } from 'vitest';
import { chance } from '../../../../src/core/base/random.ts';

import { strokeClicks } from '../../../../src/core/room/check/stroke-clicks.ts';
import { delayOfStrokes, findStrokes, measureStrokes } from '../../../../src/core/room/check/stroke-delay.ts';

const RATE = 48_000;
const clicks = Array.from({ length: 8 }, (_, i) => 1 + 0.75 * i);

/** Muted strokes at these moments over a noise floor, in full scale. */
function recordingOf(strokeSeconds: readonly number[], floor = 0.0005): Float32Array {
  const random = chance(7).next;
  const samples = Float32Array.from({ length: 9 * RATE }, () => floor * (2 * random() - 1));
  for (const start of strokeSeconds) {
    const from = Math.round(start * RATE);
    for (let i = 0; i < 0.06 * RATE && from + i < samples.length; i++)
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

describe('the recording of clicks and strokes', () => {
  const countIn = [0.5, 1.25, 2, 2.75];
  const asked = Array.from({ length: 8 }, (_, i) => 3.5 + 0.75 * i);
  /** The clicks themselves in the recording, as a microphone before a speaker has them. */
  function withClicks(samples: Float32Array, delaySeconds: number, gain: number): Float32Array {
    const sounding = samples.slice();
    const { sounds } = strokeClicks(RATE);
    [...countIn, ...asked].forEach((at, i) => {
      const from = Math.round((at + delaySeconds) * RATE);
      sounds[i]!.forEach((value, k) => (sounding[from + k] = (sounding[from + k] ?? 0) + gain * value));
    });
    return sounding;
  }
  const strokesAfter = (delay: number) => {
    const long = new Float32Array(12 * RATE);
    const strokes = recordingOf(
      asked.map((click) => click - 2.5 + delay),
      0.0005,
    );
    long.set(strokes, Math.round(2.5 * RATE));
    const random = chance(9).next;
    for (let i = 0; i < 2.5 * RATE; i++) long[i] = 0.0005 * (2 * random() - 1);
    return long;
  };

  it('plays four clicks of the count-in and eight others, one every 0.75 s', () => {
    const { sounds, silenceSeconds, countedIn } = strokeClicks(RATE);
    expect(sounds).toHaveLength(12);
    expect(countedIn).toBe(4);
    expect(sounds[0]!.length / RATE + silenceSeconds).toBeCloseTo(0.75, 6);
    expect(Math.max(...sounds[11]!.map(Math.abs))).toBeLessThan(0.5);
  });

  it('gives the delay of the strokes', () => {
    expect(measureStrokes(strokesAfter(0.21), RATE, countIn, asked)).toMatchObject({
      ok: true,
      value: { delaySeconds: expect.closeTo(0.21, 2) as number, strokes: 8 },
    });
  });

  it('does not take clicks that come back through the microphone for strokes', () => {
    const clicksAlone = withClicks(strokesAfter(99), 0.09, 0.3);
    expect(measureStrokes(clicksAlone, RATE, countIn, asked)).toMatchObject({
      problem: { code: 'soundCheck.clicksHeard' },
    });
    const both = withClicks(strokesAfter(0.21), 0.09, 0.3);
    expect(measureStrokes(both, RATE, countIn, asked)).toMatchObject({
      problem: { code: 'soundCheck.clicksHeard' },
    });
  });

  it('hears strokes through a click that leaks far below them', () => {
    const faint = withClicks(strokesAfter(0.21), 0.09, 0.0005);
    expect(measureStrokes(faint, RATE, countIn, asked)).toMatchObject({
      value: { delaySeconds: expect.closeTo(0.21, 2) as number },
    });
  });

  it('says what to do where strokes and clicks were not together', () => {
    const silent = measureStrokes(strokesAfter(99), RATE, countIn, asked);
    expect(silent).toMatchObject({ problem: { code: 'soundCheck.strokesApart', facts: { asked: 8 } } });
  });
});
