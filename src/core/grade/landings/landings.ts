/** What became of each change of chord. */
import type { Chord } from '../../music/chord.ts';
import { degreeOver } from '../../music/pitch-names.ts';
import type { ChordSpan, Timeline } from '../../chart/timeline.ts';
import { endOfTurn, isPlayersTurn } from '../../chart/turns.ts';
import type { Landing, Lean } from '../../take/schema.ts';
import { sameChord } from '../../music/same-chord.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { isChordTone, isGuideTone, roleOf } from '../assign/roles.ts';
import type { PaletteOver } from '../assign/scales.ts';
import { LANDING_BEATS } from '../assign/settings.ts';
import { firstFrom, notesBetween, soundingUntil } from '../assign/window.ts';
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';

/** A change of the chart that lies within the take. */
export interface ChordChange {
  readonly span: ChordSpan;
  readonly chord: Chord;
  readonly fromChord: Chord | null;
  /** Where the next chord, or no chord, takes over. */
  readonly untilBeat: number;
}

/**
 * A last note that ends so little past a change ends at it: times in a table are often rounded to a millisecond, and a
 * hundredth of a beat is 5 ms at 120. More than that is held across, as the definition has it.
 */
const ENDS_AT_CHANGE_BEATS = 0.01;

/**
 * Where the chart goes round, a last note that rings so little into another chorus was let go at the end of the form:
 * a sixteenth is as long as a plucked string rings under a hand that damps it, and longer than a late player is late.
 */
const RING_INTO_NEXT_CHORUS_BEATS = 0.25;

/** No setting lets a note run further ahead of its change than this. */
export const MOST_ANTICIPATION_BEATS = 4;

/** The widest move of a guide tone that counts as a step. */
const STEP_SEMITONES = 2;

/**
 * The changes a take is asked about: from the chart's first downbeat until the last note ends. What comes after isn't
 * asked, nor another chorus into which the last note merely rings. Arrivals of N.C. ask for nothing, nor do those in the
 * band's turns where player and band trade bars.
 */
export function findChanges(timeline: Timeline, notes: readonly GradedNote[]): readonly ChordChange[] {
  const end = takeEnd(notes, timeline);
  const changes: ChordChange[] = [];
  let span = timeline.nextChange(-1);
  let fromChord: Chord | null = null;
  while (span !== null && span.startBeat <= end) {
    const next = timeline.nextChange(span.startBeat);
    if (span.chord !== null && isPlayersTurn(timeline, span.startBeat)) {
      const untilBeat = Math.min(next?.startBeat ?? Infinity, endOfTurn(timeline, span.startBeat));
      changes.push({ span, chord: span.chord, fromChord, untilBeat });
    }
    fromChord = span.chord;
    span = next;
  }
  return changes;
}

/** The last beat at which a change is still asked about. */
function takeEnd(notes: readonly GradedNote[], timeline: Timeline): number {
  const ends = notes.map((note) => {
    const end = endOfNote(note, timeline) - ENDS_AT_CHANGE_BEATS;
    return Math.max(note.onsetBeat, note.anticipates ?? -1, end);
  });
  return Math.max(-1, ...ends) + BEAT_TOLERANCE;
}

function endOfNote({ offsetBeat }: GradedNote, { beatMap, roundBeats }: Timeline): number {
  const chorusStart = Math.floor(offsetBeat / roundBeats) * roundBeats;
  const goesRound = beatMap.bpm !== null && chorusStart > 0;
  return goesRound && offsetBeat - chorusStart < RING_INTO_NEXT_CHORUS_BEATS ? chorusStart : offsetBeat;
}

/**
 * Judges every change. The landing is the first note attributed to the new chord that starts from the anticipation
 * before the change to one beat after it; else the note held across; else the change is open.
 * @param leans the moves from b3 to 3, so that a landing on the b3 knows where it went
 */
export function judgeChanges(
  changes: readonly ChordChange[],
  notes: readonly GradedNote[],
  leans: readonly Lean[],
  timeline: Timeline,
  palette: PaletteOver,
): readonly Landing[] {
  const until = soundingUntil(notes);
  return changes.map((change) => {
    const { span, chord, fromChord } = change;
    const landing = notesAround(change, notes).find((note) => isLanding(note, change));
    const held = landing ?? heldAcross(notes, until, span.startBeat);
    const seconds = timeline.beatMap.secondsAt(span.startBeat);
    const bare = {
      beat: span.startBeat,
      seconds,
      bar: span.bar,
      chorus: span.chorus,
      beatOfBar: span.startBeat - Math.floor(span.startBeat / timeline.beatsPerBar) * timeline.beatsPerBar,
      fromChord: fromChord?.symbol ?? null,
      chord: chord.symbol,
    };
    if (held === undefined) return { ...bare, ...OPEN };
    const before = landing === undefined ? held : notes[held.index - 1];
    const role = roleOf(held.pitchClass, chord, palette(chord));
    const lean = leans.find(({ from, to }) => from === held.index && to !== from);
    return {
      ...bare,
      kind: landing === undefined ? 'held' : 'landing',
      note: held.index,
      degree: degreeOver(held.pitchClass, chord),
      role,
      cents: held.cents,
      offsetMs: landing === undefined ? null : (held.heard.onsetSeconds - seconds) * 1000,
      stepSemitones: before === undefined ? null : held.pitch - before.pitch,
      guideTone: before === undefined ? null : guideToneMotion(before, held, fromChord, chord),
      leansInto: lean?.to ?? null,
      function: landing === undefined && !isChordTone(role) ? heldFunction(held, notes, change) : null,
    };
  });
}

const OPEN = {
  kind: 'open',
  note: null,
  degree: null,
  role: null,
  cents: null,
  offsetMs: null,
  stepSemitones: null,
  guideTone: null,
  leansInto: null,
  function: null,
} as const;

function isLanding(note: GradedNote, change: ChordChange): boolean {
  if (note.anticipates === null) return isInLandingWindow(note, change);
  return Math.abs(note.anticipates - change.span.startBeat) < BEAT_TOLERANCE;
}

/** Whether a note starts from a change to one beat after it, before the next one comes. */
export function isInLandingWindow(note: GradedNote, { span, untilBeat }: ChordChange): boolean {
  const late = note.onsetBeat - span.startBeat;
  return (
    late >= -BEAT_TOLERANCE &&
    late <= LANDING_BEATS + BEAT_TOLERANCE &&
    note.onsetBeat < untilBeat - BEAT_TOLERANCE
  );
}

/** The notes that can have to do with a change: a note anticipates by a few beats at the most, and lands in one. */
export const notesAround = ({ span }: ChordChange, notes: readonly GradedNote[]): readonly GradedNote[] =>
  notesBetween(notes, span.startBeat - MOST_ANTICIPATION_BEATS, span.startBeat + LANDING_BEATS);

/** The last note that starts before a change and sounds on after it. */
function heldAcross(
  notes: readonly GradedNote[],
  until: Float64Array,
  changeBeat: number,
): GradedNote | undefined {
  const sounds = (latest: number) => latest > changeBeat + BEAT_TOLERANCE;
  for (let i = firstFrom(notes, changeBeat) - 1; i >= 0 && sounds(until[i]!); i--) {
    if (sounds(notes[i]!.offsetBeat)) return notes[i]!;
  }
  return undefined;
}

/** A guide tone of the old chord that steps into one of the new (resolved), or lies in both (kept); else null. */
function guideToneMotion(
  before: GradedNote,
  note: GradedNote,
  fromChord: Chord | null,
  chord: Chord,
): Landing['guideTone'] {
  if (fromChord === null || sameChord(fromChord, chord)) return null;
  const none: ReadonlySet<number> = new Set();
  const semitones = note.pitch - before.pitch;
  if (Math.abs(semitones) > STEP_SEMITONES) return null;
  if (!isGuideTone(roleOf(before.pitchClass, fromChord, none))) return null;
  if (!isGuideTone(roleOf(note.pitchClass, chord, none))) return null;
  return {
    from: degreeOver(before.pitchClass, fromChord),
    to: degreeOver(note.pitchClass, chord),
    semitones,
    kind: semitones === 0 ? 'kept' : 'resolved',
  };
}

/** A note held into a chord it does not fit is a suspension when it moves by step to a tone of that same chord. */
function heldFunction(
  held: GradedNote,
  notes: readonly GradedNote[],
  { untilBeat }: ChordChange,
): 'suspension' | 'free' {
  const next = notes[held.index + 1];
  if (next === undefined || next.onsetBeat >= untilBeat || !isChordTone(next.role)) return 'free';
  const step = Math.abs(next.pitch - held.pitch);
  return step >= 1 && step <= STEP_SEMITONES ? 'suspension' : 'free';
}
