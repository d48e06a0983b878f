import { describe, expect, it } from 'vitest';
import { withMeter } from '../../../src/core/chart/with-meter.ts';

describe('a chart in another meter', () => {
  it('has its heading changed where it has one', () => {
    expect(withMeter('meter: 4/4\n| C |', '3/4')).toBe('meter: 3/4\n| C |');
    expect(withMeter('key: Bb; Meter : 12 / 8\n| C |', '6/8')).toBe('key: Bb; Meter : 6/8\n| C |');
    expect(withMeter('title: x\n  meter:5/4\n| C |', '4/4')).toBe('title: x\n  meter:4/4\n| C |');
  });

  it('has one written above the bars where it has none', () => {
    expect(withMeter('| Bb | Eb |', '3/4')).toBe('meter: 3/4\n| Bb | Eb |');
    expect(withMeter('title: the meter: 4/4\n| C |', '3/4')).toBe('meter: 3/4\ntitle: the meter: 4/4\n| C |');
  });
});
