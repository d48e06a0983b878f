/**
 * Against Friberg & Sundström, "Swing Ratios and Ensemble Timing in Jazz Performance", Music Perception 19(3), 2002
 * (abstract), and their TMH-QPSR 4/1997: as much as 3.5:1 at comparatively slow tempi around 120 bpm, 1:1 at fast
 * tempi, falling about linearly; 2:1 only at a certain tempo; the short eighth about 100 ms from medium to fast.
 */
import { describe, expect, it } from 'vitest';
import { swingRatio, swingShare, swungBeat } from '../../../src/core/chart/swing.ts';

describe('swing', () => {
  it('falls from at most 3.5:1 at 120 bpm to 1:1', () => {
    expect(swingRatio(120)).toBeGreaterThan(2.5);
    expect(swingRatio(120)).toBeLessThanOrEqual(3.5);
    expect(swingRatio(300)).toBe(1);
    for (let bpm = 121; bpm <= 280; bpm++) expect(swingRatio(bpm)).toBeLessThan(swingRatio(bpm - 1));
  });

  it('has the ratio 2:1 at one tempo only', () => {
    const crossings = Array.from({ length: 240 }, (_, i) => 40 + i).filter(
      (bpm) => swingRatio(bpm) >= 2 && swingRatio(bpm + 1) < 2,
    );
    expect(crossings).toHaveLength(1);
  });

  it('keeps the short eighth near 100 ms from 140 to 270 bpm', () => {
    for (let bpm = 140; bpm <= 270; bpm += 5) {
      const shortMs = (60_000 / bpm) * (1 - swingShare('swing', bpm));
      expect(Math.abs(shortMs - 100)).toBeLessThan(20);
    }
  });

  it('stretches the first half of the beat and squeezes the second', () => {
    expect(swungBeat(3, 2 / 3)).toBe(3);
    expect(swungBeat(3.5, 2 / 3)).toBeCloseTo(3 + 2 / 3, 12);
    expect(swungBeat(3.25, 2 / 3)).toBeCloseTo(3 + 1 / 3, 12);
    expect(swungBeat(3.75, 2 / 3)).toBeCloseTo(3 + 5 / 6, 12);
    for (let place = 0; place < 1; place += 0.125) expect(swungBeat(place, 0.5)).toBeCloseTo(place, 12);
  });
});
