import { describe, expect, it } from 'vitest';
import { isWhite, keysIn, keysOf, layKeyboard } from '../../../src/ui/instrument/keyboard.ts';

describe('the keyboard', () => {
  it('has the white keys of any piano (common practice): 7 of 12, C to B', () => {
    expect(Array.from({ length: 12 }, (_, i) => i).filter(isWhite)).toEqual([0, 2, 4, 5, 7, 9, 11]);
  });

  it('starts on a C, holds the register, fewer octaves on a phone', () => {
    expect(keysOf(1200, 60, null)).toEqual({ lowest: 36, highest: 83 });
    expect(keysOf(370, 60, null)).toEqual({ lowest: 60, highest: 71 });
    for (const register of [21, 60, 108]) expect(keysOf(1200, register, null).lowest % 12).toBe(0);
  });

  it('turns its page only when the register leaves it', () => {
    const first = keysOf(1200, 60, null);
    expect(keysOf(1200, 82, first)).toBe(first);
    expect(keysOf(1200, 90, first).lowest).toBeGreaterThan(first.lowest);
  });

  it('lays every key inside its width, in order; black keys between their neighbours', () => {
    const keys = keysOf(1200, 60, null);
    const lay = layKeyboard(keys, 4, 1192);
    const middles = keysIn(keys).map((midi) => lay.keyX(midi));
    expect(middles).toEqual([...middles].sort((a, b) => a - b));
    expect(middles[0]!).toBeGreaterThan(4);
    expect(middles.at(-1)!).toBeLessThan(1196);
    expect(lay.keyX(61)).toBeCloseTo((lay.keyX(60) + lay.keyX(62)) / 2, 6);
  });
});
