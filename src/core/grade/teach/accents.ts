/** Whether loud notes stand on the strong beats or between them, where the input has levels. */
import type { Accents } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { median } from '../../base/statistics.ts';

/** @param strong one flag a note: whether it stands on a strong beat */
export function findAccents(notes: readonly GradedNote[], strong: readonly boolean[]): Accents {
  const levels = (onStrong: boolean) =>
    notes.flatMap(({ heard, index }) =>
      heard.levelDb !== null && Number.isFinite(heard.levelDb) && strong[index] === onStrong
        ? [heard.levelDb]
        : [],
    );
  const strongLevels = levels(true);
  const otherLevels = levels(false);
  const strongDb = median(strongLevels);
  const otherDb = median(otherLevels);
  return {
    strongNotes: strongLevels.length,
    otherNotes: otherLevels.length,
    differenceDb: strongDb === null || otherDb === null ? null : strongDb - otherDb,
  };
}
