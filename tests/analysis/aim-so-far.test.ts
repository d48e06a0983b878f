import { describe, expect, it } from 'vitest';
import { AimSoFar } from '../../src/analysis/aim-so-far.ts';
import { timelineOf } from '../../src/core/timeline-of-order.ts';
import { choiceOf, type GradeOrder } from '../../src/core/grade-order.ts';
import { grade } from '../../src/core/grade.ts';
import { AIM_CHOICES } from '../../src/core/grade/aims/aim-choices.ts';
import type { HeardNote } from '../../src/core/take/note.ts';

const order = (aim: string): GradeOrder => ({
  chartText: '| A7 | D7 | A7 | E7 |',
  bpm: 120,
  swing: 0.5,
  firstBeatSeconds: 0,
  reference: 440,
  source: 'microphone',
  aim,
});
const timeline = (() => {
  const read = timelineOf(order('thirds'));
  if (!read.ok) throw new Error('the chart can not be read');
  return read.value;
})();

/** One note a beat at 120: thirds as chords arrive, b3 into 3, sixths and ninths, a rest now and then. */
const midis = [
  73,
  72,
  73,
  78,
  66,
  69,
  72,
  74,
  72,
  73,
  71,
  69,
  68,
  71,
  null,
  null,
  73,
  78,
  71,
  69,
  66,
  60,
  62,
  63,
];
const notes: readonly HeardNote[] = midis.flatMap((midi, i) =>
  midi === null
    ? []
    : [
        {
          onsetSeconds: i / 2,
          offsetSeconds: i / 2 + 0.45,
          midi,
          attack: 'struck' as const,
          bendSemitones: 0,
          vibrato: null,
          confidence: 1,
          levelDb: null,
          second: null,
        },
      ],
);

describe('the aim in hand while a take goes on', () => {
  it('has an aim for every choice of the playing screen', () => {
    for (const { id } of AIM_CHOICES) expect(choiceOf(order(id)).aims).toHaveLength(1);
    expect(choiceOf(order('nobody knows')).aims).toEqual([]);
  });

  it.each(AIM_CHOICES.map(({ id }) => id))('%s: comes to the count that the report has', (id) => {
    const { aims } = choiceOf(order(id));
    const soFar = new AimSoFar(aims![0]!, timeline);
    for (let played = 1; played <= notes.length; played++)
      soFar.update(notes.slice(0, played - 1), notes[played - 1]!, 440);
    const report = grade(notes, timeline, {
      source: { kind: 'microphone', durationSeconds: 12, sampleRate: 44_100 },
      referenceHz: 440,
      aims: aims!,
    });
    const { hits, of } = report.aims.find(({ tried }) => tried)!.result;
    expect(soFar.count).toEqual({ hits, of });
  });

  it('counts thirds as they arrive, one by one', () => {
    const soFar = new AimSoFar(choiceOf(order('thirds')).aims![0]!, timeline);
    const counts = [1, 5, 9].map((played) => {
      soFar.update(notes.slice(0, played), null, 440);
      return soFar.count;
    });
    // C# on A7, F# on D7, and C on A7, which is its flat third.
    expect(counts).toEqual([
      { hits: 1, of: 1 },
      { hits: 2, of: 2 },
      { hits: 2, of: 3 },
    ]);
  });

  it('counts a long take again once a bar, not with every note', () => {
    const long = Array.from({ length: 10 }, (_, round) =>
      notes.map((note) => ({
        ...note,
        onsetSeconds: note.onsetSeconds + 12 * round,
        offsetSeconds: note.offsetSeconds + 12 * round,
      })),
    ).flat();
    const soFar = new AimSoFar(choiceOf(order('thirds')).aims![0]!, timeline);
    const after = (played: number) => {
      soFar.update(long.slice(0, played), null, 440);
      return soFar.count;
    };
    // The fifteenth note of a round begins a bar, the nineteenth the next one.
    const atBar = after(198 + 15);
    expect(after(198 + 16)).toBe(atBar);
    expect(after(198 + 19)).not.toBe(atBar);
  });
});
