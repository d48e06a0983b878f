/** Bars as seconds: at 120 beats a minute in four a bar lasts two seconds; the first downbeat lies at second 1. */
import { expect, it } from 'vitest';
import { timelineFromTempo } from '../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../src/core/chart/parse-chart.ts';
import { barLine, barsOfForm, wholeBars } from '../../src/state/bars-of-take.ts';

const chart = parseChart('| C7 | F7 | C7 | G7 |');
if (!chart.ok) throw new Error('this chart can be read');
const timeline = timelineFromTempo(chart.value, { bpm: 120, swing: 0.5, firstBeatSeconds: 1 });

it('takes the whole bars round a stretch, and one at least', () => {
  expect(wholeBars(timeline, 5, 9)).toEqual({ fromSeconds: 3, toSeconds: 7 });
  expect(wholeBars(timeline, 4, 8)).toEqual({ fromSeconds: 3, toSeconds: 5 });
  expect(wholeBars(timeline, 8, 8)).toEqual({ fromSeconds: 5, toSeconds: 7 });
  // A pickup before the first sample begins with it.
  expect(wholeBars(timeline, -2, 1)).toEqual({ fromSeconds: 0, toSeconds: 3 });
});

it('names the bars of the form, in every chorus the same', () => {
  expect(barsOfForm(timeline, { fromSeconds: 3, toSeconds: 7 })).toEqual({ fromBar: 2, toBar: 3 });
  expect(barsOfForm(timeline, { fromSeconds: 11, toSeconds: 13 })).toEqual({ fromBar: 2, toBar: 2 });
  expect(barsOfForm(timeline, { fromSeconds: 7, toSeconds: 11 })).toEqual({ fromBar: 4, toBar: 1 });
});

it('jumps to the bar line before and after; just after one to the one before', () => {
  expect(barLine(timeline, 4, 1)).toBe(5);
  expect(barLine(timeline, 5, 1)).toBe(7);
  expect(barLine(timeline, 4.5, -1)).toBe(3);
  expect(barLine(timeline, 3.2, -1)).toBe(1);
  expect(barLine(timeline, 0.5, -1)).toBe(0);
});
