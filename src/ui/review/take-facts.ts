/** The plain facts of a take in one line. */
import type { Report } from '../../core/take/schema.ts';
import type { Words } from '../../core/words/words.ts';
import { clockWords } from '../parts/sentences.ts';

/** "2:40 · 96 bpm · 214 notes · A = 440.3 Hz" */
export function takeFacts({ source, timeline, notes, tuning }: Report, words: Words): string {
  const { facts } = words.review;
  return (
    [
      clockWords(source.durationSeconds),
      timeline.bpm === null ? null : facts.bpm({ bpm: Math.round(timeline.bpm) }),
      facts.notes({ count: notes.length }),
      source.backing ? facts.bandTakenOut({ db: Math.round(source.backing.removedDb) }) : null,
      facts.reference({ hz: tuning.referenceHz, estimated: tuning.estimated }),
    ]
      .filter((fact) => fact !== null)
      // No line breaks inside a fact.
      .map((fact) => fact.replaceAll(' ', '\u00a0'))
      .join(' · ')
  );
}
