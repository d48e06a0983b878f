/** How wide the edges round a change are. */
import { describe, expect, it } from 'vitest';
import { timelineFromTempo } from '../../../../src/core/chart/build-timeline.ts';
import { toleranceAt, toleranceBeats } from '../../../../src/core/grade/assign/tolerance.ts';
import { chartOf } from '../../chart/charts.ts';

const at = (bpm: number) => timelineFromTempo(chartOf('| C7 | F7 |'), { bpm });

describe('the tolerance at a change', () => {
  it('is as many seconds as asked', () => {
    expect(toleranceAt(at(60), 4, 0.05)).toBe(0.05);
    expect(toleranceAt(at(120), 4, 0.1)).toBe(0.1);
  });

  it('is never more than a sixteenth, a quarter of the beat', () => {
    expect(toleranceAt(at(300), 4, 0.1)).toBeCloseTo(0.05, 12);
    expect(toleranceAt(at(400), 4, 0.05)).toBeCloseTo(0.0375, 12);
  });

  it('is told in beats too', () => {
    expect(toleranceBeats(at(60), 4, 0.05)).toBeCloseTo(0.05, 12);
    expect(toleranceBeats(at(120), 4, 0.05)).toBeCloseTo(0.1, 12);
    expect(toleranceBeats(at(400), 4, 0.05)).toBeCloseTo(0.25, 12);
  });
});
