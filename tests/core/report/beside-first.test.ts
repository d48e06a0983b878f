/** The same changes of two takes beside one another; the test of luck against Fisher's own example. */
import { describe, expect, it } from 'vitest';
import { besideFirst, fisherTail } from '../../../src/core/report/beside-first.ts';
import { gradeLine, type Played } from '../grade/line.ts';

const FORM = '| C7 | F7 | C7 | G7 |';

/** One landing a bar over the form: chorus after chorus. */
const landings = (midis: readonly number[]) =>
  gradeLine(
    FORM,
    midis.map((midi, bar): Played => [4 * bar, 1, midi]),
    {},
    'C',
  );
/** The loop of bars 2 to 3: F7 and C7. */
const loop = (midis: readonly number[]) =>
  gradeLine(
    '| F7 | C7 |',
    midis.map((midi, bar): Played => [4 * bar, 1, midi]),
    {},
    'C',
  );

describe('fisherTail', () => {
  it('gives the lady tasting tea her due: 17 of 70, and 1 of 70 for all four (Fisher 1935)', () => {
    expect(fisherTail({ hits: 3, of: 4 }, { hits: 1, of: 4 })).toBeCloseTo(17 / 70, 12);
    expect(fisherTail({ hits: 4, of: 4 }, { hits: 0, of: 4 })).toBeCloseTo(1 / 70, 12);
    expect(fisherTail({ hits: 0, of: 0 }, { hits: 0, of: 0 })).toBe(1);
  });
});

describe('besideFirst', () => {
  // F over F7 and C over C7 are roots; A and E their thirds.
  const first = landings([60, 65, 60, 67, 60, 65, 60, 67]);
  const bars = { fromBar: 2, toBar: 3 };

  it('sets each change of the bars beside the same change of the loop', () => {
    const { changes } = besideFirst(first, loop([69, 64, 69, 64]), bars, ['third']);
    expect(
      changes.map(({ bar, chord, first: then, now }) => [
        bar,
        chord,
        then.map(({ role }) => role),
        now.map(({ role }) => role),
      ]),
    ).toEqual([
      [2, 'F7', ['root', 'root'], ['third', 'third']],
      [3, 'C7', ['root', 'root'], ['third', 'third']],
    ]);
  });

  it('counts what the aim asks for, and says "more" only where luck would hardly give it', () => {
    const better = besideFirst(first, loop([69, 64, 69, 64]), bars, ['third']);
    expect(better).toMatchObject({
      asked: 'thirds',
      first: { hits: 0, of: 4 },
      now: { hits: 4, of: 4 },
      verdict: 'more',
    });
    const alittle = besideFirst(first, loop([69, 60, 65, 60]), bars, ['third']);
    expect(alittle).toMatchObject({ now: { hits: 1, of: 4 }, verdict: 'too early' });
    const chordTones = besideFirst(first, loop([66, 61, 66, 61]), bars, ['chord tone']);
    expect(chordTones).toMatchObject({ first: { hits: 4, of: 4 }, now: { hits: 0 }, verdict: 'fewer' });
    expect(besideFirst(first, loop([69]), bars, ['guide tone']).asked).toBe('guideTones');
  });

  it('leaves rests out of both', () => {
    const rested = besideFirst(landings([60]), loop([69, 64]), bars, ['third']);
    expect(rested.first).toEqual({ hits: 0, of: 0 });
    expect(rested.verdict).toBe('too early');
    // A try in which nothing was played still says what the first take had there.
    expect(besideFirst(first, loop([]), bars, ['chord tone'])).toMatchObject({
      first: { hits: 4, of: 4 },
      now: { hits: 0, of: 0 },
      verdict: 'too early',
    });
  });
});
