/** Early or late, judged once for the whole take. Time never changes what a note is worth against its chord. */
import type { Timing } from '../../take/schema.ts';
import type { BeatMap } from '../../chart/timeline.ts';
import { isOnBeat } from '../assign/beats.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { median, standardDeviation } from '../../base/statistics.ts';

/**
 * Skilled soloists lie +16 ms behind the beat on average (SD 34 ms; 64,141 on-beat notes of the Weimar Jazz Database,
 * measured for the project). A take whose median lies beyond these limits is called late or early: they leave room for that
 * habit, and what is beyond can be heard.
 */
const LATE_MS = 40;
const EARLY_MS = -25;

/** A median of fewer notes may be chance: at an SD of 34 ms twelve pin it down to about 10 ms. */
const LEAST_NOTES = 12;

/** How the notes on the beats lie against them. */
export function measureTiming(notes: readonly GradedNote[], beatMap: BeatMap): Timing {
  const offsets = notes
    .filter((note) => isOnBeat(note.onsetBeat))
    .map((note) => offsetMs(note, Math.round(note.onsetBeat), beatMap));
  const medianMs = median(offsets);
  return {
    notes: offsets.length,
    medianMs,
    spreadMs: standardDeviation(offsets),
    verdict: medianMs === null || offsets.length < LEAST_NOTES ? 'too short to tell' : verdictOf(medianMs),
  };
}

/** Early (negative) or late against a beat, in ms. */
export const offsetMs = (note: GradedNote, beat: number, beatMap: BeatMap): number =>
  (note.heard.onsetSeconds - beatMap.secondsAt(beat)) * 1000;

function verdictOf(medianMs: number): Timing['verdict'] {
  if (medianMs > LATE_MS) return 'behind';
  return medianMs < EARLY_MS ? 'ahead' : 'on the beat';
}
