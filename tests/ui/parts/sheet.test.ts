import { english } from '../../english.ts';
import { describe, expect, it } from 'vitest';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import type { Landing } from '../../../src/core/take/schema.ts';
import { barsInRow, landingsByBar, placeOf, sheetBars, tacetBars } from '../../../src/ui/parts/sheet.ts';

function timeline(text: string) {
  const chart = parseChart(text);
  if (!chart.ok) throw new Error(english(chart.problem));
  return timelineFromTempo(chart.value, { bpm: 100 });
}

const landing = (beat: number): Landing => ({ beat }) as unknown as Landing;

describe('the bars of a sheet', () => {
  it('hold their chords where they stand', () => {
    const bars = sheetBars(timeline('| A7 | Bm7 E7 | % | N.C. |'));
    expect(bars).toHaveLength(4);
    expect(bars[1]?.cells).toEqual([
      { symbol: 'Bm7', startBeat: 0, beats: 2, goesOn: false },
      { symbol: 'E7', startBeat: 2, beats: 2, goesOn: false },
    ]);
    expect(bars[3]?.cells[0]?.symbol).toBeNull();
  });

  it('fill every bar, whatever the chart', () => {
    for (const text of ['| C |', '| C F | G7 |', '| C F G Am | % |']) {
      for (const bar of sheetBars(timeline(text))) {
        expect(bar.cells.reduce((beats, cell) => beats + cell.beats, 0)).toBeCloseTo(bar.beats);
      }
    }
  });
});

describe('places', () => {
  it('count bars within the chorus', () => {
    expect(placeOf(0, 12, 4)).toEqual({ chorus: 0, bar: 0, beatInBar: 0 });
    expect(placeOf(50, 12, 4)).toEqual({ chorus: 1, bar: 0, beatInBar: 2 });
    expect(placeOf(-1, 12, 4)).toBeNull();
  });

  it('gather landings of all choruses, oldest first', () => {
    const gathered = landingsByBar([landing(4), landing(6), landing(52)], 12, 4);
    expect(gathered).toHaveLength(12);
    expect(gathered[1]?.map(({ beatInBar }) => beatInBar)).toEqual([0, 2]);
    expect(gathered[1]?.[0]?.landings.map(({ chorus, index }) => [chorus, index])).toEqual([
      [0, 0],
      [1, 2],
    ]);
    expect(gathered[0]).toEqual([]);
  });

  it('leave a bar as it was where nothing changed in it, so that it is not drawn again', () => {
    const first = landingsByBar([landing(4), landing(8)], 12, 4);
    // What comes from the worker is a copy each time.
    const second = landingsByBar([landing(4), landing(8), landing(56)], 12, 4, first);
    expect(second[1]).toBe(first[1]);
    expect(second[2]).not.toBe(first[2]);
    const corrected = landingsByBar([{ ...landing(4), degree: '3' }, landing(8)], 12, 4, first);
    expect(corrected[1]).not.toBe(first[1]);
    expect(corrected[1]?.[0]?.landings[0]?.landing.degree).toBe('3');
    expect(corrected[2]).toBe(first[2]);
  });
});

it('sets four bars in a row, eight for long forms on wide pages, two on slips', () => {
  expect([barsInRow(12, 1200), barsInRow(32, 1200), barsInRow(32, 390), barsInRow(12, 250)]).toEqual([
    4, 8, 4, 2,
  ]);
  expect(barsInRow(32, 1200, 4)).toBe(4);
});

describe('the bars that are the band’s', () => {
  it('fall on others in the next chorus where turns do not come out even', () => {
    const form = { turnBars: 4, bars: 12 };
    expect([...tacetBars(form, 0)]).toEqual([4, 5, 6, 7]);
    expect([...tacetBars(form, 1)]).toEqual([0, 1, 2, 3, 8, 9, 10, 11]);
    expect([...tacetBars(form, 2)]).toEqual([4, 5, 6, 7]);
    expect(tacetBars({ bars: 12 }, 0).size).toBe(0);
  });
});
