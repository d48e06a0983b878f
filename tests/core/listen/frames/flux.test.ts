import { describe, expect, test } from 'vitest';
import { Flux } from '../../../../src/core/listen/frames/flux.ts';

describe('flux', () => {
  // Full scale, and then from silence: the largest products there can be.
  test('a burst out of silence rises, is finite, and what goes on does not', () => {
    const flux = new Flux();
    const samples = Float32Array.from({ length: 4096 }, (_, i) => (i < 1024 ? 0 : i % 7 === 0 ? 1 : -1));
    const out = new Float32Array(160);
    let ticks = 0;
    for (let start = 0; start + 400 < samples.length; start += 96, ticks += 2)
      flux.pair(samples, start, start + 48, out, ticks);
    const heard = out.subarray(0, ticks);
    expect(heard.every(Number.isFinite)).toBe(true);
    const burst = (1024 - 256) / 48;
    expect(Math.max(...heard.subarray(0, Math.floor(burst)))).toBe(0);
    expect(Math.max(...heard.subarray(Math.floor(burst), Math.ceil(burst) + 6))).toBeGreaterThan(1);
    expect(Math.max(...heard.subarray(Math.ceil(burst) + 12))).toBeLessThan(0.01);
  });
});
