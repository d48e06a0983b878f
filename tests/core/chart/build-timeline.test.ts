import { english } from '../../english.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  timelineFromBeats,
  timelineFromTempo,
  type BeatRow,
} from '../../../src/core/chart/build-timeline.ts';
import { formChart } from '../../../src/core/chart/forms.ts';
import type { Timeline } from '../../../src/core/chart/timeline.ts';
import { chartOf, chartText } from './charts.ts';

const symbolAt = (timeline: Timeline, beat: number) => timeline.chordAt(beat)?.symbol ?? null;
const rows = (...list: readonly (readonly [number, string])[]): readonly BeatRow[] =>
  list.map(([timeSeconds, chord]) => ({ timeSeconds, chord }));
const listed = (...list: readonly (readonly [number, string])[]): Timeline => {
  const timeline = timelineFromBeats(rows(...list));
  if (!timeline.ok) throw new Error(english(timeline.problem));
  return timeline.value;
};

describe('at a constant tempo', () => {
  const timeline = timelineFromTempo(chartOf('| C7 | F7 G7 | C7 | N.C. |'), {
    bpm: 120,
    firstBeatSeconds: 1,
  });

  it('maps beats to seconds and back', () => {
    expect(timeline.beatMap.beatAt(1)).toBe(0);
    expect(timeline.beatMap.beatAt(3)).toBe(4);
    expect(timeline.beatMap.secondsAt(4)).toBe(3);
    expect(timeline).toMatchObject({ beatsPerBar: 4, bars: 4, swing: 0.5, key: { tonic: 'C' } });
  });

  it('goes round for ever', () => {
    expect([0, 3.9, 4, 5.9, 6, 8, 12, 15.9, 16, 22].map((beat) => symbolAt(timeline, beat))).toEqual([
      ...['C7', 'C7', 'F7', 'F7', 'G7', 'C7', null, null, 'C7', 'G7'],
    ]);
    expect(symbolAt(timeline, 16 * 1000 + 6)).toBe('G7');
    expect(symbolAt(timeline, -0.5)).toBeNull();
  });

  it('gives whole spans, never clipped', () => {
    expect(
      timeline.spansBetween(5, 17).map((span) => [span.startBeat, span.endBeat, span.bar, span.chorus]),
    ).toEqual([
      [4, 6, 1, 0],
      [6, 8, 1, 0],
      [8, 12, 2, 0],
      [12, 16, 3, 0],
      [16, 20, 0, 1],
    ]);
    expect(timeline.spansBetween(4, 4)).toEqual([]);
    expect(timeline.spansBetween(-8, 0)).toEqual([]);
    expect(timeline.spansBetween(-8, 1)).toHaveLength(1);
  });

  it('finds the next change, across N.C. and across the end of the chorus', () => {
    const next = (beat: number) => timeline.nextChange(beat)?.startBeat;
    expect([-1, 0, 3.99, 4, 8, 12, 15].map(next)).toEqual([0, 4, 4, 6, 12, 16, 16]);
    const blues = formChart('12-bar blues', 'C');
    if (!blues.ok) throw new Error(english(blues.problem));
    const twelve = timelineFromTempo(blues.value, { bpm: 120 });
    expect([0, 16, 24, 44].map((beat) => twelve.nextChange(beat)?.startBeat)).toEqual([16, 24, 32, 48]);
    expect(timelineFromTempo(chartOf('| C7 | % |'), { bpm: 120 }).nextChange(0)).toBeNull();
    expect(timelineFromTempo(chartOf('| C7 | % |'), { bpm: 120 }).nextChange(-1)?.startBeat).toBe(0);
  });

  it('counts a position that rounding put just before a bar line as on it', () => {
    expect(symbolAt(timeline, 4 - 1e-9)).toBe('F7');
    expect(timeline.nextChange(4 - 1e-9)?.startBeat).toBe(6);
  });

  it('plays a pickup once, before beat 0', () => {
    const pickup = timelineFromTempo(chartOf('pickup: 1\n| G7 | C7 | F7 |'), { bpm: 60 });
    expect([-2, -1, -0.1, 0, 4, 8].map((beat) => symbolAt(pickup, beat))).toEqual([
      null,
      'G7',
      'G7',
      'C7',
      'F7',
      'C7',
    ]);
    expect(pickup.nextChange(-1)?.startBeat).toBe(0);
    expect(pickup.nextChange(-3)?.startBeat).toBe(-1);
    expect(pickup.spansBetween(-4, 2).map((span) => span.startBeat)).toEqual([-1, 0]);
    expect(pickup.bars).toBe(2);
  });

  it('throws on a tempo, a swing or a start that can’t be', () => {
    const chart = chartOf('| C7 |');
    for (const bpm of [0, -1, Number.NaN, Infinity, 19, 401])
      expect(() => timelineFromTempo(chart, { bpm })).toThrow(RangeError);
    expect(() => timelineFromTempo(chart, { bpm: 120, swing: 0.9 })).toThrow(RangeError);
    expect(() => timelineFromTempo(chart, { bpm: 120, firstBeatSeconds: Number.NaN })).toThrow(RangeError);
  });

  it('covers time without gap or overlap, and every question agrees', () => {
    fc.assert(
      fc.property(chartText, fc.double({ min: 0, max: 60, noNaN: true }), (text, beat) => {
        const laid = timelineFromTempo(chartOf(text), { bpm: 100 });
        const spans = laid.spansBetween(0, 70);
        expect(spans[0]?.startBeat).toBe(0);
        spans.forEach((span, index) => {
          const next = spans[index + 1];
          if (next) expect(next.startBeat).toBeCloseTo(span.endBeat, 9);
        });
        const here = spans.findLast((span) => span.startBeat <= beat + 1e-5);
        expect(laid.chordAt(beat)?.symbol).toBe(here?.chord?.symbol);
        const change = laid.nextChange(beat);
        if (change) expect(change.startBeat).toBeGreaterThan(beat);
      }),
      { numRuns: 100 },
    );
  });
});

describe('from a list of beats', () => {
  const timeline = listed(
    [1, ''],
    [1.5, 'C7'],
    [2.1, ''],
    [2.6, 'F7'],
    [3.1, 'N.C.'],
    [3.6, 'C7'],
    [4.2, 'C7'],
  );

  it('interpolates, exact on the beats, and goes on at both ends', () => {
    expect(
      [1, 1.25, 1.5, 1.8, 2.1, 4.2, 4.8, 0.5].map((seconds) => timeline.beatMap.beatAt(seconds)),
    ).toEqual([...[0, 0.5, 1, expect.closeTo(1.5, 9), 2, 6, expect.closeTo(7, 9), -1]]);
    for (const seconds of [0.2, 1.1, 2, 3.3, 4.19, 9]) {
      expect(timeline.beatMap.secondsAt(timeline.beatMap.beatAt(seconds))).toBeCloseTo(seconds, 9);
    }
    expect(timeline.beatMap.bpm).toBeNull();
  });

  it('lets an empty chord go on, and the last chord for ever', () => {
    expect([-0.5, 0, 1, 2.5, 3, 4, 5, 6.5, 60].map((beat) => symbolAt(timeline, beat))).toEqual([
      ...[null, null, 'C7', 'C7', 'F7', null, 'C7', 'C7', 'C7'],
    ]);
    expect(timeline.spansBetween(0, 100).at(-1)).toMatchObject({ startBeat: 6, endBeat: Infinity });
  });

  it('changes where the chord differs from the beat before', () => {
    expect([0, 1, 3, 4, 5].map((beat) => timeline.nextChange(beat)?.startBeat ?? null)).toEqual([
      1,
      3,
      4,
      5,
      null,
    ]);
  });

  it('writes the list as a chart that reads back', () => {
    expect(timeline.chart).toBe('| N.C. C7 / F7 | N.C. C7 C7 / |');
    expect(chartOf(timeline.chart).sections[0]?.bars).toHaveLength(timeline.bars);
  });

  it.each([
    [rows(), 'no row'],
    [rows([1, 'C']), 'one row'],
    [rows([1, 'C'], [2, 'H7']), 'Row 2 of the beats: “H7” can’t be read as a chord'],
    [rows([1, 'C'], [1, '']), 'Row 2 of the beats, at 1 s, does not come after the row before'],
    [
      rows([1, 'C'], [1.001, '']),
      'Row 2 of the beats, at 1.001 s, comes less than 10 ms after the row before',
    ],
    [rows([1, 'C'], [Number.NaN, '']), 'Row 2 of the beats has no time'],
  ])('refuses %j', (list, sentence) => {
    const timelineOutcome = timelineFromBeats(list);
    expect(timelineOutcome.ok ? '' : english(timelineOutcome.problem)).toContain(sentence);
  });
});
