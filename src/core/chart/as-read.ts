/** A timeline with its chords as a transposing player reads them; nothing of its time changes. */
import type { Chord, Key } from '../music/chord.ts';
import { keyAsRead, type Reading } from '../music/reading.ts';
import { intervalBetween } from '../music/spelling.ts';
import { parseChart } from './parse-chart.ts';
import type { ChordSpan, Timeline } from './timeline.ts';
import { transposeChart, transposeChord } from './transpose-chart.ts';
import { writeChart } from './write-chart.ts';

/**
 * The same timeline at concert pitch.
 * @example timelineAsRead(bluesInA, readingOf(tenorSax, 'written')) // a blues in B
 */
export function timelineAsRead(timeline: Timeline, reading: Reading): Timeline {
  if (reading.semitones === 0) return timeline;
  const key = keyAsRead(timeline.key, reading);
  const interval = intervalBetween(timeline.key.tonic, key.tonic);
  // The same chord always gives the same object: the display recognises a change of chord by that.
  const known = new Map<Chord, Chord>();
  const moved = (chord: Chord | null): Chord | null => {
    if (chord === null) return null;
    const read = known.get(chord) ?? transposeChord(chord, interval);
    known.set(chord, read);
    return read;
  };
  const movedSpan = (span: ChordSpan): ChordSpan => ({ ...span, chord: moved(span.chord) });
  return {
    ...timeline,
    key,
    ...(timeline.keys && {
      keys: timeline.keys.map((one) => ({ ...one, key: keyAsRead(one.key, reading) })),
    }),
    chart: chartTextAsRead(timeline.chart, timeline.key, key),
    chordAt: (beat) => moved(timeline.chordAt(beat)),
    spansBetween: (fromBeat, toBeat) => timeline.spansBetween(fromBeat, toBeat).map(movedSpan),
    nextChange: (beat) => {
      const span = timeline.nextChange(beat);
      return span && movedSpan(span);
    },
  };
}

/** The spelled interval from a timeline to the same as it is read: what single chord symbols are moved by. */
export const intervalAsRead = (timeline: Timeline, read: Timeline): string =>
  intervalBetween(timeline.key.tonic, read.key.tonic);

/** Chart text moved from the key that it sounds in to the one that is read; what is no chart stays as it is. */
export function chartTextAsRead(text: string, sounding: Key, read: Key): string {
  const chart = parseChart(text);
  return chart.ok ? writeChart(transposeChart({ ...chart.value, key: sounding }, read)) : text;
}
