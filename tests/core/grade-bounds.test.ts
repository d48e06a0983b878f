/** What is too much to grade is counted beforehand: a small file can ask for millions of pieces of work. */
import { describe, expect, it } from 'vitest';
import { timelineFromBeats, timelineFromTempo } from '../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../src/core/chart/parse-chart.ts';
import { splitAtChanges } from '../../src/core/grade/assign/length-parts.ts';
import { gradeNotes } from '../../src/core/grade/assign/grade-notes.ts';
import { tooMuchToGrade } from '../../src/core/grade-bounds.ts';
import { listedNote } from '../../src/core/take/listed-note.ts';

const laid = (text: string, bpm = 120) => {
  const chart = parseChart(text);
  if (!chart.ok) throw new Error(chart.problem.code);
  return timelineFromTempo(chart.value, { bpm });
};
const blues = laid('| C7 | F7 | C7 | C7 | F7 | F7 | C7 | C7 | G7 | F7 | C7 | G7 |');
const line = (count: number, apart: number, length: number) =>
  Array.from({ length: count }, (_, i) => listedNote(i * apart, length, 55 + ((7 * i) % 23)));

describe('a take', () => {
  it('of six hours with a hundred thousand notes is within the limits, and one with a chord a beat at 400', () => {
    expect(tooMuchToGrade(line(100_000, 0.216, 0.216), blues)).toBeNull();
    expect(tooMuchToGrade(line(100_000, 0.216, 0.216), laid('| C7 F7 Bb7 A7 |', 400))).toBeNull();
  });

  it('is too much with sixty chords a bar, or with notes that are never ended', () => {
    const dense = laid(`| ${'C F '.repeat(30)}|`, 400);
    expect(tooMuchToGrade(line(18_000, 0.2, 0.2), dense)?.code).toBe('grade.tooManyChanges');
    expect(tooMuchToGrade(line(50_000, 0.001, 3600), blues)?.code).toBe('grade.tooManyParts');
    // Notes before the first downbeat have no chords under them.
    expect(tooMuchToGrade(line(50, 0.001, 1e9), laid('| C7 F7 |'))?.code).toBe('grade.tooManyChanges');
    expect(tooMuchToGrade([listedNote(-1e9, 1e9, 60)], blues)).toBeNull();
    expect(tooMuchToGrade([], blues)).toBeNull();
  });

  it('over listed beats has as many chords as they have', () => {
    const beats = Array.from({ length: 4000 }, (_, i) => ({ timeSeconds: i / 2, chord: i % 2 ? 'C' : 'F' }));
    const listed = timelineFromBeats(beats);
    if (!listed.ok) throw new Error(listed.problem.code);
    expect(tooMuchToGrade(line(200, 1, 1000), listed.value)).toBeNull();
    expect(tooMuchToGrade(line(2000, 0.1, 1e6), listed.value)?.code).toBe('grade.tooManyParts');
  });
});

it('counts no fewer parts than the grading makes', () => {
  // A note that ends at a change has no part behind it.
  const notes = line(300, 0.7, 5);
  const graded = gradeNotes(notes, blues, {
    referenceHz: 440,
    anticipation: 'an eighth',
    palette: () => new Set(),
  });
  const parts = splitAtChanges(graded, blues).length;
  expect(parts).toBeGreaterThan(300);
  expect(parts).toBeLessThanOrEqual(300 + 300 * 3);
});
