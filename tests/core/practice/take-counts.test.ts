import { describe, expect, it } from 'vitest';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { grade } from '../../../src/core/grade.ts';
import { aimOf } from '../../../src/core/grade/aims/aim-choices.ts';
import { countTake } from '../../../src/core/practice/take-counts.ts';
import type { HeardNote } from '../../../src/core/take/note.ts';

function report(chartText: string, midis: readonly (number | null)[]) {
  const chart = parseChart(chartText);
  if (!chart.ok) throw new Error('the chart can not be read');
  const notes = midis.flatMap((midi, beat): HeardNote[] =>
    midis[beat] === null
      ? []
      : [
          {
            onsetSeconds: beat / 2,
            offsetSeconds: beat / 2 + 0.45,
            midi: midi!,
            attack: 'struck',
            bendSemitones: 0,
            vibrato: null,
            confidence: 1,
            levelDb: null,
            second: null,
          },
        ],
  );
  return grade(notes, timelineFromTempo(chart.value, { bpm: 120 }), {
    source: { kind: 'notes', durationSeconds: midis.length / 2, sampleRate: null },
    referenceHz: 440,
    aims: [aimOf('guide-tones')!],
  });
}

describe('what of a take is counted over days', () => {
  // C# is the third of A7, C the seventh of D7 (any theory book); A over D7 is its fifth.
  const twice = report('| A7 | D7 |', [
    ...[61, 64, 67, 69, 60, 62, 64, 66],
    ...[61, 64, 67, 69, 69, 62, 64, 66],
  ]);

  it('is what became of each change, chorus by chorus', () => {
    const { changes, choruses, aim } = countTake(twice);
    expect(changes).toEqual([
      { from: null, to: 'A7', bar: 0, hits: 1, of: 1 },
      { from: 'A7', to: 'D7', bar: 1, hits: 1, of: 2 },
      { from: 'D7', to: 'A7', bar: 0, hits: 1, of: 1 },
    ]);
    expect(choruses.slice(0, 2)).toEqual([
      { hits: 2, of: 2 },
      { hits: 1, of: 2 },
    ]);
    expect(aim).toEqual({ id: 'guide-tones', hits: 3, of: 4, goal: 0.6 });
  });

  it('adds up to the share of the report, sus chords and rests among them', () => {
    for (const take of [
      twice,
      report('| G7sus4 | Cmaj7 |', [60, 62, 64, 65, 64, 67, 71, 72, 59, 60, 62, 64, null, null, 71, 72]),
    ]) {
      const { hits, of } = take.shares.landings.guideTones;
      const { changes } = countTake(take);
      expect(changes.reduce((sum, change) => sum + change.hits, 0)).toBe(hits);
      expect(changes.reduce((sum, change) => sum + change.of, 0)).toBe(of);
    }
  });
});
