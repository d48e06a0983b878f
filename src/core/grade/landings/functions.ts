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

/** Whether a tone is on the way to another, and no stay: passing, neighbour, approach or enclosure. */
export const isOnTheWay = (found: FunctionFound | null | undefined): boolean =>
  found !== null && found !== undefined && ON_THE_WAY.has(found.function);

const ON_THE_WAY: ReadonlySet<NoteFunction> = new Set(['passing', 'neighbour', 'approach', 'enclosure']);

/**
 * The function of every note; null for chord tones and for notes over no chord.
 * Neighbours are looked for inside the phrase; a repeated pitch counts as one note held. The note after counts whatever
 * chord it stands over, and what is followed by a step is never free. Asked in this order: suspension, anticipation,
 * enclosure, passing, neighbour, appoggiatura, approach, escape, what goes on by step to another tone, free.
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

/**
 * So many notes on, before or after, a neighbour is looked for: what is struck more often than that has none, and a long
 * take of one note costs no more than another.
 */
const FARTHEST_NOTES = 64;

/** Whether a place is in the phrase, and near enough to be asked. */
const isNear = (phrase: readonly GradedNote[], place: number, at: number): boolean =>
  at >= 0 && at < phrase.length && Math.abs(at - place) <= FARTHEST_NOTES;

/** A note between the notes of another pitch before and after it. */
interface Between {
  readonly note: GradedNote;
  readonly before: GradedNote | null;
  readonly after: GradedNote | null;
  /** In semitones; null at the phrase's edge. */
  readonly stepIn: number | null;
  readonly stepOut: number | null;
}

function functionIn(phrase: readonly GradedNote[], place: number): FunctionFound {
  const note = phrase[place]!;
  const before = neighbourOf(phrase, place, -1);
  const after = neighbourOf(phrase, place, 1);
  const stepIn = before === null ? null : note.pitch - before.pitch;
  const stepOut = after === null ? null : after.pitch - note.pitch;
  const between: Between = { note, before, after, stepIn, stepOut };
  return (
    heldFromBefore(phrase, place, between) ??
    keptForLater(phrase, place) ??
    enclosing(phrase, place) ??
    passingRun(phrase, place) ??
    resolving(between) ??
    escaping(between) ??
    goingOn(between) ??
    found('free')
  );
}

/** A suspension: kept from another chord, where it was a tone, and resolved by step. */
function heldFromBefore(
  phrase: readonly GradedNote[],
  place: number,
  { after, stepOut }: Between,
): FunctionFound | null {
  const prepared = repeated(phrase, place, -1);
  if (prepared === null || after === null || !isChordTone(after.role) || !isStep(stepOut!)) return null;
  return found('suspension', prepared, after);
}

/** An anticipation: struck again, or held, where it is a tone of the chord. */
function keptForLater(phrase: readonly GradedNote[], place: number): FunctionFound | null {
  const repeats = repeated(phrase, place, 1);
  if (repeats !== null) return found('anticipation', repeats);
  const { heldInto, pitchClass } = phrase[place]!;
  return heldInto?.tones.some((tone) => tone.pitchClass === pitchClass) ? found('anticipation') : null;
}

/** An enclosure: two tones outside the chord, one on either side of the chord tone that follows, a step or less off. */
function enclosing(phrase: readonly GradedNote[], place: number): FunctionFound | null {
  const second = neighbourOf(phrase, place, 1);
  const earlier = neighbourOf(phrase, place, -1);
  const note = phrase[place]!;
  if (second !== null && surrounds(phrase, note, second))
    return found('enclosure', second, targetOf(phrase, second)!);
  if (earlier !== null && surrounds(phrase, earlier, note))
    return found('enclosure', earlier, targetOf(phrase, note)!);
  return null;
}

const targetOf = (phrase: readonly GradedNote[], second: GradedNote): GradedNote | null =>
  neighbourOf(phrase, second.index - phrase[0]!.index, 1);

function surrounds(phrase: readonly GradedNote[], first: GradedNote, second: GradedNote): boolean {
  const target = targetOf(phrase, second);
  if (target === null || !isChordTone(target.role)) return false;
  const outside = [first, second].every(({ role }) => role !== null && !isChordTone(role));
  const off = [first.pitch - target.pitch, second.pitch - target.pitch];
  return outside && off.every(isStep) && Math.sign(off[0]!) !== Math.sign(off[1]!);
}

/** A neighbour, an appoggiatura or an approach: the next note is a chord tone a step away. */
function resolving({ note, before, after, stepIn, stepOut }: Between): FunctionFound | null {
  if (after === null || !isChordTone(after.role) || !isStep(stepOut!)) return null;
  const halfStepOut = Math.abs(stepOut!) === 1;
  if (before !== null && isStep(stepIn!) && after.pitch === before.pitch && isChordTone(before.role)) {
    return found('neighbour', before, after);
  }
  // A leap into the tone and a step out: leaning on the beat it is an appoggiatura, on the way to one by a
  // half step it is an approach. Out of a rest it is heard as if it had been leapt to.
  const leapt = before === null || isLeap(stepIn!);
  if (leapt && !halfStepOut) return found('appoggiatura', ...(before === null ? [] : [before]), after);
  if (before !== null && leapt && isOnBeat(note.onsetBeat)) return found('appoggiatura', before, after);
  return halfStepOut ? found('approach', after) : null;
}

/** An escape tone: reached by step from a chord tone, left by a leap the other way. */
function escaping({ before, after, stepIn, stepOut }: Between): FunctionFound | null {
  if (before === null || after === null || !isChordTone(before.role)) return null;
  const turnsBack = Math.sign(stepIn!) === -Math.sign(stepOut!);
  return isStep(stepIn!) && isLeap(stepOut!) && turnsBack ? found('escape', before, after) : null;
}

/** A step on to another tone, whatever that is: back the way it came it is a neighbour, else it passes. */
function goingOn({ before, after, stepIn, stepOut }: Between): FunctionFound | null {
  if (after === null || !isStep(stepOut!)) return null;
  const turns = before !== null && isStep(stepIn!) && Math.sign(stepIn!) !== Math.sign(stepOut!);
  return found(turns ? 'neighbour' : 'passing', after);
}

const found = (name: NoteFunction, ...notes: readonly GradedNote[]): FunctionFound => ({
  function: name,
  notes: notes.map((note) => note.index),
});

/** The nearest note of another pitch, before or after; null at the phrase's edge. */
function neighbourOf(phrase: readonly GradedNote[], place: number, way: 1 | -1): GradedNote | null {
  const pitch = phrase[place]!.pitch;
  for (let at = place + way; isNear(phrase, place, at); at += way) {
    if (phrase[at]!.pitch !== pitch) return phrase[at]!;
  }
  return null;
}

/** The same pitch struck right before or after, where it is a tone of another chord. */
function repeated(phrase: readonly GradedNote[], place: number, way: 1 | -1): GradedNote | null {
  const note = phrase[place]!;
  for (let at = place + way; isNear(phrase, place, at); at += way) {
    const other = phrase[at]!;
    if (other.pitch !== note.pitch) return null;
    if (isChordTone(other.role) && !sameChord(other.chord, note.chord)) return other;
  }
  return null;
}

/** Passing: a run of steps in one direction leads through this note, from a chord tone to a chord tone. */
function passingRun(phrase: readonly GradedNote[], place: number): FunctionFound | null {
  const next = neighbourOf(phrase, place, 1);
  if (next === null) return null;
  const direction = Math.sign(next.pitch - phrase[place]!.pitch);
  const start = runEnd(phrase, place, -1, direction);
  const end = runEnd(phrase, place, 1, direction);
  return start === null || end === null ? null : found('passing', start, end);
}

function runEnd(
  phrase: readonly GradedNote[],
  place: number,
  way: 1 | -1,
  direction: number,
): GradedNote | null {
  let at = phrase[place]!;
  for (let other = place + way; isNear(phrase, place, other); other += way) {
    const candidate = phrase[other]!;
    if (candidate.pitch === at.pitch) continue;
    const move = (candidate.pitch - at.pitch) * way;
    if (!isStep(move) || Math.sign(move) !== direction) return null;
    if (isChordTone(candidate.role)) return candidate;
    at = candidate;
  }
  return null;
}
