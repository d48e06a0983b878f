/**
 * Non-chord tones by the textbook examples of common-practice harmony, all written here in C from memory of what any
 * harmony textbook prints first for each (passing E D C, neighbour C D C or C B C, escape, appoggiatura, a 4-3 suspension,
 * an anticipation at a cadence). Common practice for the chromatic approach.
 */
import { describe, expect, it } from 'vitest';
import type { NoteFunction } from '../../src/core/take/schema.ts';
import { gradeLine, type Played } from '../core/grade/line.ts';

interface Example {
  readonly says: string;
  readonly chart: string;
  readonly line: readonly Played[];
  /** The note it is about, what it is, and the notes that make it so. */
  readonly note: number;
  readonly is: NoteFunction | null;
  readonly by: readonly number[];
}

const C = '| C | C |';

const examples: readonly Example[] = [
  {
    says: 'E D C over C: the D passes',
    chart: C,
    line: [
      [0, 1, 64],
      [1, 1, 62],
      [2, 1, 60],
    ],
    note: 1,
    is: 'passing',
    by: [0, 2],
  },
  {
    says: 'G A B C over C: A and B both pass, between G and C',
    chart: C,
    line: [
      [0, 0.5, 67],
      [0.5, 0.5, 69],
      [1, 0.5, 71],
      [1.5, 0.5, 72],
    ],
    note: 2,
    is: 'passing',
    by: [0, 3],
  },
  {
    says: 'G F# F E over C: a chromatic passing line',
    chart: C,
    line: [
      [0, 0.5, 67],
      [0.5, 0.5, 66],
      [1, 0.5, 65],
      [1.5, 0.5, 64],
    ],
    note: 1,
    is: 'passing',
    by: [0, 3],
  },
  {
    says: 'C D C over C: the D is an upper neighbour',
    chart: C,
    line: [
      [0, 1, 60],
      [1, 1, 62],
      [2, 1, 60],
    ],
    note: 1,
    is: 'neighbour',
    by: [0, 2],
  },
  {
    says: 'E D# E over C: the D# is a lower neighbour',
    chart: C,
    line: [
      [0, 1, 64],
      [1, 0.5, 63],
      [1.5, 1, 64],
    ],
    note: 1,
    is: 'neighbour',
    by: [0, 2],
  },
  {
    says: 'C leaps to F on the beat, which steps down to E: an appoggiatura',
    chart: C,
    line: [
      [0, 1, 60],
      [1, 1, 65],
      [2, 1, 64],
    ],
    note: 1,
    is: 'appoggiatura',
    by: [0, 2],
  },
  {
    says: 'C leaps to A between the beats, which steps down to G: an appoggiatura without its accent',
    chart: C,
    line: [
      [0, 0.5, 60],
      [0.5, 0.5, 69],
      [1, 1, 67],
    ],
    note: 1,
    is: 'appoggiatura',
    by: [0, 2],
  },
  {
    says: 'C leaps to F# between the beats, a half step under G: an approach',
    chart: C,
    line: [
      [0, 0.5, 60],
      [0.5, 0.5, 66],
      [1, 1, 67],
    ],
    note: 1,
    is: 'approach',
    by: [2],
  },
  {
    says: 'a phrase that opens with D# into E: an approach out of a rest',
    chart: C,
    line: [
      [0.5, 0.5, 63],
      [1, 1, 64],
    ],
    note: 0,
    is: 'approach',
    by: [1],
  },
  {
    says: 'E steps up to F, which leaps down to C: an escape tone',
    chart: C,
    line: [
      [0, 1, 64],
      [1, 0.5, 65],
      [1.5, 1, 60],
    ],
    note: 1,
    is: 'escape',
    by: [0, 2],
  },
  {
    says: 'C of F struck again over G and resolved to B: a 4-3 suspension',
    chart: '| F | G |',
    line: [
      [2, 2, 60],
      [4, 1, 60],
      [5, 1, 59],
    ],
    note: 1,
    is: 'suspension',
    by: [0, 2],
  },
  {
    says: 'D of G played early over C, then struck with G: an anticipation',
    chart: '| C | G |',
    line: [
      [2, 1, 64],
      [3, 0.5, 62],
      [4, 1, 62],
    ],
    note: 1,
    is: 'anticipation',
    by: [2],
  },
  {
    says: 'D reached and left by leaps over C: free',
    chart: C,
    line: [
      [0, 1, 67],
      [1, 1, 62],
      [2, 1, 72],
    ],
    note: 1,
    is: 'free',
    by: [],
  },
  {
    says: 'a step that turns back by step to another note (C D B) is no neighbour',
    chart: C,
    line: [
      [0, 1, 60],
      [1, 1, 62],
      [2, 1, 59],
    ],
    note: 1,
    is: 'escape',
    by: [0, 2],
  },
  {
    says: 'a passing tone needs a tone before it in the phrase: after a rest the D into C leans as an appoggiatura does',
    chart: C,
    line: [
      [0, 1, 64],
      [3, 0.5, 62],
      [3.5, 1, 60],
    ],
    note: 1,
    is: 'appoggiatura',
    by: [2],
  },
  {
    says: 'F and D# on either side of E over C: an enclosure, here its first tone',
    chart: C,
    line: [
      [0, 1, 60],
      [1, 0.5, 65],
      [1.5, 0.5, 63],
      [2, 1, 64],
    ],
    note: 1,
    is: 'enclosure',
    by: [2, 3],
  },
  {
    says: 'D below and F above E over C: an enclosure from below first, here its second tone',
    chart: C,
    line: [
      [0, 1, 67],
      [1, 0.5, 62],
      [1.5, 0.5, 65],
      [2, 1, 64],
    ],
    note: 2,
    is: 'enclosure',
    by: [1, 3],
  },
  {
    says: 'two tones on the same side of E (F# F E) are no enclosure: the line passes',
    chart: C,
    line: [
      [0, 1, 67],
      [1, 0.5, 66],
      [1.5, 0.5, 65],
      [2, 1, 64],
    ],
    note: 2,
    is: 'passing',
    by: [0, 3],
  },
  {
    says: 'the next note counts whatever chord it stands over: B of a C bar into C of an F bar is an approach',
    chart: '| C | F |',
    line: [
      [2, 1, 64],
      [3.5, 0.5, 71],
      [4, 1, 72],
    ],
    note: 1,
    is: 'approach',
    by: [2],
  },
  {
    says: 'a 7-6 suspension: E of C held in the ear over Dm, where it is struck again, steps down to D',
    chart: '| C | Dm |',
    line: [
      [2, 2, 64],
      [4, 1, 64],
      [5, 1, 62],
    ],
    note: 1,
    is: 'suspension',
    by: [0, 2],
  },
  {
    says: 'D into Db at the end of a phrase goes on by step, though nowhere in the chord: it passes',
    chart: C,
    line: [
      [0, 1, 67],
      [1, 1, 62],
      [2, 1, 61],
    ],
    note: 1,
    is: 'passing',
    by: [2],
  },
  {
    says: 'a chord tone has no function',
    chart: C,
    line: [
      [0, 1, 64],
      [1, 1, 67],
    ],
    note: 0,
    is: null,
    by: [],
  },
];

describe('functions of tones outside the chord', () => {
  it.each(examples)('$says', ({ chart, line, note, is, by }) => {
    const told = gradeLine(chart, line, { anticipationBeats: 0 }).notes[note]!;
    expect(told.function).toBe(is);
    expect(told.functionNotes).toEqual(by);
  });
});
