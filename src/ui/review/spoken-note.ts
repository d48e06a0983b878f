/** A note in one short sentence, for a screen reader that goes from note to note. */
import { readingOf } from '../../core/report/explain.ts';
import { spelledNote } from '../../core/words/spelling.ts';
import type { Words } from '../../core/words/words.ts';
import { speakSigns } from '../parts/engrave.ts';
import type { LineNote } from './line-notes.ts';

/** "F sharp 4, the third of D7, +6 cents.", or "doubtful: F sharp 4, the third of D7, +6 cents." */
export function spokenNote(one: LineNote, words: Words): string {
  const { note } = one;
  const name = speakSigns(spelledNote(note.spelling, words), words);
  const reading = speakSigns(readingOf(note, words), words);
  const spoken = `${name}, ${reading}, ${words.report.explain.tuning({ cents: note.cents, offsetMs: null })}`;
  const told = note.corrected === undefined ? spoken : words.review.edit.spokenCorrected({ note: spoken });
  if (one.counts) return told;
  const { spokenDoubtful, spokenTakenOut } = words.review;
  return (one.note.takenOut ? spokenTakenOut : spokenDoubtful)({ note: told });
}
