/** What could be better, and what is no fault, in lines of a few notes. The key is C; at 120 bpm a beat lasts half a second. */
import { describe, expect, it } from 'vitest';
import type { Aim } from '../../../../src/core/grade/aims/aim.ts';
import { AIM_LADDER, PLAIN_AIMS } from '../../../../src/core/grade/aims/aims.ts';
import { gradeLine, type Played } from '../line.ts';

const houseAim = (id: string): Aim => [...AIM_LADDER, ...PLAIN_AIMS].find((aim) => aim.id === id)!;
/** "landing F7 Bb4>A4 bar 2": fault, chord, what was played and what resolves it, bars from 1. */
const advice = (text: string, played: readonly Played[], aims: readonly Aim[] = []) =>
  gradeLine(text, played, { aims }, 'C').advice.map(
    ({ fault, held, chord, from, resolve, bars }) =>
      `${held ? 'held ' : ''}${fault} ${chord} ${from.name}>${resolve.name} bar ${bars.map((bar) => bar + 1).join(',')}`,
  );

describe('a landing at fault', () => {
  it('is on a tone that the chord does not name and that nothing leads on', () => {
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 64],
        [4, 1, 66],
        [6, 1, 72],
      ]),
    ).toEqual(['landing F7 Gb4>F4 bar 2']);
  });

  it('may be held into the chord', () => {
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 60],
        [2, 4, 64],
        [7, 1, 57],
      ]),
    ).toEqual(['held landing F7 E4>Eb4 bar 2']);
  });

  it('is no fault where it steps on: put right, passing, suspended', () => {
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 64],
        [4, 1, 66],
        [5, 1, 65],
      ]),
    ).toEqual([]);
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 64],
        [2, 3, 66],
        [5, 1, 65],
      ]),
    ).toEqual([]);
  });

  it('is no fault on a colour, but where the aim asks for chord tones there', () => {
    const ninth: readonly Played[] = [
      [0, 1, 64],
      [4, 1.5, 67],
      [6, 1, 72],
    ];
    expect(advice('| C7 | F7 |', ninth)).toEqual([]);
    expect(advice('| C7 | F7 |', ninth, [houseAim('third-on-arrival')])).toEqual(['landing F7 G4>A4 bar 2']);
    expect(advice('| C7 | F7 |', ninth, [houseAim('chord-tones')])).toEqual(['landing F7 G4>A4 bar 2']);
    // The aim is about ends of phrases, or about another chord.
    expect(advice('| C7 | F7 |', ninth, [houseAim('phrases-end-on-chord-tones')])).toEqual([]);
    expect(advice('| C7 | F7 |', ninth, [{ ...houseAim('third-on-arrival'), over: ['I'] }])).toEqual([]);
  });

  it('is no fault on a blue third', () => {
    expect(
      advice('| F7 | C7 |', [
        [0, 1, 69],
        [4, 1, 63.35],
        [6, 1, 67],
      ]),
    ).toEqual([]);
  });
});

describe('the key’s third over the IV', () => {
  it('is a fault where it stays, and none where it leads on', () => {
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 64],
        [4, 1, 69],
        [5, 1, 64],
        [6, 1, 69],
      ]),
    ).toEqual(['third over four F7 E4>Eb4 bar 2']);
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 64],
        [4, 1, 65],
        [5, 0.5, 64],
        [5.5, 1, 63],
      ]),
    ).toEqual([]);
    expect(
      advice('| C7 | Fmaj7 |', [
        [0, 1, 64],
        [4, 1, 69],
        [5, 1, 64],
        [6, 1, 69],
      ]),
    ).toEqual([]);
  });
});

describe('the end of a phrase', () => {
  it('is at fault on a tone that the chord does not name', () => {
    expect(
      advice('| C7 |', [
        [0, 1, 64],
        [1, 1, 66],
      ]),
    ).toEqual(['phrase end C7 Gb4>G4 bar 1']);
    expect(
      advice('| C7 |', [
        [0, 1, 64],
        [1, 1, 67],
      ]),
    ).toEqual([]);
  });

  it('may be a colour, but where the aim asks for chord tones there', () => {
    expect(
      advice('| C7 |', [
        [0, 1, 64],
        [1, 1, 69],
      ]),
    ).toEqual([]);
    expect(
      advice(
        '| C7 |',
        [
          [0, 1, 64],
          [1, 1, 69],
        ],
        [houseAim('phrases-end-on-chord-tones')],
      ),
    ).toEqual(['phrase end C7 A4>Bb4 bar 1']);
  });

  it('may be a blue third, or over no chord', () => {
    expect(
      advice('| C7 |', [
        [0, 1, 64],
        [1, 1, 63.4],
      ]),
    ).toEqual([]);
    expect(
      advice('| C7 | N.C. |', [
        [0, 1, 64],
        [5, 1, 66],
      ]),
    ).toEqual([]);
  });
});

describe('a b3 left hanging', () => {
  it('is sent to the third', () => {
    expect(
      advice('| C7 |', [
        [0, 1, 60],
        [1, 1, 63],
        [2, 1, 67],
      ]),
    ).toEqual(['hanging b3 C7 Eb4>E4 bar 1']);
  });
});

describe('the third that was a step away', () => {
  it('is shown where another chord tone was landed on', () => {
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 64],
        [3, 1, 67],
        [4, 1, 65],
      ]),
    ).toEqual(['third near F7 G4>A4 bar 2']);
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 64],
        [3, 1, 67],
        [4, 1, 69],
      ]),
    ).toEqual([]);
    // From C the third of F7 is a leap away.
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 64],
        [3, 1, 60],
        [4, 1, 65],
      ]),
    ).toEqual([]);
  });
});

describe('pieces of advice', () => {
  it('gather the same fault over the bars, in order', () => {
    const bar = (at: number): readonly Played[] => [
      [at, 1, 64],
      [at + 4, 1, 66],
      [at + 6, 1, 72],
    ];
    expect(advice('| C7 | F7 | C7 | F7 |', [...bar(0), ...bar(8)])).toEqual(['landing F7 Gb4>F4 bar 2,4']);
    // The second chorus of two bars is the same bar.
    expect(advice('| C7 | F7 |', [...bar(0), ...bar(8)])).toEqual(['landing F7 Gb4>F4 bar 2']);
  });

  it('begin with what the aim in hand asks for, then with what is heard most', () => {
    const played: readonly Played[] = [
      [0, 1, 64],
      [4, 1, 66],
      [6, 1, 72],
      [8, 1, 60],
      [9, 1, 63],
      [10, 1, 67],
    ];
    const text = '| C7 | F7 | C7 |';
    expect(advice(text, played)).toEqual(['landing F7 Gb4>F4 bar 2', 'hanging b3 C7 Eb4>E4 bar 3']);
    expect(advice(text, played, [houseAim('flat-third-into-third')])).toEqual([
      'hanging b3 C7 Eb4>E4 bar 3',
      'landing F7 Gb4>F4 bar 2',
    ]);
  });

  it('name a note once, by the heavier fault', () => {
    // The landing is the end of its phrase too.
    expect(
      advice('| C7 | F7 |', [
        [0, 1, 64],
        [4, 1, 66],
      ]),
    ).toEqual(['landing F7 Gb4>F4 bar 2']);
  });
});
