/** Figures that come back: four notes or more, three times or more, rhythm left aside. */
import { describe, expect, it } from 'vitest';
import { findFigures, repeatedRuns } from '../../../../src/core/grade/teach/came-back.ts';
import { gradedOver } from '../graded.ts';
import type { Played } from '../line.ts';

/** Half a beat a note, each figure from a beat on; the notes between are all different from those of the figures. */
const figuresOf = (
  placed: readonly (readonly [beat: number, pitches: readonly number[]])[],
  text = '| C7 |',
) =>
  findFigures(
    gradedOver(
      text,
      placed.flatMap(([at, pitches]) => pitches.map((midi, i): Played => [at + i / 2, 0.5, midi])),
    ),
    { beatsPerBar: 4 },
  );
const LICK = [64, 67, 70, 60];

describe('runs that stand more than once', () => {
  it('are found with all their places, those that overlap too', () => {
    expect(repeatedRuns([0, 4, 7, 0, 4, 9], 2)).toEqual([[0, 3]]);
    expect(repeatedRuns([1, 1, 1], 2)).toEqual([[0, 1]]);
    expect(repeatedRuns([1, 2, 3], 2)).toEqual([]);
    // A run of one and eleven is none of eleven and one.
    expect(repeatedRuns([1, 11, 11, 1], 2)).toEqual([]);
  });
});

describe('figures that come back', () => {
  it('have come three times', () => {
    expect(
      figuresOf([
        [0, LICK],
        [4, [62]],
        [8, LICK],
      ]),
    ).toEqual([]);
    expect(
      figuresOf([
        [0, LICK],
        [4, [62]],
        [8, LICK],
        [12, [65]],
        [16, LICK],
      ]),
    ).toEqual([{ length: 4, starts: [0, 5, 10], movedInBar: 0, otherOctave: 0, otherChord: 0, otherEnd: 0 }]);
  });

  it('have four notes or more, and are told as long as they stay the same', () => {
    const three = LICK.slice(0, 3);
    expect(
      figuresOf([
        [0, three],
        [4, [62]],
        [8, three],
        [12, [65]],
        [16, three],
        [20, [66]],
      ]),
    ).toEqual([]);
    const six = [...LICK, 62, 65];
    expect(
      figuresOf([
        [0, six],
        [4, [61]],
        [8, six],
        [12, [63]],
        [16, six],
      ]),
    ).toMatchObject([{ length: 6, starts: [0, 7, 14] }]);
  });

  it('are none of one note struck again and again', () => {
    expect(figuresOf([[0, new Array<number>(16).fill(60)]])).toEqual([]);
  });

  it('do not overlap', () => {
    // C D C D …: six notes stand three times side by side in eighteen.
    const trill = Array.from({ length: 12 }, (_, i) => (i % 2 === 0 ? 60 : 62));
    expect(figuresOf([[0, trill]])).toMatchObject([{ length: 4, starts: [0, 4, 8] }]);
  });

  it('are those that fill most of the line, three at the most', () => {
    const riffs = [
      [64, 67, 70, 60],
      [65, 69, 72, 63, 62],
      [71, 68, 66, 61],
      [62, 61, 60, 59],
    ];
    let other = 0;
    const placed = riffs.flatMap((riff, i) =>
      [0, 1, 2].map((time) => [24 * i + 8 * time, [...riff, 60 + (other++ % 12)]] as const),
    );
    const found = figuresOf(placed);
    expect(found).toHaveLength(3);
    expect(found[0]!.length).toBe(5);
    expect(found.map(({ starts }) => starts[0])).toEqual([15, 0, 33]);
  });

  it('may come elsewhere in the bar, in another octave, over another chord, with another end', () => {
    const [figure] = figuresOf(
      [
        [0, LICK],
        [5, LICK],
        [8.2, LICK],
        [12, LICK.map((midi) => midi + 12)],
        [16, [64, 67, 70, 62]],
      ],
      '| C7 | C7 | C7 | F7 | C7 |',
    );
    expect(figure).toEqual({
      ...{ length: 4, starts: [0, 4, 8, 12], movedInBar: 1, otherOctave: 1, otherChord: 1, otherEnd: 1 },
    });
  });
});
