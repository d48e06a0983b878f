/** The quick reading of a rotated chart against a plain one: each rotation made as a timeline, and asked note by note. */
import { describe, expect, it } from 'vitest';
import { chance } from '../../../../src/core/base/random.ts';
import { timelineFromBeats } from '../../../../src/core/chart/build-timeline.ts';
import type { Timeline } from '../../../../src/core/chart/timeline.ts';
import { chordOfNote, type Anticipation } from '../../../../src/core/grade/assign/attribute.ts';
import { gradeNotes } from '../../../../src/core/grade/assign/grade-notes.ts';
import { splitAtChanges } from '../../../../src/core/grade/assign/length-parts.ts';
import { paletteOver } from '../../../../src/core/grade/assign/scales.ts';
import { NO_CHORD, rotatedChart } from '../../../../src/core/grade/chance/rotated-chart.ts';
import { MOST_ROTATIONS, rotationsAsked } from '../../../../src/core/grade/chance/rotations-asked.ts';
import type { HeardNote } from '../../../../src/core/take/note.ts';
import { chart } from '../line.ts';
import { rotateTimeline } from './rotated-timeline.ts';

/** Beats that waver, as hands tap them. */
function listOfBeats(): Timeline {
  const { next, pick } = chance(5);
  const rows = Array.from({ length: 45 }, (_, beat) => ({
    timeSeconds: 1 + beat * 0.5 + next() * 0.1,
    chord: pick(['', '', 'Dm7', 'G7', 'N.C.', 'C']),
  }));
  const timeline = timelineFromBeats(rows);
  if (!timeline.ok) throw new Error(timeline.problem.code);
  return timeline.value;
}

const TIMELINES: readonly (readonly [string, Timeline])[] = [
  ['three chords', chart('| C7 | F7 | G7 |')],
  ['a pickup, no chord, and a chord across the bar', chart('pickup: 1\nG7 | C7 | / | N.C. | Dm7 G7 C/E F |')],
  ['one chord', chart('| C7 | C7 |')],
  ['swing and the same chord at both ends', chart('| C7 F7 | Bb7 | C7 |', { swing: 0.66 })],
  ['listed beats', listOfBeats()],
];

function randomNotes(timeline: Timeline, seed: number): readonly HeardNote[] {
  const { next } = chance(seed);
  return Array.from({ length: 150 }, (): HeardNote => {
    const onsetSeconds = timeline.beatMap.secondsAt(-3 + next() * 3.2 * timeline.roundBeats);
    return {
      ...{ onsetSeconds, offsetSeconds: onsetSeconds + next() ** 3 * 3, midi: 48 + Math.floor(next() * 30) },
      ...{ confidence: 1, levelDb: null, attack: 'struck', bendSemitones: 0, vibrato: null, second: null },
    };
  });
}

describe('a rotated chart, read quickly', () => {
  const ahead: readonly Anticipation[] = ['an eighth', 0, 1.5];
  it.each(TIMELINES)('gives every note and part the chord of the plain one: %s', (_, timeline) => {
    for (const [seed, anticipation] of ahead.entries()) {
      const rules = { anticipation, toleranceSeconds: 0.05, referenceHz: 440 };
      const heard = randomNotes(timeline, seed);
      const palette = paletteOver('both pentatonics', timeline);
      const notes = gradeNotes(heard, timeline, { ...rules, palette });
      const quick = rotatedChart(notes, timeline, rules);
      for (let rotation = 0; rotation < timeline.bars; rotation++) {
        const rotated = rotateTimeline(timeline, rotation);
        const plain = notes.map(
          (note) => chordOfNote(note.heard, rotated, anticipation).chord?.symbol ?? null,
        );
        const read = Array.from(quick.chordsOfNotes(rotation), (chord) =>
          chord === NO_CHORD ? null : quick.chords[chord]!.symbol,
        );
        expect(read).toEqual(plain);
        expect(secondsOfParts(quick, rotation)).toEqual(
          totals(splitAtChanges(notes, rotated).map((part) => [part.note, part.chord.symbol, part.seconds])),
        );
      }
    }
  });

  function secondsOfParts(quick: ReturnType<typeof rotatedChart>, rotation: number) {
    const parts: (readonly [number, string, number])[] = [];
    quick.eachPart(rotation, (note, chord, seconds) =>
      parts.push([note, quick.chords[chord]!.symbol, seconds]),
    );
    return totals(parts);
  }

  /** Seconds of each note over each chord: where a chord is written twice, a note may be cut once or twice. */
  function totals(parts: readonly (readonly [note: number, chord: string, seconds: number])[]) {
    const sums: Record<string, number> = {};
    for (const [note, chord, seconds] of parts) {
      const key = `${note} ${chord}`;
      sums[key] = (sums[key] ?? 0) + seconds;
    }
    return Object.fromEntries(Object.entries(sums).map(([key, sum]) => [key, Number(sum.toFixed(6))]));
  }
});

describe('the rotations that are graded', () => {
  it('are all of a short chart', () => {
    expect(rotationsAsked(3)).toEqual([0, 1, 2]);
    expect(rotationsAsked(MOST_ROTATIONS)).toHaveLength(MOST_ROTATIONS);
  });

  it('are an even choice of a long chart, the chart as it stands among them, at no even steps', () => {
    const rotations = rotationsAsked(1800);
    expect(rotations).toHaveLength(MOST_ROTATIONS);
    expect(rotations[0]).toBe(0);
    expect(new Set(rotations).size).toBe(MOST_ROTATIONS);
    rotations.forEach((rotation, part) => {
      expect(Math.floor((rotation * MOST_ROTATIONS) / 1800)).toBeLessThanOrEqual(part);
      expect(Math.floor(((rotation + 1) * MOST_ROTATIONS) / 1800)).toBeGreaterThanOrEqual(part);
    });
    expect(new Set(rotations.map((rotation) => rotation % 12)).size).toBe(12);
  });
});
