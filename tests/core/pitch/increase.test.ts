import { describe, expect, test } from 'vitest';
import { Increase, SPAN } from '../../../src/core/pitch/increase.ts';

const RATE = 12_000;
const hz = (midi: number): number => 440 * 2 ** ((midi - 69) / 12);

/** Six harmonics of one pitch from `from` on. */
function addTone(samples: Float32Array, midi: number, from: number, level: number): void {
  for (let i = from; i < samples.length; i++)
    for (let h = 1; h <= 6; h++)
      samples[i]! += (level / h) * Math.sin((2 * Math.PI * h * hz(midi) * i) / RATE + h);
}

describe('what an attack adds', () => {
  test('the new pitch over a louder one that rings on', () => {
    const samples = new Float32Array(2 * SPAN);
    addTone(samples, 52, 0, 0.3);
    addTone(samples, 59.3, SPAN, 0.2);
    const added = new Increase().at(samples, SPAN);
    expect(added?.midi).toBeCloseTo(59.3, 0);
    expect(added?.clarity).toBeGreaterThan(0.55);
  });

  test('nothing in silence', () => {
    expect(new Increase().at(new Float32Array(2 * SPAN), SPAN)).toBeNull();
  });
});
