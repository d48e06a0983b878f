/** The notes that a stored report was made of. */
import * as v from 'valibot';
import { midiOfName } from './music/reading.ts';
import type { HeardNote } from './take/note.ts';
import type { Report } from './take/schema.ts';

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
