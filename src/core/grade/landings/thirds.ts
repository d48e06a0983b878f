/** Over chords with a major third: the b3, the 3, and the way from one to the other. */
import type { Lean, Thirds } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import type { PhraseBounds } from '../assign/phrases.ts';
import { hasMajorThird, isFlatThird } from '../assign/roles.ts';
import { LEAN_BEATS } from '../assign/settings.ts';
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';
import { median } from '../../base/statistics.ts';

/**
 * Between these two, in cents above the root, a third is neither minor (300) nor major (400): a blue note. Twenty
 * cents off equal temperament is past what intonation alone does on a fretted string, and leaves the pure major
 * third (386) out.
 */
const BLUE_FROM_CENTS = 320;
const BLUE_TO_CENTS = 380;
const MINOR_THIRD_CENTS = 300;

/** A bend of about a half step into the 3 began on the b3. */
const BENT_FROM_SEMITONES = 0.5;
const BENT_TO_SEMITONES = 1.5;

/** A legato note that glides by this much into its pitch was slid, not hammered. */
const SLID_SEMITONES = 0.3;

/** The widest step that still leads a b3 on rather than leaving it. */
const STEP_SEMITONES = 2;

/** What became of the thirds of a take. Only notes over a chord with a major third are asked. */
export function findThirds(notes: readonly GradedNote[], phrases: readonly PhraseBounds[]): Thirds {
  const asked = notes.filter((note) => note.chord !== null && hasMajorThird(note.chord));
  const flat = asked.filter((note) => isFlatThird(note.pitchClass, note.chord!));
  const blueNotes = asked.flatMap((note) => {
    const cents = centsAboveRoot(note);
    return cents > BLUE_FROM_CENTS && cents < BLUE_TO_CENTS
      ? [{ note: note.index, cents: cents - MINOR_THIRD_CENTS }]
      : [];
  });
  const leans = findLeans(asked, notes);
  const moved = new Set([...leans.map((lean) => lean.from), ...blueNotes.map((blue) => blue.note)]);
  const ends = new Set(phrases.map((phrase) => phrase.lastNote));
  return {
    notes: asked.length,
    flatThirds: flat.length,
    thirds: asked.filter((note) => note.role === 'third').length,
    leans,
    falls: findFalls(asked, notes),
    leftHanging: flat
      .filter((note) => !moved.has(note.index) && (ends.has(note.index) || !stepsOn(note, notes)))
      .map((note) => note.index),
    flatThirdCents: median(flat.map((note) => note.cents)),
    blueNotes,
  };
}

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

function stepsOn(note: GradedNote, notes: readonly GradedNote[]): boolean {
  let at = note.index + 1;
  while (notes[at]?.pitch === note.pitch) at++;
  const next = notes[at];
  return next !== undefined && Math.abs(next.pitch - note.pitch) <= STEP_SEMITONES;
}
