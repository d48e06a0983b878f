import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bpmAt, nextTempoBeat, risingBeatMap, type RisingTempo } from '../../../src/core/chart/tempo-rise.ts';

/** Twelve bars of four, faster by 6 after every second chorus. */
const tempo: RisingTempo = { bpm: 100, rise: { byBpm: 6, everyBars: 24 }, beatsPerBar: 4 };

describe('a tempo that rises', () => {
  it('is counted out by hand: two choruses at 100, two at 106, the fifth at 112', () => {
    const map = risingBeatMap(tempo, 2);
    const chorus = 48;
    expect([0, 47.9, 95.9, 96, 191.9, 192].map((beat) => bpmAt(tempo, beat))).toEqual([
      100, 100, 100, 106, 106, 112,
    ]);
    expect(map.secondsAt(0)).toBe(2);
    expect(map.secondsAt(2 * chorus)).toBeCloseTo(2 + 96 * 0.6, 9);
    expect(map.secondsAt(4 * chorus)).toBeCloseTo(2 + 96 * 0.6 + (96 * 60) / 106, 9);
    // The count-in has the first tempo.
    expect(map.secondsAt(-4)).toBeCloseTo(2 - 2.4, 9);
    expect([-4, 0, 95, 96, 100].map((beat) => nextTempoBeat(tempo, beat))).toEqual([96, 96, 96, 192, 192]);
  });

  it('stops at 280, and a faster tempo stays as it is', () => {
    const steep: RisingTempo = { bpm: 270, rise: { byBpm: 8, everyBars: 1 }, beatsPerBar: 4 };
    expect([0, 4, 8, 400].map((beat) => bpmAt(steep, beat))).toEqual([270, 278, 280, 280]);
    expect(nextTempoBeat(steep, 8)).toBe(Infinity);
    const fast: RisingTempo = { ...steep, bpm: 300 };
    expect(bpmAt(fast, 400)).toBe(300);
    expect(nextTempoBeat(fast, 0)).toBe(Infinity);
    expect(risingBeatMap(fast, 0).secondsAt(500)).toBeCloseTo(100, 9);
  });

  it('goes both ways at any tempo: beat → second → beat', () => {
    const anyTempo = fc.record({
      bpm: fc.double({ min: 40, max: 280, noNaN: true }),
      rise: fc.option(
        fc.record({
          byBpm: fc.double({ min: 0.5, max: 30, noNaN: true }),
          everyBars: fc.integer({ min: 1, max: 40 }),
        }),
      ),
      beatsPerBar: fc.integer({ min: 2, max: 7 }),
    });
    fc.assert(
      fc.property(anyTempo, fc.double({ min: -8, max: 4000, noNaN: true }), (any, beat) => {
        const map = risingBeatMap(any, 1.5);
        const seconds = map.secondsAt(beat);
        expect(map.beatAt(seconds)).toBeCloseTo(beat, 6);
        expect(map.secondsAt(beat + 0.01)).toBeGreaterThan(seconds);
      }),
      { numRuns: 300 },
    );
  });

  it('refuses a rise by nothing, or after half a bar', () => {
    for (const rise of [
      { byBpm: 0, everyBars: 12 },
      { byBpm: 4, everyBars: 0.5 },
    ])
      expect(() => risingBeatMap({ ...tempo, rise }, 0)).toThrow(RangeError);
  });
});
