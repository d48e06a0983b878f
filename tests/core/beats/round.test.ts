/** The part of a recording that goes round: its bars, its chart, its beats, and the same grading from a table. */
import { english } from '../../english.ts';
import { describe, expect, test } from 'vitest';
import { chartOver, rangeOf, roundOf } from '../../../src/core/beats/round.ts';
import { trackOf } from '../../../src/core/beats/track.ts';
import { roundBeatMap } from '../../../src/core/chart/beat-maps.ts';
import { timelineFromBeats, timelineOnBeats } from '../../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { playedBars } from '../../../src/core/chart/play-order.ts';
import { withMeter } from '../../../src/core/chart/with-meter.ts';
import { writeChart } from '../../../src/core/chart/write-chart.ts';
import { readBeatsCsv } from '../../../src/core/files/charts/beats-csv.ts';
import { writeBeatsCsv } from '../../../src/core/files/charts/write-beats-csv.ts';
import { grade } from '../../../src/core/grade.ts';
import { wanderingSeconds } from './rendered-track.ts';

const chartOf = (text: string) => {
  const chart = parseChart(text);
  if (!chart.ok) throw new Error(english(chart.problem));
  return chart.value;
};
const chart = chartOf('key: F\n| F7 | Bb7 | F7 | C7 |');
const secondsAt = wanderingSeconds(120, 0.08, 40);
/** Three beats before bar 1, ten bars and a beat. */
const track = trackOf(
  Array.from({ length: 44 }, (_, i) => 3 + secondsAt(i)),
  3,
);

describe('a round', () => {
  test('is whole choruses without a wish, and what was wished brought into the recording', () => {
    expect(rangeOf(track, chart, null)).toEqual({ fromBar: 1, toBar: 8 });
    expect(rangeOf(track, chart, { fromBar: 5, toBar: 99 })).toEqual({ fromBar: 5, toBar: 10 });
    expect(rangeOf(trackOf([1, 2]), chart, null)).toBeNull();
    const long = chartOf('| F7 | % | % | % | % | % | % | % | % | % | % | % |');
    expect(rangeOf(track, long, null)).toEqual({ fromBar: 1, toBar: 10 });
  });

  test('holds the beats of its bars, slower where it is slowed', () => {
    const round = roundOf(track, 4, { fromBar: 3, toBar: 4 }, 0.5);
    expect(round.fromSeconds).toBe(3 + secondsAt(11));
    expect(round.beatSeconds).toHaveLength(9);
    expect(round.beatSeconds[8]).toBeCloseTo(2 * (secondsAt(19) - secondsAt(11)), 9);
    expect(() => roundOf(track, 4, { fromBar: 10, toBar: 11 }, 1)).toThrow(RangeError);
    expect(() => roundOf(track, 4, { fromBar: 1, toBar: 2 }, 1.2)).toThrow(RangeError);
  });

  test('has the chart of its bars', () => {
    expect(chartOver(chart, { fromBar: 1, toBar: 8 }).sections).toBe(chart.sections);
    const part = chartOver(chart, { fromBar: 4, toBar: 6 });
    expect(playedBars(part).map(({ bar }) => bar.chords[0]?.chord?.symbol)).toEqual(['C7', 'F7', 'Bb7']);
    expect(part.key).toEqual(chart.key);
  });
});

describe('a map of a round', () => {
  const { beatSeconds } = roundOf(track, 4, { fromBar: 1, toBar: 2 }, 1);
  const map = roundBeatMap(beatSeconds, 10);

  test('comes again, to the sample, and is counted in at its own pace', () => {
    const length = beatSeconds[8]!;
    for (const round of [0, 1, 19]) {
      for (let beat = 0; beat < 8; beat++) {
        const seconds = 10 + round * length + beatSeconds[beat]!;
        expect(map.secondsAt(round * 8 + beat)).toBeCloseTo(seconds, 9);
        expect(map.beatAt(seconds)).toBeCloseTo(round * 8 + beat, 9);
      }
    }
    expect(map.secondsAt(-4)).toBeCloseTo(10 - beatSeconds[4]!, 9);
    expect(map.beatAt(map.secondsAt(-2.5))).toBeCloseTo(-2.5, 9);
    expect(map.bpm).toBeCloseTo((60 * 8) / length, 9);
  });

  test('must rise from 0', () => {
    for (const wrong of [[0], [0.1, 1], [0, 1, 1]]) expect(() => roundBeatMap(wrong, 0)).toThrow(RangeError);
  });
});

describe('the same beats as a table', () => {
  const { beatSeconds } = roundOf(track, 4, { fromBar: 1, toBar: 4 }, 0.8);
  const over = timelineOnBeats(chart, roundBeatMap(beatSeconds, 2.2), 0.5);
  const csv = writeBeatsCsv(over, 0, 64);

  test('read back, grade the same notes the same way', () => {
    const rows = readBeatsCsv(csv, 'beats.csv');
    if (!rows.ok) throw new Error(english(rows.problem));
    const listed = timelineFromBeats(rows.value, { key: chart.key });
    if (!listed.ok) throw new Error(english(listed.problem));
    const midis = [69, 65, 72, 58, 62, 70, 64, 67];
    const notes = Array.from({ length: 60 }, (_, i) => ({
      onsetSeconds: over.beatMap.secondsAt(i + 0.02),
      offsetSeconds: over.beatMap.secondsAt(i + 0.8),
      midi: midis[(i * 5) % midis.length]!,
      confidence: 1,
      levelDb: null,
      attack: 'struck' as const,
      bendSemitones: 0,
      vibrato: null,
      second: null,
    }));
    const settings = {
      source: { kind: 'notes', durationSeconds: 40, sampleRate: null },
      referenceHz: 440,
    } as const;
    const [round, table] = [over, listed.value].map((timeline) => grade(notes, timeline, settings));
    const bare = (report: ReturnType<typeof grade>) =>
      report.landings.map(({ beat, chord, note, degree, role }) => ({ beat, chord, note, degree, role }));
    expect(bare(table!)).toEqual(bare(round!));
    expect(round!.landings.length).toBeGreaterThan(12);
    expect(table!.summary.chordToneShare).toBe(round!.summary.chordToneShare);
    expect(table!.notes.map(({ beat }) => beat.toFixed(3))).toEqual(
      round!.notes.map(({ beat }) => beat.toFixed(3)),
    );
  });
});

describe('another meter', () => {
  test.each([
    ['| Bb | Eb |', 'meter: 3/4\n| Bb | Eb |'],
    ['meter: 4/4\n| Bb |', 'meter: 3/4\n| Bb |'],
    ['key: Bb; Meter: 12/8 | Bb |', 'key: Bb; Meter: 3/4 | Bb |'],
  ])('%j', (text, counted) => {
    expect(withMeter(text, '3/4')).toBe(counted);
    expect(writeChart(chartOf(counted))).toContain('3/4');
  });
});
