/** Phrases: notes that follow each other without a rest of `gapBeats` or more. */
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';

/** First and last note of a phrase, as places in the list of notes. */
export interface PhraseBounds {
  readonly firstNote: number;
  readonly lastNote: number;
}

interface Timed {
  readonly onsetBeat: number;
  readonly offsetBeat: number;
}

/**
 * Groups notes into phrases: a gap of `gapBeats` or more between the end of what sounds and the next onset parts
 * two of them.
 * @param notes in order of their onsets
 */
export function findPhrases(notes: readonly Timed[], gapBeats: number): readonly PhraseBounds[] {
  const phrases: PhraseBounds[] = [];
  let firstNote = 0;
  let soundingUntil = -Infinity;
  notes.forEach((note, index) => {
    if (index > 0 && note.onsetBeat - soundingUntil >= gapBeats - BEAT_TOLERANCE) {
      phrases.push({ firstNote, lastNote: index - 1 });
      firstNote = index;
    }
    soundingUntil = Math.max(soundingUntil, note.offsetBeat);
  });
  if (notes.length > 0) phrases.push({ firstNote, lastNote: notes.length - 1 });
  return phrases;
}

/** The phrase of every note, by index. */
export function phraseOfNotes(phrases: readonly PhraseBounds[], count: number): readonly number[] {
  const phraseOf = new Array<number>(count).fill(0);
  phrases.forEach(({ firstNote, lastNote }, phrase) => phraseOf.fill(phrase, firstNote, lastNote + 1));
  return phraseOf;
}
