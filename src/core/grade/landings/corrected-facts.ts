/** What was corrected by hand, as the report has it. */
import type { CorrectedNote, CorrectedNotes } from '../../correct/correct-notes.ts';
import type { NotePlace } from '../../take/correction.ts';
import type { HeardNote } from '../../take/note.ts';
import type { Corrections, ReportNote } from '../../take/schema.ts';

/** What a note was before it was corrected; nothing for one that is as it was heard. */
export const correctedFact = (one: CorrectedNote | undefined): Pick<ReportNote, 'corrected'> =>
  one === undefined || one.changes.length === 0
    ? {}
    : { corrected: { changes: one.changes, was: one.was.map(heardPlace) } };

/** What was corrected in the take; nothing where all notes are as they were heard. */
export function correctionFacts({ notes, deleted, leftOut }: CorrectedNotes): {
  readonly corrections?: Corrections;
} {
  const corrected = notes.filter(({ changes }) => changes.length > 0);
  if (corrected.length + deleted.length + leftOut.length === 0) return {};
  return {
    corrections: {
      notes: corrected.length + deleted.length,
      added: corrected.filter(({ changes }) => changes.includes('added')).length,
      deleted: deleted.map(heardPlace),
      leftOut: leftOut.map(({ correction, why }) => {
        const { onsetSeconds, midi } = correction.kind === 'add' ? correction : correction.of;
        return { kind: correction.kind, why, onsetSeconds, midi };
      }),
    },
  };
}

/** Finds what was said of a note or corrected in it, by its place: a note that is cut at the end of a turn keeps it. */
export function handsOn(notes: readonly CorrectedNote[]): (note: NotePlace) => CorrectedNote | undefined {
  const found = new Map(
    notes
      .filter(({ counts, changes }) => counts !== null || changes.length > 0)
      .map((one) => [nameOf(one.note), one]),
  );
  return (note) => found.get(nameOf(note));
}

const nameOf = ({ onsetSeconds, midi }: NotePlace) => `${onsetSeconds} ${midi}`;

const heardPlace = ({ onsetSeconds, offsetSeconds, midi }: HeardNote) => ({
  onsetSeconds,
  offsetSeconds,
  midi,
});
