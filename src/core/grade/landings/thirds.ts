/** Over chords with a major third: the b3, the 3, and the way from one to the other. */
import type { Lean, Thirds } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { phraseOfNotes, type PhraseBounds } from '../assign/phrases.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import { hasMajorThird, isBlueThird, isFlatThird } from '../assign/roles.ts';
import { LEAN_BEATS } from '../assign/settings.ts';
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';
import { median } from '../../base/statistics.ts';

/**
 * A note nearest to the 3 that lies so far under it, in cents above the root, is a blue third too: more than
 * intonation alone does on a fretted string, and clear of the pure major third (386). One nearest to the b3 is blue
 * from {@link BLUE_THIRD_CENTS} above it.
 */
const BLUE_TO_CENTS = 380;
const MINOR_THIRD_CENTS = 300;

/** A bend of about a half step into the 3 began on the b3. */
const BENT_FROM_SEMITONES = 0.5;
const BENT_TO_SEMITONES = 1.5;

/** A legato note that glides by this much into its pitch was slid, not hammered. */
const SLID_SEMITONES = 0.3;

/** So many notes on a step away is looked for: what is struck more often than that was left hanging. */
const FARTHEST_NOTES = 64;

/** The widest step that still leads a b3 on rather than leaving it. */
const STEP_SEMITONES = 2;

/** What became of the thirds of a take. Only notes over a chord with a major third are asked. */
export function findThirds(notes: readonly GradedNote[], phrases: readonly PhraseBounds[]): Thirds {
  const asked = notes.filter((note) => note.chord !== null && hasMajorThird(note.chord));
  const flat = asked.filter((note) => isFlatThird(note.pitchClass, note.chord!));
  const blueNotes = asked.flatMap((note) => {
    const cents = centsAboveRoot(note);
    const isBlue = isBlueThird(note, note.chord!) || (note.role === 'third' && isBetween(note, cents));
    return isBlue ? [{ note: note.index, cents: cents - MINOR_THIRD_CENTS }] : [];
  });
  const leans = findLeans(asked, notes);
  const moved = new Set([...leans.map((lean) => lean.from), ...blueNotes.map((blue) => blue.note)]);
  const phraseOf = phraseOfNotes(phrases, notes.length);
  return {
    notes: asked.length,
    flatThirds: flat.length,
    thirds: asked.filter((note) => note.role === 'third').length,
    leans,
    falls: findFalls(asked, notes),
    leftHanging: flat
      .filter((note) => {
        const phraseEnd = phrases[phraseOf[note.index]!]!.lastNote;
        return !moved.has(note.index) && !stepsOn(note, notes, phraseEnd);
      })
      .map((note) => note.index),
    flatThirdCents: median(flat.map((note) => note.cents)),
    blueNotes,
  };
}

/** Under the 3 by more than intonation, where the chord does not name the b3 as a tone of its own. */
const isBetween = (note: GradedNote, centsFromRoot: number): boolean =>
  centsFromRoot < BLUE_TO_CENTS && isFlatThird(wrapPitchClass(note.chord!.rootPitchClass + 3), note.chord!);

const centsAboveRoot = (note: GradedNote): number =>
  ((note.pitchClass - note.chord!.rootPitchClass + 12) % 12) * 100 + note.cents;

function findLeans(asked: readonly GradedNote[], notes: readonly GradedNote[]): readonly Lean[] {
  return asked.flatMap((note): readonly Lean[] => {
    if (isFlatThird(note.pitchClass, note.chord!)) {
      const next = notes[note.index + 1];
      if (next?.role !== 'third' || next.pitch !== note.pitch + 1 || !isSoon(note, next)) return [];
      return [
        { from: note.index, to: next.index, how: howReached(next), beats: next.onsetBeat - note.onsetBeat },
      ];
    }
    const bend = note.heard.bendSemitones;
    const bentIn =
      note.role === 'third' &&
      note.heard.attack === 'struck' &&
      bend >= BENT_FROM_SEMITONES &&
      bend <= BENT_TO_SEMITONES;
    return bentIn ? [{ from: note.index, to: note.index, how: 'bent', beats: 0 }] : [];
  });
}

function findFalls(asked: readonly GradedNote[], notes: readonly GradedNote[]): readonly Lean[] {
  return asked.flatMap((note): readonly Lean[] => {
    const next = notes[note.index + 1];
    if (note.role !== 'third' || next?.pitch !== note.pitch - 1 || !isSoon(note, next)) return [];
    if (next.chord === null || !isFlatThird(next.pitchClass, next.chord)) return [];
    return [
      { from: note.index, to: next.index, how: howReached(next), beats: next.onsetBeat - note.onsetBeat },
    ];
  });
}

const isSoon = (note: GradedNote, next: GradedNote): boolean =>
  next.onsetBeat - note.onsetBeat <= LEAN_BEATS + BEAT_TOLERANCE;

function howReached(next: GradedNote): Lean['how'] {
  if (next.heard.attack === 'struck') return 'picked';
  return Math.abs(next.heard.bendSemitones) >= SLID_SEMITONES ? 'slid' : 'hammered';
}

/** Whether the next note of another pitch in the phrase is a step away, whatever chord it stands over. */
function stepsOn(note: GradedNote, notes: readonly GradedNote[], phraseEnd: number): boolean {
  for (let at = note.index + 1; at <= Math.min(phraseEnd, note.index + FARTHEST_NOTES); at++) {
    if (notes[at]!.pitch !== note.pitch) return Math.abs(notes[at]!.pitch - note.pitch) <= STEP_SEMITONES;
  }
  return false;
}
