/** A note in one breath, for a screen reader that goes from note to note. */
import { readingOf } from '../../core/report/explain.ts';
import type { ReportNote } from '../../core/take/schema.ts';
import { spelledNote } from '../../core/words/spelling.ts';
import type { Words } from '../../core/words/words.ts';
import { speakSigns } from '../parts/engrave.ts';

/** "F sharp 4, the third of D7, +6 cents." */
export function spokenNote(note: ReportNote, words: Words): string {
  const name = speakSigns(spelledNote(note.spelling, words));
  const reading = speakSigns(readingOf(note, words));
  return `${name}, ${reading}, ${words.report.explain.tuning({ cents: note.cents, offsetMs: null })}`;
}
