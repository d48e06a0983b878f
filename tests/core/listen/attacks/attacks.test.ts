import { describe, expect, test } from 'vitest';
import { AttackPicker, isStrong, type Attack } from '../../../../src/core/listen/attacks/attacks.ts';
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
