/**
 * A take that was kept with a report of version 1, which held sentences: its notes are graded again, and the report
 * that comes out is of today's version.
 */
import * as v from 'valibot';
import { MOST_TAKE_SECONDS } from './base/limits.ts';
import type { Timeline } from './chart/timeline.ts';
import type { GradeSettings } from './grade-settings.ts';
import { grade } from './grade.ts';
import { midiOfName } from './music/reading.ts';
import type { HeardNote } from './take/note.ts';
import type { Report } from './take/schema.ts';

const finite = v.pipe(v.number(), v.finite());
/** Seconds in a take. A damaged record may hold any number, and the grading lays out every chorus up to the end. */
const moment = v.pipe(finite, v.minValue(-MOST_TAKE_SECONDS), v.maxValue(MOST_TAKE_SECONDS));

/** What is needed of a report of version 1; everything else follows from it. */
const version1Schema = v.object({
  format: v.literal('landfall-report'),
  version: v.literal(1),
  source: v.object({
    kind: v.picklist(['audio', 'notes', 'microphone']),
    durationSeconds: v.pipe(moment, v.minValue(0)),
    sampleRate: v.nullable(finite),
    backing: v.exactOptional(
      v.nullable(v.object({ offsetSeconds: finite, driftPpm: finite, removedDb: finite })),
    ),
    lost: v.exactOptional(v.array(v.object({ atSeconds: moment, seconds: moment }))),
  }),
  tuning: v.object({ referenceHz: v.pipe(finite, v.gtValue(0)), estimated: v.boolean() }),
  settings: v.object({ phraseGapBeats: finite }),
  notes: v.array(
    v.object({
      onsetSeconds: moment,
      offsetSeconds: moment,
      midi: finite,
      attack: v.picklist(['struck', 'legato']),
      bendSemitones: finite,
      vibrato: v.nullable(v.object({ rateHz: finite, depthCents: finite })),
      /** A name with its octave, "E4". The first reports did not have it. */
      second: v.optional(v.nullable(v.pipe(v.string(), v.regex(/^[A-G](b*|#*)-?\d+$/))), null),
    }),
  ),
});

/**
 * @param kept what was stored as the report
 * @param timeline the take's chart laid on time
 * @param choice the instrument and the aims that the take was played with, and what the player has corrected of its notes
 * @returns null for what is no report of version 1
 */
export function regradeVersion1(
  kept: unknown,
  timeline: Timeline,
  choice: Pick<GradeSettings, 'instrument' | 'aims' | 'corrections'>,
): Report | null {
  const read = v.safeParse(version1Schema, kept);
  if (!read.success) return null;
  const { source, tuning, settings, notes } = read.output;
  const report = grade(
    notes.map(({ second, ...note }): HeardNote => ({
      ...note,
      confidence: 1,
      levelDb: null,
      second: second === null ? null : midiOfName(second),
    })),
    timeline,
    { source, referenceHz: tuning.referenceHz, phraseGapBeats: settings.phraseGapBeats, ...choice },
  );
  return { ...report, tuning: { ...report.tuning, estimated: tuning.estimated } };
}
