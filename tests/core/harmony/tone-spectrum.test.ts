/** Tones of known pitch: which of them sound, and how far they lie from A4 = 440 Hz. */
import { describe, expect, test } from 'vitest';
import { beatTones } from '../../../src/core/harmony/beat-tones.ts';
import { FOLDED, HARMONY_HZ } from '../../../src/core/harmony/settings.ts';
import { toneSpectrum } from '../../../src/core/harmony/tone-spectrum.ts';

const RATE = 24_000;
/** A tone with four harmonics, each half as loud as the one before. */
function tones(midis: readonly number[], seconds: number, rate = RATE): Float32Array {
  return Float32Array.from({ length: seconds * rate }, (_, i) =>
    midis.reduce((sum, midi) => {
      const hz = 440 * 2 ** ((midi - 69) / 12);
      for (let h = 1; h <= 4; h++) sum += (0.1 / 2 ** h) * Math.sin((2 * Math.PI * h * hz * i) / rate);
      return sum;
    }, 0),
  );
}

describe('the tuning', () => {
  test.each([0, 0.2, -0.35])('%f semitones off is measured', (off) => {
    const { tuningSemitones } = toneSpectrum(tones([57 + off, 61 + off, 64 + off], 3), RATE)!;
    expect(tuningSemitones).toBeCloseTo(off, 1);
  });
});

test('the tones of a chord stand out in their registers, at any sample rate', () => {
  for (const rate of [HARMONY_HZ, 44_100]) {
    const spectrum = toneSpectrum(tones([33, 61.0, 64.0, 67.0], 3, rate), rate)!;
    const { folded, beats } = beatTones(spectrum, [0.5, 1, 1.5]);
    expect(beats).toBe(2);
    const [bass, middle] = [folded.slice(0, 12), folded.slice(24, 36)];
    const strongest = (row: Float32Array, count: number) =>
      Array.from(row.keys())
        .sort((a, b) => row[b]! - row[a]!)
        .slice(0, count)
        .sort((a, b) => a - b);
    expect(strongest(bass, 1)).toEqual([9]);
    expect(strongest(middle, 3)).toEqual([1, 4, 7]);
    expect(Math.hypot(...folded.slice(0, FOLDED))).toBeCloseTo(1, 5);
  }
});

test('silence has no tone, and less than a window no frame', () => {
  const { folded, levelsDb } = beatTones(toneSpectrum(new Float32Array(RATE * 2), RATE)!, [0.5, 1, 1.5]);
  expect(folded.every((x) => x === 0)).toBe(true);
  expect(levelsDb.every((x) => x <= 0)).toBe(true);
  expect(toneSpectrum(new Float32Array(100), RATE)!.frames).toBe(0);
});

test('stops as soon as it is asked to', () => {
  const shares: number[] = [];
  const go = (share: number) => shares.push(share) < 2;
  expect(toneSpectrum(tones([57], 60, HARMONY_HZ), HARMONY_HZ, go)).toBeNull();
  expect(shares).toHaveLength(2);
});
