/** The report that is stored with a take, and the notes that it was made of. */
import * as v from 'valibot';
import { choiceOf, gradeOrder, timelineOf } from './grade-order.ts';
import { good, type Outcome } from './base/outcome.ts';
import { midiOfName } from './music/reading.ts';
import { regradeVersion1 } from './regrade.ts';
import type { HeardNote } from './take/note.ts';
import { readReport, type Report } from './take/schema.ts';
import type { TakeDetails } from './take/details-schema.ts';

/** Reads a kept report; one of version 1 is made anew by grading its notes again. */
export function readKeptReport({
  report: kept,
  details,
}: {
  readonly report: unknown;
  readonly details: TakeDetails;
}): Outcome<Report> {
  const report = readReport(kept);
  if (report.ok) return report;
  const order = gradeOrder(details);
  const timeline = timelineOf(order);
  if (!timeline.ok) return report;
  const again = regradeVersion1(kept, timeline.value, choiceOf(order));
  return again === null ? report : good(again);
}

/** A report as it is kept: with the notes as they were heard, so that they can be graded again. */
export type KeptReport = Report & { readonly heard: readonly HeardNote[] };

const finite = v.pipe(v.number(), v.finite());
const heardSchema = v.object({
  heard: v.array(
    v.object({
      onsetSeconds: finite,
      offsetSeconds: finite,
      midi: finite,
      confidence: finite,
      levelDb: v.nullable(finite),
      attack: v.picklist(['struck', 'legato']),
      bendSemitones: finite,
      vibrato: v.nullable(v.object({ rateHz: finite, depthCents: finite })),
      second: v.nullable(finite),
    }),
  ),
});

/** The notes of a kept take as they were heard; null where they are not kept, as with earlier takes. */
export function readKeptNotes({ report }: { readonly report: unknown }): readonly HeardNote[] | null {
  const read = v.safeParse(heardSchema, report);
  return read.success ? read.output.heard : null;
}

/** The notes of a report as far as it has them, for an earlier take whose heard notes are not kept. */
export const notesOfReport = ({
  notes,
  doubtful,
}: Pick<Report, 'notes' | 'doubtful'>): readonly HeardNote[] => [
  ...notes.map(
    ({ onsetSeconds, offsetSeconds, midi, confidence, attack, bendSemitones, vibrato, second }) => ({
      ...{ onsetSeconds, offsetSeconds, midi, confidence, attack, bendSemitones, vibrato },
      levelDb: null,
      second: second === null ? null : midiOfName(second),
    }),
  ),
  ...doubtful.map(({ onsetSeconds, offsetSeconds, midi, confidence }) => ({
    ...{ onsetSeconds, offsetSeconds, midi, confidence, bendSemitones: 0, vibrato: null },
    attack: 'struck' as const,
    levelDb: null,
    second: null,
  })),
];
