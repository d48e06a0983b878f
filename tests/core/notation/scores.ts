/** Lines of every kind as written pages, for the tests of the score and of its drawing. */
import { grade } from '../../../src/core/grade.ts';
import { reportAsRead } from '../../../src/core/report/as-read.ts';
import { timelineAsRead } from '../../../src/core/chart/as-read.ts';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import type { Timeline } from '../../../src/core/chart/timeline.ts';
import { instrumentOf, withCapo } from '../../../src/core/music/instruments.ts';
import { readingOf } from '../../../src/core/music/reading.ts';
import { writtenPage, type WrittenPage } from '../../../src/core/notation/written-page.ts';
import { listedNote } from '../../../src/core/take/listed-note.ts';
import type { HeardNote } from '../../../src/core/take/note.ts';
import { chartOf } from '../chart/charts.ts';

export type Note = readonly [beat: number, beats: number, midi: number, more?: Partial<HeardNote>];

export interface PageOptions {
  readonly instrument?: string;
  readonly capo?: number;
  readonly pitch?: 'written' | 'concert';
  readonly bpm?: number;
}

export function pageOf(
  chartText: string,
  notes: readonly Note[],
  { instrument = 'guitar', capo = 0, pitch = 'written', bpm = 100 }: PageOptions = {},
): WrittenPage & { readonly timeline: Timeline } {
  const chart = chartOf(chartText);
  const timeline = timelineFromTempo(chart, { bpm, swing: 0.5 });
  const known = instrumentOf(instrument);
  const held = known && capo > 0 ? withCapo(known, capo) : known;
  const heard = notes.map(([beat, beats, midi, more]): HeardNote => ({
    ...listedNote(timeline.beatMap.secondsAt(beat), 0, midi),
    offsetSeconds: timeline.beatMap.secondsAt(beat + beats),
    ...more,
  }));
  const report = grade(heard, timeline, {
    source: { kind: 'notes', durationSeconds: 60, sampleRate: null },
    referenceHz: 440,
  });
  const reading = readingOf(held, pitch);
  const asRead = timelineAsRead(timeline, reading);
  return {
    ...writtenPage(reportAsRead(report, reading), asRead, { instrument: held, reading }),
    timeline: asRead,
  };
}

const BLUES =
  'title: A blues\nkey: C\n| C7 | F7 | C7 | C7 |\n| F7 | F7 | C7 | A7b9 |\n| Dm7 | G7/B | C7 | N.C. |';
const third = 1 / 3;

/** Something of everything that can be written. */
export const PAGES: readonly { readonly name: string; readonly page: () => WrittenPage }[] = [
  {
    name: 'eighths, ties, triplets, grace notes and rests on a guitar',
    page: () =>
      pageOf(BLUES, [
        [0, 0.5, 60],
        [0.5, 1, 63],
        [1.5, 1, 64],
        [2.5, 2, 67],
        [5, third, 65],
        [5 + third, third, 69],
        [5 + 2 * third, third, 72],
        [6.93, 0.07, 74],
        [7, 0.9, 75],
        [12, 4, 70, { bendSemitones: 2 }],
        [16, 0.25, 69],
        [16.25, 0.25, 67],
        [16.5, 0.25, 65],
        [16.75, 1.5, 64, { second: 67 }],
        [44, 2, 60],
      ]),
  },
  {
    name: 'under a capo',
    page: () =>
      pageOf(
        BLUES,
        [
          [0, 1, 60],
          [1, 1, 62],
          [2, 2, 64],
        ],
        { capo: 2 },
      ),
  },
  {
    name: 'a bass in 3/4 with a change of key',
    page: () =>
      pageOf(
        'meter: 3/4\nkey: Bb\n| Bb | Eb |\n[B]\nkey: G\n| G | D7 |',
        [
          [0, 3, 34],
          [3, 1.5, 39],
          [4.5, 1.5, 43],
          [6, 3, 31],
          [9, 2, 38],
        ],
        { instrument: 'bass' },
      ),
  },
  {
    name: 'a tenor saxophone at written pitch, with an upbeat',
    page: () =>
      pageOf(
        BLUES,
        [
          [-1, 0.5, 55],
          [-0.5, 0.5, 57],
          [0, 1, 58],
          [1, 3, 61],
        ],
        { instrument: 'tenor-sax' },
      ),
  },
  {
    name: 'a baritone saxophone in 12/8 with duplets',
    page: () =>
      pageOf(
        'meter: 12/8\nkey: Eb\n| Eb7 | Ab7 |',
        [
          [0, third, 51],
          [third, 2 * third, 55],
          [1, 0.5, 58],
          [1.5, 0.5, 60],
          [2, 2, 61],
          [4, 1, 56],
        ],
        { instrument: 'baritone-sax', bpm: 60 },
      ),
  },
  {
    name: 'groups of three quarters, five and six in 5/4',
    page: () =>
      pageOf(
        'meter: 5/4\nkey: Am\n| Am7 | D7 |',
        [
          [0, 2 * third, 69],
          [2 * third, 2 * third, 71],
          [4 * third, 2 * third, 72],
          ...[0, 1, 2, 3, 4].map((i): Note => [2 + i / 5, 0.2, 64 + i]),
          ...[0, 1, 2, 3, 4, 5].map((i): Note => [3 + i / 6, 1 / 6, 69 + i]),
          [4, 1, 76],
        ],
        { instrument: 'flute', bpm: 60 },
      ),
  },
];
