/**
 * What the network sees, against the training's own features (PyTorch). features.json was made by
 * fixtures/network/features_fixture.py, where the sound is described, too.
 */
import { describe, expect, it } from 'vitest';
import { Features } from '../../../../src/core/listen/network/features.ts';
import { BINS, HOP, INNER_RATE, PAD, ROW } from '../../../../src/core/listen/network/settings.ts';
import fixture from './features.json' with { type: 'json' };

const FRAMES = 40;
/** One bin of so many was kept. */
const STEP = 6;

function sound(): Float32Array {
  let state = 12345n;
  return Float32Array.from({ length: FRAMES * HOP }, (_, i) => {
    state = (1103515245n * state + 12345n) % 2n ** 31n;
    const t = i / INNER_RATE;
    let tone = 0;
    for (let h = 1; h <= 5; h++) tone += (0.2 / h) * Math.sin(2 * Math.PI * 196.5 * h * t);
    return (t >= 0.1 ? tone * Math.exp(-3 * (t - 0.1)) : 0) + 0.001 * (Number(state) / 2 ** 30 - 1);
  });
}

describe('features', () => {
  it.each([FRAMES * HOP, 100, 193])('are those of the training, pushed in pieces of %i samples', (piece) => {
    const features = new Features();
    const seen: { bins: Float32Array; globals: Float32Array }[] = [];
    const samples = sound();
    for (let from = 0; from < samples.length; from += piece) {
      const part = samples.subarray(from, from + piece);
      features.push(part, part.length, () =>
        seen.push({ bins: features.bins.slice(), globals: features.globals.slice() }),
      );
    }
    expect(seen).toHaveLength(FRAMES);
    for (const { frame, rows, globals } of fixture.frames) {
      const got = seen[frame]!;
      rows.forEach((row, r) =>
        row.forEach((value, k) =>
          expect(got.bins[r * ROW + PAD + STEP * k], `frame ${frame}, row ${r}, bin ${STEP * k}`).toBeCloseTo(
            value,
            2,
          ),
        ),
      );
      globals.forEach((value, g) =>
        expect(got.globals[g], `frame ${frame}, global ${g}`).toBeCloseTo(value, 3),
      );
    }
  });

  it('leaves the margins of its rows empty', () => {
    const features = new Features();
    features.push(sound(), FRAMES * HOP, () => {
      for (let r = 0; r < 4; r++) {
        for (let i = 0; i < PAD; i++) {
          expect(features.bins[r * ROW + i]).toBe(0);
          expect(features.bins[r * ROW + PAD + BINS + i]).toBe(0);
        }
      }
    });
  });
});
