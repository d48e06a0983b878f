/** Small lines and charts for the grading tests, written as a player would say them: beat, length, pitch. */
import { english } from '../../english.ts';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import type { Timeline } from '../../../src/core/chart/timeline.ts';
import { grade } from '../../../src/core/grade.ts';
import type { GradeSettings } from '../../../src/core/grade-settings.ts';
import { parseKey } from '../../../src/core/music/keys.ts';
import { listedNote } from '../../../src/core/take/listed-note.ts';
import type { HeardNote } from '../../../src/core/take/note.ts';
import type { Report } from '../../../src/core/take/schema.ts';

export const BPM = 120;

/** A 12-bar form with the I in seven bars, the IV in three, the V in two. */
export const TWELVE_BARS = '| C7 | F7 | C7 | C7 | F7 | F7 | C7 | C7 | G7 | G7 | C7 | C7 |';

export type Played = readonly [
  beat: number,
  beats: number,
  midi: number,
  extra?: Partial<HeardNote> | undefined,
];

/** A line as heard notes at a tempo. */
export const line = (played: readonly Played[], bpm = BPM): readonly HeardNote[] =>
  played.map(([beat, beats, midi, extra]) => ({
    ...listedNote((beat * 60) / bpm, 0, midi),
    offsetSeconds: ((beat + beats) * 60) / bpm,
    ...extra,
  }));

/** A chart at a constant tempo; its key is found from its chords unless named. */
export function chart(text: string, { bpm = BPM, swing = 0.5, key = '' } = {}): Timeline {
  const read = parseChart(text);
  if (!read.ok) throw new Error(english(read.problem));
  const timeline = timelineFromTempo(read.value, { bpm, swing });
  return key === '' ? timeline : { ...timeline, key: parseKey(key)! };
}

export const SETTINGS: GradeSettings = {
  source: { kind: 'notes', durationSeconds: 0, sampleRate: null },
  referenceHz: 440,
};

/** Grades a line over a chart text. */
export const gradeLine = (
  text: string,
  played: readonly Played[],
  settings: Partial<GradeSettings> = {},
  key = '',
): Report => grade(line(played), chart(text, { key }), { ...SETTINGS, ...settings });
