import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { INSTRUMENTS, instrumentOf, withCapo } from '../../../src/core/music/instruments.ts';
import { positionsOf } from '../../../src/core/music/where-it-lies.ts';
import { layNeck, placesIn, windowOf } from '../../../src/ui/instrument/neck.ts';

const guitar = instrumentOf('guitar')!.neck!;
const capo3 = withCapo(instrumentOf('guitar')!, 3).neck!;
const box = { left: 10, top: 0, width: 1200, height: 180 };
const at = (fret: number, string = 3) => ({ fret, string });

describe('the window of frets', () => {
  it('is the whole neck where it can be read, else five frets', () => {
    expect(windowOf(guitar, 'all', 1200, null, null)).toEqual({ lowest: 0, highest: 22 });
    expect(windowOf(guitar, 'all', 360, at(9), null)).toEqual({ lowest: 8, highest: 12 });
  });

  it('follows the hand by turning the page, never by sliding', () => {
    const first = windowOf(guitar, 'hand', 1200, at(5), null);
    expect(first).toEqual({ lowest: 4, highest: 8 });
    expect(windowOf(guitar, 'hand', 1200, at(8), first)).toBe(first);
    expect(windowOf(guitar, 'hand', 1200, at(9), first)).toEqual({ lowest: 8, highest: 12 });
  });

  it('an open string leaves it where it is', () => {
    const high = windowOf(guitar, 'hand', 1200, at(9), null);
    expect(windowOf(guitar, 'hand', 1200, at(0), high)).toBe(high);
  });

  it('keeps the open strings near the nut or the capo, and ends at the last fret', () => {
    expect(windowOf(guitar, 1, 1200, null, null)).toEqual({ lowest: 0, highest: 5 });
    expect(windowOf(guitar, 5, 1200, null, null)).toEqual({ lowest: 5, highest: 9 });
    expect(windowOf(guitar, 20, 1200, null, null)).toEqual({ lowest: 18, highest: 22 });
    expect(windowOf(capo3, 1, 1200, null, null)).toEqual({ lowest: 3, highest: 8 });
    expect(windowOf(capo3, 'all', 1200, null, null)).toEqual({ lowest: 3, highest: 22 });
  });
});

describe('the neck on the page', () => {
  const whole = windowOf(guitar, 'all', 1200, null, null);

  it('fills its box, narrowing towards the bridge, the highest string on top', () => {
    const lay = layNeck(guitar, whole, false, box);
    expect(lay.wireX(22)).toBeCloseTo(1210, 6);
    expect(lay.fingerX(0)).toBeLessThan(lay.wireX(0));
    for (let fret = 2; fret <= 22; fret++)
      expect(lay.wireX(fret) - lay.wireX(fret - 1)).toBeLessThan(lay.wireX(fret - 1) - lay.wireX(fret - 2));
    expect(lay.stringY(1)).toBeLessThan(lay.stringY(6));
  });

  it('is mirrored for a left-handed player, string by string the same', () => {
    const right = layNeck(guitar, whole, false, box);
    const left = layNeck(guitar, whole, true, box);
    for (let fret = 0; fret <= 22; fret++) {
      expect(left.fingerX(fret) - box.left).toBeCloseTo(box.width - (right.fingerX(fret) - box.left), 6);
      expect(left.stringY(2)).toBe(right.stringY(2));
    }
  });

  it('every finger lies in the box, whatever the neck, the capo and the window', () => {
    const necks = INSTRUMENTS.filter(({ neck }) => neck !== null);
    fc.assert(
      fc.property(
        fc.constantFrom(...necks),
        fc.integer({ min: 0, max: 12 }),
        fc.oneof(fc.constantFrom('all' as const, 'hand' as const), fc.integer({ min: 1, max: 20 })),
        fc.integer({ min: 300, max: 3800 }),
        fc.option(fc.integer({ min: 12, max: 20 }), { nil: null }),
        (instrument, capo, choice, width, fret) => {
          const { neck } = withCapo(instrument, capo);
          const window = windowOf(neck!, choice, width, fret === null ? null : at(fret, 1), null);
          const lay = layNeck(neck!, window, false, { left: 0, top: 0, width, height: 200 });
          for (const place of placesIn(neck!, window)) {
            expect(lay.fingerX(place.fret)).toBeGreaterThan(0);
            expect(lay.fingerX(place.fret)).toBeLessThan(width);
            expect(lay.stringY(place.string)).toBeGreaterThan(0);
            expect(lay.stringY(place.string)).toBeLessThan(200);
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it('says of every place the pitch that the core says lies there', () => {
    const instrument = withCapo(instrumentOf('guitar-7')!, 2);
    const window = windowOf(instrument.neck!, 'all', 1600, null, null);
    for (const { string, fret, midi } of placesIn(instrument.neck!, window))
      expect(positionsOf(midi, instrument)).toContainEqual({ string, fret });
  });

  it('throws for a fret that is not in sight', () => {
    const lay = layNeck(guitar, { lowest: 5, highest: 9 }, false, box);
    expect(() => lay.wireX(12)).toThrow(/4 to 9/);
  });
});
