import { describe, expect, test } from 'vitest';
import { hasBurst } from './burst.ts';

const RATE = 24_000;
/** A held tone of 220 Hz with ten partials; from 0.5 s on `gain` times as loud, within 5 ms. */
function tone(gain: number): Float32Array {
  return Float32Array.from({ length: RATE }, (_, i) => {
    const t = i / RATE;
    let sum = 0;
    for (let k = 1; k <= 10; k++) sum += Math.sin(2 * Math.PI * 220 * k * t + k * k) / k ** 1.5;
    const loud = 1 + (gain - 1) * Math.min(1, Math.max(0, (t - 0.5) / 0.005));
    return 0.1 * sum * loud;
  });
}

/** A click: 3 ms of alternating samples that fade. */
function withClick(samples: Float32Array, atSeconds: number): Float32Array {
  const out = samples.slice();
  const start = Math.round(atSeconds * RATE);
  for (let i = 0; i < 72; i++) out[start + i] = (out[start + i] ?? 0) + (i % 2 ? -0.2 : 0.2) * (1 - i / 72);
  return out;
}

describe('a burst of noise', () => {
  test('is found where a click lies over a held tone', () => {
    expect(hasBurst(withClick(tone(1), 0.5), RATE, 0.5)).toBe(true);
  });

  test('is found up to 30 ms from the onset, and no further', () => {
    expect(hasBurst(withClick(tone(1), 0.525), RATE, 0.5)).toBe(true);
    expect(hasBurst(withClick(tone(1), 0.6), RATE, 0.5)).toBe(false);
  });

  test('is not found in a held tone, nor where it swells by 12 dB', () => {
    expect(hasBurst(tone(1), RATE, 0.5)).toBe(false);
    expect(hasBurst(tone(4), RATE, 0.5)).toBe(false);
  });

  test('is not looked for where the recording does not reach around it', () => {
    expect(hasBurst(withClick(tone(1), 0.02), RATE, 0.02)).toBe(false);
  });
});
