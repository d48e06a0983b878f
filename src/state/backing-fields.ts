/** What is known about a recording, as plain values: at first, with its beats, and as a table. */
import { secondsOf, type BeatTrack } from '../core/beats/track.ts';
import { listedBeatMap } from '../core/chart/beat-maps.ts';
import { timelineOnBeats } from '../core/chart/build-timeline.ts';
import { STRAIGHT_SWING, type Chart } from '../core/chart/chart.ts';
import { writeBeatsCsv } from '../core/files/charts/write-beats-csv.ts';
import { STANDARD_A4_HZ } from '../core/music/temperament.ts';
import type { BackingRecord } from './chosen-backing.ts';

/** What can be changed about a recording besides its beats. */
export type BackingFields = Pick<BackingRecord, 'title' | 'chartText' | 'swing' | 'referenceHz'>;

/** A recording that was just opened: neither its beats nor its chords are known yet. */
export const freshRecord = (id: string, fileName: string): BackingRecord => ({
  id,
  title: fileName.replace(/\.[^.]*$/, ''),
  fileName,
  durationSeconds: 0,
  chartText: '',
  beats: [],
  pinned: [],
  downbeat: 0,
  swing: STRAIGHT_SWING,
  referenceHz: STANDARD_A4_HZ,
  speed: 1,
  cents: 0,
  bars: null,
});

/** The record with the beats as they were set. */
export const withTrack = (record: BackingRecord, track: BeatTrack): BackingRecord => ({
  ...record,
  title: record.title.trim(),
  beats: [...secondsOf(track)],
  pinned: track.marks.flatMap(({ pinned }, i) => (pinned ? [i] : [])),
  downbeat: track.downbeat,
});

/** Beats with their chords from the first downbeat on, in seconds of the recording at its own pace. */
export function beatsTable({ swing }: BackingRecord, chart: Chart, track: BeatTrack): string {
  const times = secondsOf(track).slice(track.downbeat);
  return writeBeatsCsv(timelineOnBeats(chart, listedBeatMap(times), swing), 0, times.length);
}

/** Every beat as it clicks, the first of a bar told apart. */
export const clickMarks = ({ marks, downbeat }: BeatTrack, beatsPerBar: number) =>
  marks.map(({ seconds }, i) => ({
    seconds,
    accent: i >= downbeat && (i - downbeat) % beatsPerBar === 0,
  }));

const SAME_SECONDS = 0.002;

/** Which of these beats the track's first downbeat is; null where it is none of them. */
export function placeOfDownbeat(track: BeatTrack, beats: readonly number[] | null): number | null {
  const downbeat = track.marks[track.downbeat];
  if (!downbeat || beats === null) return null;
  const at = beats.findIndex((seconds) => Math.abs(seconds - downbeat.seconds) < SAME_SECONDS);
  return at < 0 ? null : at;
}

/** A chord where it begins in the recording. */
export interface ChordPlace {
  readonly seconds: number;
  readonly symbol: string;
}

/** Every chord of the chart, laid over the beats round after round. */
export function chordPlaces(chart: Chart, track: BeatTrack): readonly ChordPlace[] {
  const times = secondsOf(track).slice(track.downbeat);
  if (times.length < 2) return [];
  const timeline = timelineOnBeats(chart, listedBeatMap(times), STRAIGHT_SWING);
  return timeline.spansBetween(0, times.length).map(({ startBeat, chord }) => ({
    seconds: timeline.beatMap.secondsAt(startBeat),
    symbol: chord?.symbol ?? 'N.C.',
  }));
}
