/** The notes of a take as they stand on its line: those that count and those that don't, in one order. */
import type { DoubtfulNote, Report, ReportNote } from '../../core/take/schema.ts';

/** `place` is where the note stands among all of them, `index` where it stands in its own list of the report. */
export type LineNote = { readonly place: number; readonly index: number } & (
  | { readonly counts: true; readonly note: ReportNote }
  | { readonly counts: false; readonly note: DoubtfulNote }
);

/** In the order of their onsets, so that a note keeps its place when it begins to count or no longer does. */
export function lineNotes({ notes, doubtful }: Pick<Report, 'notes' | 'doubtful'>): readonly LineNote[] {
  return [
    ...notes.map((note, index) => ({ counts: true, note, index }) as const),
    ...doubtful.map((note, index) => ({ counts: false, note, index }) as const),
  ]
    .sort((a, b) => a.note.onsetSeconds - b.note.onsetSeconds || a.note.midi - b.note.midi)
    .map((one, place) => ({ ...one, place }));
}

/** Where a note of the report's `notes` stands on the line, or null. */
export const placeOf = (line: readonly LineNote[], index: number | null): number | null =>
  line.find((one) => one.counts && one.index === index)?.place ?? null;

/** Where the first landing of a take stands on its line, or null. */
export const firstLandingOf = (report: Report): number | null =>
  placeOf(lineNotes(report), report.landings.find(({ note }) => note !== null)?.note ?? null);

/** How many notes count in no share: by themselves, and because the player took them out. */
export function notCountedIn({ doubtful }: Pick<Report, 'doubtful'>) {
  const takenOut = doubtful.filter((note) => note.takenOut).length;
  return { doubtful: doubtful.length - takenOut, takenOut };
}

/** What can be said of a note: the word for its button, and what is then to hold of it. */
export interface NextChoice {
  readonly word: 'letCount' | 'takeOut' | 'asHeard';
  /** null takes back what was said. */
  readonly counts: boolean | null;
}

/** A note that nothing was said of can be turned round; what was said can be taken back. */
export function nextChoice(one: LineNote): NextChoice {
  if (one.counts ? one.note.chosen : one.note.takenOut) return { word: 'asHeard', counts: null };
  return one.counts ? { word: 'takeOut', counts: false } : { word: 'letCount', counts: true };
}
