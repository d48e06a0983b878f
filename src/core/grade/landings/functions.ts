/**
 * What a tone outside the chord does between the notes before and after it. The definitions are those of any
 * harmony textbook, by step (a half or whole step) and leap (more); "from memory" where a test quotes an example.
 */
import type { NoteFunction } from '../../take/schema.ts';
import { isOnBeat } from '../assign/beats.ts';
import { sameChord } from '../../music/same-chord.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { isChordTone } from '../assign/roles.ts';
import type { PhraseBounds } from '../assign/phrases.ts';

/** A function, and the notes that make it so. */
export interface FunctionFound {
  readonly function: NoteFunction;
  readonly notes: readonly number[];
}

const isStep = (semitones: number): boolean => Math.abs(semitones) === 1 || Math.abs(semitones) === 2;
const isLeap = (semitones: number): boolean => Math.abs(semitones) > 2;

/**
 * The function of every note; null for chord tones and for notes over no chord.
 * Neighbours are looked for inside the phrase; a repeated pitch counts as one note held. Asked in this order:
 * suspension, anticipation, passing, neighbour, appoggiatura, approach, escape, free.
 */
export function findFunctions(
  notes: readonly GradedNote[],
  phrases: readonly PhraseBounds[],
): readonly (FunctionFound | null)[] {
  return phrases.flatMap(({ firstNote, lastNote }) => {
    const phrase = notes.slice(firstNote, lastNote + 1);
    return phrase.map((note, place) =>
      note.role === null || isChordTone(note.role) ? null : functionIn(phrase, place),
    );
  });
}

function functionIn(phrase: readonly GradedNote[], place: number): FunctionFound {
  const note = phrase[place]!;
  const before = neighbourOf(phrase, place, -1);
  const after = neighbourOf(phrase, place, 1);
  const stepIn = before === null ? null : note.pitch - before.pitch;
  const stepOut = after === null ? null : after.pitch - note.pitch;
  const resolves = after !== null && isChordTone(after.role) && isStep(stepOut!);

  const prepared = repeated(phrase, place, -1);
  if (prepared !== null && resolves) return found('suspension', prepared, after);

  const repeats = repeated(phrase, place, 1);
  if (repeats !== null) return found('anticipation', repeats);
  if (note.heldInto?.tones.some((tone) => tone.pitchClass === note.pitchClass)) return found('anticipation');

  const run = passingRun(phrase, place);
  if (run !== null) return found('passing', ...run);

  if (
    before !== null &&
    resolves &&
    isStep(stepIn!) &&
    after.pitch === before.pitch &&
    isChordTone(before.role)
  ) {
    return found('neighbour', before, after);
  }
  // A leap into the tone and a step out: leaning on the beat it is an appoggiatura, on the way to one by a
  // half step it is an approach.
  const halfStepOut = Math.abs(stepOut ?? 0) === 1;
  if (before !== null && resolves && isLeap(stepIn!) && (isOnBeat(note.onsetBeat) || !halfStepOut)) {
    return found('appoggiatura', before, after);
  }
  if (resolves && halfStepOut) return found('approach', after);

  const turnsBack = Math.sign(stepIn ?? 0) === -Math.sign(stepOut ?? 0);
  if (
    before !== null &&
    after !== null &&
    isChordTone(before.role) &&
    isStep(stepIn!) &&
    isLeap(stepOut!) &&
    turnsBack
  ) {
    return found('escape', before, after);
  }
  return found('free');
}

const found = (name: NoteFunction, ...notes: readonly GradedNote[]): FunctionFound => ({
  function: name,
  notes: notes.map((note) => note.index),
});

/** The nearest note of another pitch, before or after; null at the phrase's edge. */
function neighbourOf(phrase: readonly GradedNote[], place: number, way: 1 | -1): GradedNote | null {
  const pitch = phrase[place]!.pitch;
  for (let at = place + way; at >= 0 && at < phrase.length; at += way) {
    if (phrase[at]!.pitch !== pitch) return phrase[at]!;
  }
  return null;
}

/** The same pitch struck right before or after, where it is a tone of another chord. */
function repeated(phrase: readonly GradedNote[], place: number, way: 1 | -1): GradedNote | null {
  const note = phrase[place]!;
  for (let at = place + way; at >= 0 && at < phrase.length; at += way) {
    const other = phrase[at]!;
    if (other.pitch !== note.pitch) return null;
    if (isChordTone(other.role) && !sameChord(other.chord, note.chord)) return other;
  }
  return null;
}

/** The chord tones at both ends of a run of steps, all in one direction, that leads through this note. */
function passingRun(phrase: readonly GradedNote[], place: number): readonly [GradedNote, GradedNote] | null {
  const next = neighbourOf(phrase, place, 1);
  if (next === null) return null;
  const direction = Math.sign(next.pitch - phrase[place]!.pitch);
  const start = runEnd(phrase, place, -1, direction);
  const end = runEnd(phrase, place, 1, direction);
  return start === null || end === null ? null : [start, end];
}

function runEnd(
  phrase: readonly GradedNote[],
  place: number,
  way: 1 | -1,
  direction: number,
): GradedNote | null {
  let at = phrase[place]!;
  for (let other = place + way; other >= 0 && other < phrase.length; other += way) {
    const candidate = phrase[other]!;
    if (candidate.pitch === at.pitch) continue;
    const move = (candidate.pitch - at.pitch) * way;
    if (!isStep(move) || Math.sign(move) !== direction) return null;
    if (isChordTone(candidate.role)) return candidate;
    at = candidate;
  }
  return null;
}
