import { describe, expect, it } from 'vitest';
import type { LiveMoment } from '../../../src/state/live-moment.ts';
import type { Inks } from '../../../src/ui/parts/inks.ts';
import { LANDING, placeOfLetter } from '../../../src/ui/playing/draw-live-line.ts';
import { LiveLinePen, pageAt } from '../../../src/ui/playing/live-line.ts';

describe('the page of the live line', () => {
  it('runs from change to change, where the tones to land on stand', () => {
    expect(pageAt(5, 4, 8, 4)).toEqual({ fromBeat: 4, toBeat: 8, endsAtChange: true });
  });

  it('is cut after two bars; only the last page ends at the change', () => {
    expect(pageAt(3, 0, 16, 4)).toEqual({ fromBeat: 0, toBeat: 8, endsAtChange: false });
    expect(pageAt(9, 0, 16, 4)).toEqual({ fromBeat: 8, toBeat: 16, endsAtChange: true });
  });

  it('goes on where nothing changes any more', () => {
    expect(pageAt(20, 0, null, 4)).toEqual({ fromBeat: 16, toBeat: 24, endsAtChange: false });
  });
});

/** A canvas that only remembers how high the line went, in its order. */
function drawnHeights(midis: readonly (number | null)[], quiet = false): readonly number[] {
  const heights: number[] = [];
  const ignore = () => undefined;
  const context = new Proxy({} as Record<string, unknown>, {
    get: (set, name) =>
      name === 'lineTo'
        ? (_x: number, y: number) => heights.push(Math.round(y))
        : (set[name as string] ?? ignore),
    set: (set, name, value) => Reflect.set(set, name, value),
  }) as unknown as CanvasRenderingContext2D;
  const pen = new LiveLinePen();
  const moment = (frame: number, midi: number | null) =>
    ({
      // 60 frames a second at 120 quarters a minute.
      beat: frame / 30,
      chordNow: { symbol: 'A7' },
      beatsToNext: null,
      targets: [],
      note: midi === null ? null : { midi, role: null },
    }) as unknown as LiveMoment;
  for (const [frame, midi] of midis.entries()) pen.follow(moment(frame, midi), 4);
  const view = { beatsPerBar: 4, landing: null, quiet };
  pen.draw(context, 600, 300, moment(midis.length, null), view, {} as Inks);
  // The bar lines' strokes reach the foot of the page; the line does not.
  return heights.filter((y) => y < 300);
}

describe('the pen', () => {
  const held = (midi: number, frames: number) => Array.from({ length: frames }, () => midi);
  const spread = (heights: readonly number[]) => Math.max(...heights) - Math.min(...heights);

  it('does not draw an octave that was heard for two frames', () => {
    expect(spread(drawnHeights([...held(69, 20), ...held(57, 2), ...held(69, 20)]))).toBeLessThan(5);
  });

  it('draws a leap that stands, and a step at once', () => {
    expect(spread(drawnHeights([...held(69, 20), ...held(57, 20)]))).toBeGreaterThan(100);
    expect(spread(drawnHeights([...held(69, 20), ...held(67, 3)]))).toBeGreaterThan(10);
  });

  it('is never cut off at the top or the foot of the page, however wide the line', () => {
    const climb = Array.from({ length: 60 }, (_, frame) => 52 + Math.floor(frame / 4) * 2);
    for (const midis of [climb, climb.toReversed(), [...held(60, 12), ...held(88, 40)]]) {
      const heights = drawnHeights(midis);
      expect(Math.min(...heights)).toBeGreaterThan(10);
      expect(Math.max(...heights)).toBeLessThan(290);
    }
  });

  it('draws no line on a quiet page', () => {
    expect(drawnHeights(held(69, 20), true)).toEqual([]);
  });
});

describe('the letter of a landing', () => {
  // The page on a phone of 390 by 844, on a first take, is 54 pixels high; the smallest unit is 26.
  it.each([40, 54, 71, 110, 300])('is whole on a page of %s pixels, wherever the landing lies', (height) => {
    const unit = Math.max(26, height / 7);
    // Figures of the face are no higher than 0.75 of their size.
    const tall = 0.75 * LANDING.letter * unit;
    for (let y = LANDING.fromEdge * unit; y <= height - LANDING.fromEdge * unit; y += 1) {
      const { foot } = placeOfLetter(20, y, height, unit);
      expect(foot - tall).toBeGreaterThanOrEqual(0);
      expect(foot).toBeLessThanOrEqual(height);
    }
  });
});
