/**
 * Rhythms played exactly, and how handbooks of notation write them. Sources, from memory, as they could not be looked up:
 * E. Gould, Behind Bars (2011), "Note and rest values" and "Grouping"; G. Read, Music Notation (1969); C. Roemer, The Art
 * of Music Copying (1973), on the imaginary bar line and on swing eighths. Where none is named it is common practice.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantise } from '../../../src/core/notation/quantise.ts';
import { notesFrom, timeOf, written } from './rhythm-text.ts';

type Starts = readonly (number | readonly [number, number])[];
const third = 1 / 3;
const evenly = (from: number, parts: number, beats = 1) =>
  Array.from({ length: parts }, (_, i) => from + (i * beats) / parts);

describe('4/4', () => {
  const cases: readonly (readonly [string, Starts, string])[] = [
    ['quarters', [0, 1, 2, 3], '4 4 4 4'],
    ['a whole note', [0], '1'],
    ['half and quarters', [0, 2, 3], '2 4 4'],
    ['a dotted half may begin the bar or end it', [0, 3], '2. 4'],
    ['… or end it', [0, 1], '4 2.'],
    ['quarter, half, quarter: a half may lie over the middle when it starts on a beat', [0, 1, 3], '4 2 4'],
    ['dotted quarters that follow the beat', [0, 1.5, 2, 3.5], '4. 8 4. 8'],
    ['eighths', [0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5], '8 8 8 8 8 8 8 8'],
    ['a syncopation inside half a bar stands as one quarter', [0, 0.5, 1.5, 2, 2.5, 3.5], '8 4 8 8 4 8'],
    ['an off-beat over the middle is tied', [0, 0.5, 1.5, 2.5], '8 4 8 _8 4.'],
    ['the Charleston figure', [0, 1.5], '4. 8 _2'],
    ['a dotted quarter from beat 2 shows the middle', [0, 1, 2.5, 3], '4 4 _8 8 4'],
    ['sixteenths', [...evenly(0, 4), 1, 2], '16 16 16 16 4 2'],
    [
      'sixteenths in their usual groups',
      [0, 0.25, 0.5, 1, 1.5, 1.75, 2, 2.75, 3, 3.25, 3.75],
      '16 16 8 8 16 16 8. 16 16 8 16',
    ],
    ['a sixteenth over a beat is tied', [0, 0.75, 1.5, 2], '8. 16 _8 8 2'],
    ['a triplet', [...evenly(0, 3), 1, 2], '3(8 8 8) 4 2'],
    ['a triplet of quarter and eighth', [0, 2 * third, 1, 1 + 2 * third, 2], '3(4 8) 3(4 8) 2'],
    ['a triplet of eighth and quarter', [0, third, 1, 2], '3(8 4) 4 2'],
    ['a triplet with its first note tied over', [0, 1 + third, 1 + 2 * third, 2], '4 3(_8 8 8) 2'],
    ['quarter triplets', [0, 2 * third, 4 * third, 2], '3(4 4 4) 2'],
    ['a group of six', [...evenly(0, 6), 1, 2], '6(16 16 16 16 16 16) 4 2'],
    ['a group of five', [...evenly(0, 5), 1, 2], '5(16 16 16 16 16) 4 2'],
    ['thirty-seconds', [...evenly(0, 8), 1, 2], '32 32 32 32 32 32 32 32 4 2'],
  ];
  it.each(cases)('%s', (_, starts, text) => {
    expect(written(notesFrom(starts, 4), timeOf(4, { bpm: 60 }))).toBe(text);
  });
});

describe('rests', () => {
  const cases: readonly (readonly [string, Starts, string])[] = [
    [
      'a rest does not hide the middle',
      [
        [0, 1],
        [3, 1],
      ],
      '4 r4 r4 4',
    ],
    ['half rests stand in the halves of the bar', [[2, 2]], 'r2 2'],
    [
      'a rest off the beat fills the beat',
      [
        [0, 0.5],
        [2, 2],
      ],
      '8 r8 r4 2',
    ],
    [
      'a quarter that is left a little early has no rest',
      [
        [0, 0.7],
        [1, 0.6],
        [2, 0.8],
        [3, 1],
      ],
      '4 4 4 4',
    ],
    ['eighths played short are eighths', evenly(0, 8, 4).map((at) => [at, 0.2] as const), '8 8 8 8 8 8 8 8'],
    [
      'a short note on the beat and a long silence',
      [
        [0, 0.2],
        [2, 2],
      ],
      '8 r8 r4 2',
    ],
    [
      'a bar of silence',
      [
        [0, 4],
        [8, 4],
      ],
      '1 | r1 | 1',
    ],
    ['a line that begins late', [[5, 3]], 'r1 | r4 2.'],
  ];
  it.each(cases)('%s', (_, starts, text) => {
    expect(written(notesFrom(starts, 4), timeOf(4))).toBe(text);
  });
});

describe('bar lines', () => {
  it('are crossed by a tie', () => {
    expect(written(notesFrom([0, 3, 5], 8), timeOf(4))).toBe('2. 4 | _4 2.');
    expect(written(notesFrom([0, 3.5, 5], 8), timeOf(4))).toBe('2 _4. 8 | _4 2.');
  });

  it('an upbeat stands in the bar before the first', () => {
    const { measures } = quantise(notesFrom([-1, -0.5, 0], 4), timeOf(4));
    expect(measures.map(({ bar }) => bar)).toEqual([-1, 0]);
    expect(written(notesFrom([-1, -0.5, 0], 4), timeOf(4))).toBe('r2 r4 8 8 | 1');
  });

  it('a note a little before the bar is written on it', () => {
    expect(written(notesFrom([0, 1, 2, 3, 3.9], 8), timeOf(4))).toBe('4 4 4 4 | 1');
  });
});

describe('other meters', () => {
  const cases: readonly (readonly [string, number, 2 | 3, Starts, string])[] = [
    ['3/4: a dotted half fills the bar', 3, 2, [0], '2.'],
    ['3/4: half and quarter, either way', 3, 2, [0, 2, 3, 4], '2 4 | 4 2'],
    ['3/4: dotted quarters', 3, 2, [0, 1.5, 2, 3, 4, 5.5], '4. 8 4 | 4 4. 8'],
    [
      '3/4: rests are quarters',
      3,
      2,
      [
        [0, 1],
        [3, 3],
      ],
      '4 r4 r4 | 2.',
    ],
    ['5/4 is three and two', 5, 2, [0, 3], '2. 2'],
    [
      '5/4: a note over the third beat is tied where it starts off the beat',
      5,
      2,
      [0, 2.5, 4],
      '2 _8 8 _4 4',
    ],
    ['7/4 is four and three', 7, 2, [0, 4], '1 2.'],
    ['6/8: eighths in threes', 2, 3, evenly(0, 6, 2), '8 8 8 8 8 8'],
    ['6/8: quarter and eighth', 2, 3, [0, 2 * third, 1, 1 + 2 * third], '4 8 4 8'],
    ['6/8: eighth and quarter', 2, 3, [0, third, 1], '8 4 4.'],
    ['6/8: a whole bar is a dotted half', 2, 3, [0], '2.'],
    ['6/8: over the dotted beat there is a tie', 2, 3, [0, 2 * third, 1 + third], '4 8 _8 4'],
    ['6/8: duplets', 2, 3, [0, 0.5, 1], '2(8 8) 4.'],
    ['12/8: a dotted half in each half', 4, 3, [0, 2], '2. 2.'],
    ['12/8: a shuffle written out', 4, 3, [0, 2 * third, 1, 1 + 2 * third, 2], '4 8 4 8 2.'],
    ['9/8: dotted quarters', 3, 3, [0, 1, 2], '4. 4. 4.'],
    ['2/4: a syncopation', 2, 2, [0, 0.5, 1.5], '8 4 8'],
  ];
  it.each(cases)('%s', (_, beatsPerBar, divisions, starts, text) => {
    const end = beatsPerBar * text.split('|').length;
    expect(written(notesFrom(starts, end), timeOf(beatsPerBar, { divisions, bpm: 80 }))).toBe(text);
  });
});

describe('swing', () => {
  const swung = [0, 0.64, 1, 1.66, 2, 2.62, 3, 3.65];

  it('is written as straight eighths', () => {
    expect(written(notesFrom(swung, 4), timeOf(4, { bpm: 140, swing: 0.66 }))).toBe('8 8 8 8 8 8 8 8');
  });

  it('leaves triplets triplets', () => {
    const line = [...evenly(0, 3), 1, 1.66, 2, 2.65, ...evenly(3, 3)];
    expect(written(notesFrom(line, 4), timeOf(4, { bpm: 120, swing: 0.66 }))).toBe(
      '3(8 8 8) 8 8 8 8 3(8 8 8)',
    );
  });

  it('is learnt from the player where the chart is straight', () => {
    const twoBars = [...swung, ...swung.map((at) => at + 4)];
    expect(written(notesFrom(twoBars, 8), timeOf(4, { bpm: 140 }))).toBe('8 8 8 8 8 8 8 8 | 8 8 8 8 8 8 8 8');
  });

  it('does not reach sixteenths in even double time', () => {
    expect(
      written(notesFrom([...evenly(0, 8, 2), 2, 2.66, 3, 3.66], 4), timeOf(4, { bpm: 100, swing: 0.66 })),
    ).toBe('16 16 16 16 16 16 16 16 8 8 8 8');
  });
});

describe('a player who lies behind the beat', () => {
  it('is written on it', () => {
    const late = evenly(0, 16, 8).map((at) => at + 0.14);
    expect(written(notesFrom(late, 8), timeOf(4, { bpm: 150 }))).toBe('8 8 8 8 8 8 8 8 | 8 8 8 8 8 8 8 8');
  });

  it('may drift behind and come back', () => {
    const lag = [0, 0.05, 0.12, 0.18, 0.25, 0.27, 0.25, 0.2, 0.1, 0.05, 0, 0, 0, 0, 0, 0];
    const line = evenly(0, 16, 8).map((at, i) => at + lag[i]!);
    expect(written(notesFrom(line, 8), timeOf(4, { bpm: 160 }))).toBe('8 8 8 8 8 8 8 8 | 8 8 8 8 8 8 8 8');
  });
});

describe('grace notes', () => {
  it('very short notes before a note are written small', () => {
    expect(written(notesFrom([0, [1.92, 0.08], 2, 3], 4), timeOf(4, { bpm: 100 }))).toBe('2 ~4 4');
  });

  it('two of them, too', () => {
    expect(written(notesFrom([0, [1.84, 0.08], [1.92, 0.08], 2, 3], 4), timeOf(4, { bpm: 100 }))).toBe(
      '2 ~~4 4',
    );
  });

  it('stand where their main note stands', () => {
    expect(quantise(notesFrom([0, [1.92, 0.08], 2, 3], 4), timeOf(4)).onsetTicks).toEqual([0, 240, 240, 360]);
  });
});

describe('any line', () => {
  const line = fc
    .array(
      fc.record({
        gap: fc.double({ min: 0.05, max: 3, noNaN: true }),
        held: fc.double({ min: 0.1, max: 1.2, noNaN: true }),
      }),
      { minLength: 1, maxLength: 24 },
    )
    .map((steps) => {
      let at = 0;
      return steps.map(({ gap, held }) => {
        const note = { beat: at, endBeat: at + gap * held };
        at += gap;
        return note;
      });
    });
  const time = fc.record({
    beatsPerBar: fc.integer({ min: 2, max: 7 }),
    divisions: fc.constantFrom(2 as const, 3 as const),
    swing: fc.double({ min: 0.5, max: 0.75, noNaN: true }),
    bpm: fc.integer({ min: 50, max: 280 }),
  });

  it('fills its measures, holds every note once, in order, and is the same each time', () => {
    fc.assert(
      fc.property(line, time, (notes, { beatsPerBar, ...rest }) => {
        const of = timeOf(beatsPerBar, rest);
        const { measures, onsetTicks } = quantise(notes, of);
        for (const { signs, ticks } of measures) {
          expect(signs.reduce((sum, sign) => sum + sign.ticks, 0)).toBe(ticks);
          signs.forEach((sign, i) => {
            const before = signs[i - 1];
            expect(sign.atTicks).toBe(before ? before.atTicks + before.ticks : 0);
          });
        }
        const signs = measures.flatMap((measure) => measure.signs);
        const heads = signs.flatMap(({ note, tiedFrom, graces }) => [
          ...graces,
          ...(note === null || tiedFrom ? [] : [note]),
        ]);
        expect(heads).toEqual(notes.map((_, i) => i));
        signs.forEach((sign, i) => {
          if (sign.tiedOn) expect(signs[i + 1]).toMatchObject({ note: sign.note, tiedFrom: true });
        });
        expect(onsetTicks).toEqual([...onsetTicks].sort((a, b) => a - b));
        expect(quantise(notes, of)).toEqual({ ...quantise(notes, of), measures, onsetTicks });
      }),
      { numRuns: 60, seed: 16 },
    );
  });

  it('of no notes has no measures', () => {
    expect(quantise([], timeOf(4)).measures).toEqual([]);
  });

  it('refuses notes out of order', () => {
    expect(() =>
      quantise(
        [
          { beat: 1, endBeat: 2 },
          { beat: 0, endBeat: 1 },
        ],
        timeOf(4),
      ),
    ).toThrow(/order/);
    expect(() => quantise([{ beat: NaN, endBeat: 2 }], timeOf(4))).toThrow(/finite/);
  });
});
