/** How much it takes to say that a chart is in the wrong key, counted by hand. At 120 bpm a bar lasts two seconds. */
import { describe, expect, it } from 'vitest';
import { grade } from '../../../../src/core/grade.ts';
import { chartTimeline, MINOR_PENTATONIC, wanderer } from '../../../bench/made-players.ts';
import { gradeLine, line, SETTINGS, type Played } from '../line.ts';

const suspected = (text: string, played: readonly Played[]) => gradeLine(text, played, {}, 'C').suspected;
/** One note a beat. */
const bar = (at: number, ...pitches: readonly number[]) =>
  pitches.map((midi, i): Played => [4 * at + i, 1, midi]);

/** Over C7 the four tones of D7, in eight orders that begin neither with its third nor with its seventh (a tone of C7). */
const D = 62;
const FS = 66;
const A = 69;
const C = 72;
const ORDERS = [
  [D, FS, A, C],
  [D, FS, C, A],
  [D, A, FS, C],
  [D, A, C, FS],
  [D, C, FS, A],
  [A, D, FS, C],
  [A, FS, D, C],
  [A, C, D, FS],
];
const inD = (bars: number) => ORDERS.slice(0, bars).flatMap((order, at) => bar(at, ...order));

describe('another key', () => {
  it('takes twenty-four notes to suspect', () => {
    expect(suspected('| C7 |', inD(6))).toMatchObject({
      ...{ what: 'key', semitones: 2, beats: 0, tonic: 'D', shareHere: 0.25, shareThere: 1 },
    });
    expect(suspected('| C7 |', inD(6).slice(0, 23))).toBeNull();
  });

  it('takes six different bars', () => {
    // The first five bars, and the first of them again.
    const again = [...inD(5), ...bar(5, ...ORDERS[0]!)];
    expect(suspected('| C7 |', again)).toBeNull();
  });

  it('takes a gain of four standard errors between the bars', () => {
    // Bars of D7 gain three notes each; bars of C, which both chords hold, gain none. Of eight and four the mean is 2, its
    // error 1.477 / √12: 4.69. Of seven and five it is 1.75, its error 1.545 / √12: 3.92.
    const mixed = (ofD: number) => [
      ...inD(ofD),
      ...Array.from({ length: 12 - ofD }, (_, i) =>
        bar(ofD + i, ...new Array<number>(Math.min(4, i + 1)).fill(C)),
      ).flat(),
    ];
    expect(suspected('| C7 |', mixed(8))).toMatchObject({ what: 'key', semitones: 2 });
    const seven = [
      ...inD(7),
      ...[1, 2, 3, 4].flatMap((count, i) => bar(7 + i, ...new Array<number>(count).fill(C))),
    ];
    // The fifth bar of C has another tone that both chords lack.
    expect(suspected('| C7 |', [...seven, ...bar(11, C, 73)])).toBeNull();
  });

  /**
   * Six landings on the thirds of D7 and G7 over C7 and F7, each `beats` long, and three more notes to fill the bar: tones that
   * neither chord holds, and one of the chord as it is, so that the notes alone gain hardly anything.
   */
  const onThirds = (beats: number) => {
    const rest = (4 - beats) / 3;
    const fill = [
      [76, 73, 68],
      [73, 69, 68],
      [73, 76, 68],
      [68, 73, 69],
      [68, 76, 73],
      [73, 68, 80],
    ];
    return fill.flatMap((others, at): Played[] => [
      [4 * at, beats, at % 2 === 0 ? FS : 71],
      ...others.map((midi, i): Played => [4 * at + beats + i * rest, rest, midi]),
    ]);
  };

  it('is told by landings on its thirds, where luck gives as many in one take of five thousand', () => {
    // A third is 3 × 1.9 of 24 beats: 0.2375 to the sixth power is one in 5,570.
    expect(suspected('| C7 | F7 |', onThirds(1.9))).toMatchObject({ what: 'key', semitones: 2, tonic: 'D' });
  });
});

describe('the blues scale of the key', () => {
  // Rhythm changes in Bb; Bb minor pentatonic has the tones of Db6, so that it fits the chords a minor third higher better.
  const on = chartTimeline(
    '| Bb | G7 | Cm7 | F7 | Dm7 | G7 | Cm7 | F7 | Bb | Bb7 | Eb | Ebm | Bb | F7 | Bb | F7 |' +
      ' D7 | D7 | G7 | G7 | C7 | C7 | F7 | F7 | Bb | G7 | Cm7 | F7 | Dm7 | G7 | Cm7 | Bb |',
  );
  const keyOf = (seed: number, semitones: number) => {
    const played = wanderer(seed, MINOR_PENTATONIC, 2 * on.roundBeats);
    const higher = played.map(([beat, beats, midi]): Played => [beat, beats, midi + 10 + semitones]);
    return grade(line(higher), on, SETTINGS).suspected?.what;
  };

  it('over its chords is no other key', () => {
    for (const seed of [7000, 7004, 7008]) expect(keyOf(seed, 0)).not.toBe('key');
  });

  it('a half step higher is one', () => {
    for (const seed of [7000, 7004, 7008]) expect(keyOf(seed, 1)).toBe('key');
  });
});

describe('another place', () => {
  /** The tones of the chord that stood `late` beats earlier in | C7 | F7 | G7 | Bb7 |, a chord tone a beat, in changing orders. */
  const follower = (late: number, bars: number) =>
    Array.from({ length: 4 * bars }, (_, beat): Played => {
      const chords = [
        [60, 64, 67, 70],
        [65, 69, 72, 63],
        [67, 71, 62, 65],
        [70, 62, 65, 68],
      ];
      const tones = chords[Math.floor((beat - late + 16) / 4) % 4]!;
      return [beat, 1, tones[(beat * (1 + Math.floor(beat / 16)) + Math.floor(beat / 4)) % 4]!];
    });

  it('is told where every note fits the chart begun a bar later or earlier', () => {
    expect(suspected('| C7 | F7 | G7 | Bb7 |', follower(4, 12))).toMatchObject({
      ...{ what: 'place', beats: 4, semitones: 0, tonic: 'C', shareThere: 1 },
    });
    expect(suspected('| C7 | F7 | G7 | Bb7 |', follower(-4, 12))).toMatchObject({ what: 'place', beats: -4 });
    expect(suspected('| C7 | F7 | G7 | Bb7 |', follower(0, 12))).toBeNull();
  });

  it('is told where a line was played some bars away in the form', () => {
    const eight = '| C7 | F7 | G7 | Bb7 | Eb7 | D7 | A7 | E7 |';
    const roots = [60, 65, 67, 70, 63, 62, 69, 64];
    const moved = Array.from({ length: 96 }, (_, beat): Played => {
      const root = roots[(Math.floor(beat / 4) - 3 + 8) % 8]!;
      const tones = [root, root + 4, root + 7, root + 10];
      return [beat, 1, tones[(beat * (1 + Math.floor(beat / 16)) + Math.floor(beat / 4)) % 4]!];
    });
    expect(suspected(eight, moved)).toMatchObject({ what: 'place', beats: 12, shareThere: 1 });
  });
});
