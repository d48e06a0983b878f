import { describe, expect, it } from 'vitest';
import { gradeLine, type Played } from '../line.ts';

const thirds = (played: readonly Played[], text = '| C7 |') => gradeLine(text, played).thirds;

describe('thirds over a chord with a major third', () => {
  it('tells how a b3 came into the 3', () => {
    const found = thirds([
      [0, 0.25, 63],
      [0.25, 0.5, 64],
      [1, 0.25, 63],
      [1.25, 0.5, 64, { attack: 'legato' }],
      [2, 0.25, 63],
      [2.25, 0.5, 64, { attack: 'legato', bendSemitones: 0.9 }],
      [3, 0.5, 64, { bendSemitones: 1 }],
    ]);
    expect(found.leans.map(({ how }) => how)).toEqual(['picked', 'hammered', 'slid', 'bent']);
    expect(found).toMatchObject({ notes: 7, flatThirds: 3, thirds: 4, leftHanging: [] });
  });

  it('gives the move half a beat, and no longer', () => {
    expect(
      thirds([
        [0, 0.5, 63],
        [0.5, 1, 64],
      ]).leans,
    ).toHaveLength(1);
    expect(
      thirds([
        [0, 0.5, 63],
        [0.6, 1, 64],
      ]).leans,
    ).toHaveLength(0);
  });

  it('hears 3 falling back to b3', () => {
    expect(
      thirds([
        [0, 0.5, 64],
        [0.5, 0.5, 63],
        [1, 1, 62],
      ]),
    ).toMatchObject({
      falls: [{ from: 0, to: 1, how: 'picked' }],
      leftHanging: [],
    });
  });

  it('finds the b3 that is left hanging: at a phrase end, or left by a leap', () => {
    expect(
      thirds([
        [0, 1, 63],
        [1, 1, 60],
        [2, 1, 63],
      ]).leftHanging,
    ).toEqual([0, 2]);
    expect(
      thirds([
        [0, 1, 63],
        [1, 1, 62],
      ]).leftHanging,
    ).toEqual([]);
  });

  it('calls a third between the two a blue note, and no fault', () => {
    const found = thirds([
      [0, 1, 63.4],
      [3, 1, 63.65],
    ]);
    expect(found.blueNotes.map(({ note, cents }) => [note, Math.round(cents)])).toEqual([
      [0, 40],
      [1, 65],
    ]);
    expect(found.leftHanging).toEqual([]);
  });

  it('takes a struck note that is bent up by about a half step for a b3 into the 3', () => {
    const bent = (bendSemitones: number, attack: 'struck' | 'legato' = 'struck', midi = 64) =>
      thirds([[0, 1, midi, { bendSemitones, attack }]]).leans.length;
    expect([0.4, 0.5, 1.5, 1.6].map((bend) => bent(bend))).toEqual([0, 1, 1, 0]);
    // A slur into it is no bend from a b3, nor is a bent root.
    expect([bent(1, 'legato'), bent(1, 'struck', 60)]).toEqual([0, 0]);
  });

  it('counts a fall from the third of a chord alone, into a b3 over a chord', () => {
    const falls = (text: string, played: readonly Played[]) => thirds(played, text).falls;
    expect(
      falls('| C7 |', [
        [0, 0.25, 64],
        [0.25, 1, 63],
      ]),
    ).toEqual([{ from: 0, to: 1, how: 'picked', beats: 0.25 }]);
    // E is no third of F7; over no chord E flat is no b3.
    expect(
      falls('| F7 | C7 |', [
        [3.6, 0.1, 64],
        [4, 1, 63],
      ]),
    ).toEqual([]);
    expect(
      falls('| C7 | N.C. |', [
        [3.6, 0.4, 64],
        [4, 1, 63],
      ]),
    ).toEqual([]);
  });

  it('asks nothing of a minor chord', () => {
    expect(thirds([[0, 1, 63]], '| Cm7 |')).toMatchObject({ notes: 0, flatThirds: 0, leftHanging: [] });
  });
});

describe('palette', () => {
  it('splits lengths between the two pentatonics, over each chord', () => {
    const { palette } = gradeLine(
      '| C7 | F7 |',
      [
        [0, 2, 63],
        [2, 4, 64],
        [6, 1, 60],
        [7, 1, 61],
      ],
      {},
      'C',
    );
    expect(palette.overall).toMatchObject({
      seconds: 4,
      minorOnly: 0.25,
      majorOnly: 0.5,
      both: 0.125,
      neither: 0.125,
    });
    expect(palette.byChord.map(({ chord, degree }) => [chord, degree])).toEqual([
      ['C7', '1'],
      ['F7', '4'],
    ]);
  });

  it('calls the key’s major third over the IV what it is', () => {
    const { palette } = gradeLine(
      '| C7 | F7 |',
      [
        [0, 4, 64],
        [4, 1, 64],
        [5, 1, 63],
      ],
      {},
      'C',
    );
    expect(palette.thirdOverFour).toEqual({ notes: [1], seconds: 0.5, degree: '7' });
    expect(gradeLine('| C | Fmaj7 |', [[4, 1, 64]], {}, 'C').palette.thirdOverFour.notes).toEqual([]);
  });
});
