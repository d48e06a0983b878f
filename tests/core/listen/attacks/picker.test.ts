/** Which peaks of a flux made by hand are attacks, and when they begin: limits on both sides. */
import { describe, expect, test } from 'vitest';
import { AttackPicker, type Attack } from '../../../../src/core/listen/attacks/attacks.ts';
import type { Traces } from '../../../../src/core/listen/frames/analyser.ts';

const TICKS = 200;
const PEAK = 100;
/** Blocks of 1 ms, four to a tick of 4 ms. */
const BLOCKS = 4 * TICKS;

interface Made {
  readonly flux: (tick: number) => number;
  readonly energy?: (block: number) => number;
  readonly bright?: (block: number) => number;
}

function picked({ flux, energy = () => 1, bright = () => 1 }: Made): Attack[] {
  const traces: Traces = {
    ticks: TICKS,
    flux: Float32Array.from({ length: 8192 }, (_, tick) => (tick < TICKS ? flux(tick) : 0)),
    blocks: BLOCKS,
    energy: Float32Array.from({ length: 32768 }, (_, block) => (block < BLOCKS ? energy(block) : 0)),
    bright: Float32Array.from({ length: 32768 }, (_, block) => (block < BLOCKS ? bright(block) : 0)),
  };
  const found: Attack[] = [];
  new AttackPicker(traces).pick(found);
  return found;
}
/** One peak over a ground. */
const peak = (height: number, ground = 0.001) => ({
  flux: (tick: number) => (tick === PEAK ? height : ground),
});

describe('a peak of the flux is an attack', () => {
  test('from 0.06 nepers a bin on', () => {
    expect(picked(peak(0.062))).toHaveLength(1);
    expect(picked(peak(0.058))).toHaveLength(0);
  });

  test('and from twice the local median on', () => {
    expect(picked(peak(0.21, 0.1)).filter((attack) => attack.flux > 0.2)).toHaveLength(1);
    expect(picked(peak(0.19, 0.1))).toHaveLength(0);
  });

  test('where the median counts as 0.004 at least', () => {
    expect(picked(peak(0.4, 0.0001))[0]!.ratio).toBeCloseTo(100, 3);
  });

  test('if it is the highest within four ticks', () => {
    const two = (apart: number) =>
      picked({ flux: (tick) => (tick === PEAK ? 0.3 : tick === PEAK + apart ? 0.4 : 0.001) }).length;
    expect(two(4)).toBe(1);
    expect(two(5)).toBe(2);
  });

  test('the median is that of 30 ticks before and 8 after', () => {
    // High on so many ticks before the peak, or after it: the median of 39 values needs 20.
    const ratio = (high: (fromPeak: number) => boolean) =>
      picked({ flux: (tick) => (tick === PEAK ? 1 : high(tick - PEAK) ? 0.1 : 0.01) }).find(
        (a) => a.flux === 1,
      )!.ratio;
    // The peak itself is high; 19 more make 20 of 39.
    expect(ratio((k) => k >= -30 && k <= -12)).toBeCloseTo(10, 3);
    expect(ratio((k) => k >= -31 && k <= -13)).toBeCloseTo(100, 2);
    expect(ratio((k) => (k >= -11 && k < 0) || (k > 0 && k <= 8))).toBeCloseTo(10, 3);
    expect(ratio((k) => (k >= -10 && k < 0) || (k > 0 && k <= 9))).toBeCloseTo(100, 2);
  });
});

describe('when an attack begins', () => {
  const end = 4 * (PEAK + 1);
  const seconds = (made: Omit<Made, 'flux'>) => picked({ ...peak(1), ...made })[0]!.seconds * 1000;

  test('at the steepest rise of the bright part, up to 20 ms before the end of the tick', () => {
    const risen = (at: number) => seconds({ bright: (block) => (block < at ? 0.01 : 1) });
    expect(risen(end - 10)).toBeCloseTo(end - 10, 6);
    expect(risen(end - 20)).toBeCloseTo(end - 20, 6);
    expect(risen(end - 22)).not.toBeCloseTo(end - 22, 6);
  });

  test('energy is compared over 25 ms on both sides', () => {
    const at = end - 10;
    const bright = (block: number) => (block < at ? 0.0001 : 1);
    const ratio = (energy: (block: number) => number) =>
      picked({ ...peak(1), bright, energy })[0]!.energyRatio;
    // Loud for 25 ms after: all of it counts; and one block more does not.
    expect(ratio((b) => (b < at ? 1 : b < at + 25 ? 3 : 100))).toBeCloseTo(3, 4);
    expect(ratio((b) => (b < at - 25 ? 100 : b < at ? 1 : 3))).toBeCloseTo(3, 4);
  });

  test('a slow attack begins at its foot, up to 30 ms earlier', () => {
    // The steepest rise of the bright part is at the end; the energy has stood out since `foot`.
    const at = end - 5;
    const begun = (foot: number, low: number, high: number) =>
      seconds({ bright: (b) => (b < at ? 0.0001 : 1), energy: (b) => (b < foot ? 0 : b < at ? low : high) });
    // The foot is a hundredth of the power that is reached.
    expect(begun(at - 12, 0.0105, 1)).toBeLessThan(at - 8);
    expect(begun(at - 12, 0.0095, 1)).toBeCloseTo(at, 6);
    expect(begun(at - 60, 1, 1)).toBeCloseTo(at, 6);
  });
});
