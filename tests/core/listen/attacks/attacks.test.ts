import { describe, expect, test } from 'vitest';
import {
  AttackPicker,
  hasEvenEnergy,
  isStrong,
  type Attack,
} from '../../../../src/core/listen/attacks/attacks.ts';
import { Analyser } from '../../../../src/core/listen/frames/analyser.ts';

const RATE = 48_000;

/** Strokes of a decaying tone at these moments, picked from the traces. */
function attacksAt(moments: readonly number[]): Attack[] {
  const samples = new Float32Array(1.5 * RATE);
  for (const moment of moments)
    for (let i = Math.round(moment * RATE); i < samples.length; i++) {
      const t = i / RATE - moment;
      for (let h = 1; h <= 5; h++)
        samples[i]! += (0.2 / h) * Math.exp(-6 * t) * Math.sin(2 * Math.PI * 220 * h * t);
    }
  const analyser = new Analyser(RATE);
  const picker = new AttackPicker(analyser.traces);
  const found: Attack[] = [];
  analyser.push(samples, () => {
    picker.pick(found);
  });
  return found;
}

describe('attacks', () => {
  test('each stroke once, strong, dated within 5 ms', () => {
    const moments = [0.3, 0.55, 0.8];
    const strong = attacksAt(moments).filter(isStrong);
    expect(strong).toHaveLength(moments.length);
    moments.forEach((moment, i) => {
      expect(Math.abs(strong[i]!.seconds - moment)).toBeLessThan(0.005);
    });
  });

  test('none in silence', () => {
    expect(attacksAt([])).toEqual([]);
  });
});

describe('kinds of attack', () => {
  const strong = (flux: number, ratio: number, energyRatio: number) =>
    isStrong({ seconds: 0, flux, ratio, energyRatio });

  test('a strong one has a flux of 0.2, ten times the median', () => {
    expect(strong(0.205, 10.3, 1)).toBe(true);
    expect(strong(0.195, 10.3, 1)).toBe(false);
    expect(strong(0.205, 9.7, 1)).toBe(false);
  });

  test('or a flux of 0.08, twelve times the median, and 1.4 times the energy', () => {
    expect(strong(0.082, 12.3, 1.43)).toBe(true);
    expect(strong(0.078, 12.3, 1.43)).toBe(false);
    expect(strong(0.082, 11.7, 1.43)).toBe(false);
    expect(strong(0.082, 12.3, 1.37)).toBe(false);
  });

  test('energy is even within a factor of 1.3, up or down', () => {
    const even = (energyRatio: number) => hasEvenEnergy({ seconds: 0, flux: 1, ratio: 9, energyRatio });
    expect([0.75, 0.79, 1, 1.27, 1.33].map(even)).toEqual([false, true, true, true, false]);
  });
});
