import { describe, expect, it } from 'vitest';
import { drawnBars, MOST_BARS_WHOLE } from '../../../src/ui/parts/drawn-bars.ts';

const ROW = 50;
const WINDOW = 800;

describe('the bars that are drawn', () => {
  it('are all of a form that is not long', () => {
    expect(drawnBars(MOST_BARS_WHOLE, 8, { top: 0, height: 0 }, WINDOW)).toEqual({
      from: 0,
      to: MOST_BARS_WHOLE,
    });
  });

  it.each([2, 4, 8])('hold every bar in sight, begin with a row, and are few: %i in a row', (inRow) => {
    for (const bars of [129, 1000, 4000])
      for (let scrolled = -WINDOW; scrolled < (bars / inRow) * ROW; scrolled += 333) {
        const rows = Math.ceil(bars / inRow);
        const { from, to } = drawnBars(bars, inRow, { top: -scrolled, height: rows * ROW }, WINDOW);
        const [firstInSight, lastInSight] = [scrolled, scrolled + WINDOW].map((px) =>
          Math.min(bars - 1, Math.max(0, Math.floor(px / ROW) * inRow)),
        );
        expect(from).toBeLessThanOrEqual(firstInSight!);
        expect(to).toBeGreaterThan(lastInSight!);
        expect(from % inRow).toBe(0);
        expect(to === bars || to % inRow === 0).toBe(true);
        // Three windows full and a piece at each end.
        expect(to - from).toBeLessThanOrEqual(((3 * WINDOW) / ROW + 16) * inRow);
      }
  });

  it('are the first rows of a list that is not shown, or lies far below', () => {
    expect(drawnBars(1000, 4, { top: 0, height: 0 }, WINDOW)).toEqual({ from: 0, to: 32 });
    expect(drawnBars(1000, 4, { top: 9000, height: 250 * ROW }, WINDOW)).toEqual({ from: 0, to: 32 });
  });

  it('are the last rows of a list that lies far above', () => {
    expect(drawnBars(1000, 4, { top: -90_000, height: 250 * ROW }, WINDOW)).toEqual({ from: 992, to: 1000 });
  });
});
