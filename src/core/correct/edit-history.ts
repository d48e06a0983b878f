/** Corrections with what was undone of them, as a value. */
import type { Correction } from '../take/correction.ts';

export interface EditHistory {
  /** In the order in which they are applied. */
  readonly done: readonly Correction[];
  /** What can be done again; the last of them first. */
  readonly undone: readonly Correction[];
}

/** A new correction ends what could be done again. */
export const edited = ({ done }: EditHistory, correction: Correction): EditHistory => ({
  done: [...done, correction],
  undone: [],
});

/** The last correction undone; the same where there is none. */
export function undo(history: EditHistory): EditHistory {
  const last = history.done.at(-1);
  return last === undefined
    ? history
    : { done: history.done.slice(0, -1), undone: [...history.undone, last] };
}

/** What was undone last, done again; the same where there is nothing. */
export function redo(history: EditHistory): EditHistory {
  const last = history.undone.at(-1);
  return last === undefined
    ? history
    : { done: [...history.done, last], undone: history.undone.slice(0, -1) };
}

/** Back to what was heard: everything undone, and all of it can be done again, one after the other. */
export const undoAll = ({ done, undone }: EditHistory): EditHistory => ({
  done: [],
  undone: [...undone, ...done.toReversed()],
});
