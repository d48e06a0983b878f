/**
 * How the cost of grading grows: four times the notes, beats and bars may cost little more than four times the work. Two
 * sizes are compared within one run, and the bound lies half way to square growth, so that no load on the machine
 * decides: what grew with the square took sixteen times.
 */
import { describe, expect, it } from 'vitest';
import { largest, smallest } from '../../src/core/base/extremes.ts';
import { chance } from '../../src/core/base/random.ts';
import { timelineFromBeats } from '../../src/core/chart/build-timeline.ts';
import type { Timeline } from '../../src/core/chart/timeline.ts';
import { grade } from '../../src/core/grade.ts';
import type { HeardNote } from '../../src/core/take/note.ts';
import { chart, TWELVE_BARS } from './grade/line.ts';

const SMALL = 500;
const TIMES = 4;
const MOST_GROWTH = TIMES ** 1.5;

const NOTES_A_SECOND = 4;

function notesOf(count: number, pitchOf: (place: number) => number): readonly HeardNote[] {
  return Array.from({ length: count }, (_, place): HeardNote => {
    const onsetSeconds = place / NOTES_A_SECOND;
    return {
      ...{ onsetSeconds, offsetSeconds: onsetSeconds + 0.2, midi: pitchOf(place), confidence: 1 },
      ...{ levelDb: null, attack: 'struck', bendSemitones: 0, vibrato: null, second: null },
    };
  });
}

function listedBeats(notes: number): Timeline {
  const { pick } = chance(1);
  const rows = Array.from({ length: (notes / NOTES_A_SECOND) * 2 }, (_, beat) => ({
    timeSeconds: beat / 2,
    chord: pick(['', 'Dm7', 'G7', 'Cmaj7', 'A7', 'Fm7', 'Bb7', 'Ebmaj7']),
  }));
  const timeline = timelineFromBeats(rows);
  if (!timeline.ok) throw new Error(timeline.problem.code);
  return timeline.value;
}

/** What compiles and collects meanwhile makes a go longer, never shorter: of so many the shortest counts. */
const GOES = 4;

/** CPU milliseconds of grading. */
function costOf(count: number, timelineOf: (notes: number) => Timeline, oneNote: boolean): number {
  const { next } = chance(2);
  const notes = notesOf(count, () => (oneNote ? 63 : 55 + Math.floor(next() * 20)));
  const before = process.cpuUsage().user;
  grade(notes, timelineOf(count), {
    source: { kind: 'notes', durationSeconds: count / NOTES_A_SECOND, sampleRate: null },
    referenceHz: 440,
  });
  return (process.cpuUsage().user - before) / 1000;
}

describe('the cost of grading', () => {
  it.each([
    ['over a list of beats with chords that never come again', listedBeats, false],
    ['over a form, one note struck without end', () => chart(TWELVE_BARS), true],
  ] as const)('grows with the length of the take: %s', (_, timelineOf, oneNote) => {
    const small = smallest(Array.from({ length: GOES }, () => costOf(SMALL, timelineOf, oneNote)));
    let growth = Infinity;
    for (let go = 0; go < GOES && growth >= MOST_GROWTH; go++)
      growth = Math.min(growth, costOf(SMALL * TIMES, timelineOf, oneNote) / small);
    expect(growth).toBeLessThan(MOST_GROWTH);
  });
});

describe('the extremes of many numbers', () => {
  it('are found where Math.max overflows the stack', () => {
    const many = Array.from({ length: 400_000 }, (_, i) => (i * 7) % 399_989);
    expect(largest(many)).toBe(399_988);
    expect(smallest(many)).toBe(0);
  });

  it('of none are what stands for none', () => {
    expect([largest([], -1), smallest([], 5), largest([]), smallest([])]).toEqual([
      -1,
      5,
      -Infinity,
      Infinity,
    ]);
    expect([largest([3], 4), smallest([3], 2)]).toEqual([4, 2]);
  });
});
