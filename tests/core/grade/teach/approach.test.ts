/** From where landings on chord tones are reached; the key's third over the IV. At 120 bpm a beat lasts half a second. */
import { describe, expect, it } from 'vitest';
import { isThirdOverFour } from '../../../../src/core/grade/teach/palette.ts';
import { parseKey } from '../../../../src/core/music/keys.ts';
import { parseChord } from '../../../../src/core/music/parse-chord.ts';
import { gradeLine, type Played } from '../line.ts';

const approach = (played: readonly Played[]) => gradeLine('| C7 | F7 |', played, {}, 'C').approach;
const none = { halfBelow: 0, halfAbove: 0, wholeStep: 0, enclosure: 0, leap: 0, sameNote: 0 };

describe('the approach to a landing', () => {
  it('may be an enclosure, or the note itself', () => {
    expect(
      approach([
        [3, 0.4, 70],
        [3.4, 0.4, 68],
        [4, 1, 69],
      ]),
    ).toEqual({ landings: 1, ...none, halfBelow: 1 });
    expect(
      approach([
        [2, 1, 67],
        [3, 0.4, 71],
        [3.4, 0.4, 68],
        [4, 1, 69],
      ]),
    ).toEqual({
      landings: 1,
      ...none,
      enclosure: 1,
    });
    expect(
      approach([
        [2, 1, 65],
        [4, 1, 65],
      ]),
    ).toEqual({ landings: 1, ...none, sameNote: 1 });
  });

  it('is a whole step, a half step or a leap, from either side', () => {
    expect(
      approach([
        [2, 1, 67],
        [4, 1, 65],
      ]),
    ).toMatchObject({ wholeStep: 1 });
    expect(
      approach([
        [2, 1, 67],
        [4, 1, 69],
      ]),
    ).toMatchObject({ wholeStep: 1 });
    expect(
      approach([
        [2, 1, 64],
        [4, 1, 65],
      ]),
    ).toMatchObject({ halfBelow: 1 });
    expect(
      approach([
        [2, 1, 64],
        [4, 1, 63],
      ]),
    ).toMatchObject({ halfAbove: 1 });
    expect(
      approach([
        [2, 1, 60],
        [4, 1, 63],
      ]),
    ).toMatchObject({ leap: 1 });
    expect(
      approach([
        [2, 1, 72],
        [4, 1, 69],
      ]),
    ).toMatchObject({ leap: 1 });
  });

  it('is asked of landings on chord tones that a note comes before, and of none that is held', () => {
    expect(
      approach([
        [2, 1, 67],
        [4, 1, 66],
      ]),
    ).toEqual({ landings: 0, ...none });
    expect(approach([[4, 1, 69]])).toEqual({ landings: 0, ...none });
    expect(
      approach([
        [0, 1, 67],
        [2, 3, 65],
      ]),
    ).toEqual({ landings: 0, ...none });
  });
});

describe('the key’s third over the IV', () => {
  const clashes = (pitchClass: number, symbol: string, key = 'C') =>
    isThirdOverFour(pitchClass, parseChord(symbol)!, parseKey(key)!);
  it('clashes where the IV is a dominant seventh', () => {
    expect([clashes(4, 'F7'), clashes(9, 'Bb7', 'F'), clashes(2, 'Eb7', 'Bb')]).toEqual([true, true, true]);
    expect([clashes(4, 'Fmaj7'), clashes(4, 'F'), clashes(4, 'G7'), clashes(3, 'F7')]).not.toContain(true);
  });

  it('is told with its length, wherever the key stands', () => {
    const { palette } = gradeLine(
      '| G7 | C7 |',
      [
        [0, 1, 62],
        [4, 1, 71],
        [6, 2, 71],
      ],
      {},
      'G',
    );
    expect(palette.thirdOverFour).toEqual({ notes: [1, 2], seconds: 1.5, degree: '7' });
    expect(gradeLine('| G7 | C7 |', [[0, 1, 62]], {}, 'G').palette.thirdOverFour).toEqual({
      ...{ notes: [], seconds: 0, degree: null },
    });
  });
});

describe('the mix of the two pentatonics', () => {
  it('is told for each chord in each key, with the degree on which it stands', () => {
    const { palette } = gradeLine(
      '| C7 | F7 | C7 |',
      [
        [0, 2, 63],
        [4, 2, 69],
        [8, 2, 64],
        [10, 2, 66],
      ],
      {},
      'C',
    );
    expect(palette.overall).toEqual({ seconds: 4, minorOnly: 0.25, majorOnly: 0.5, both: 0, neither: 0.25 });
    expect(palette.byChord).toEqual([
      {
        chord: 'C7',
        degree: '1',
        mixture: expect.objectContaining({
          seconds: 3,
          neither: expect.closeTo(1 / 3, 6) as number,
        }) as object,
      },
      { chord: 'F7', degree: '4', mixture: { seconds: 1, minorOnly: 0, majorOnly: 1, both: 0, neither: 0 } },
    ]);
  });

  it('has no shares where nothing sounds', () => {
    expect(gradeLine('| C7 |', []).palette.overall).toEqual({
      ...{ seconds: 0, minorOnly: null, majorOnly: null, both: null, neither: null },
    });
  });
});
