/** What became of each change of chord. */
import { largest } from '../../base/extremes.ts';
import { landingCandidates, PLAYED_AT_SECONDS, type ChordChange } from './candidates.ts';
import type { Chord } from '../../music/chord.ts';
import { degreeOver } from '../../music/pitch-names.ts';
import type { Timeline } from '../../chart/timeline.ts';
import { endOfTurn, isPlayersTurn } from '../../chart/turns.ts';
import type { Landing, Lean } from '../../take/schema.ts';
import { sameChord } from '../../music/same-chord.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { anticipationBefore } from '../assign/attribute.ts';
import { phraseOfNotes, type PhraseBounds } from '../assign/phrases.ts';
import { isChordTone, roleOf } from '../assign/roles.ts';
import type { PaletteOver } from '../assign/scales.ts';
import { TOLERANCE_SECONDS, toleranceBeats } from '../assign/tolerance.ts';
import { holds, toneMask } from '../assign/tone-sets.ts';
import { LANDING_BEATS } from '../assign/settings.ts';
import { firstFrom, soundingUntil } from '../assign/window.ts';
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';

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

/** The widest move of a guide tone that counts as a step. */
const STEP_SEMITONES = 2;

/**
 * The changes a take is asked about: from the chart's first downbeat until the last note ends. What comes after isn't
 * asked, nor another chorus into which the last note merely rings. Arrivals of N.C. ask for nothing, nor do those in the
 * band's turns where player and band trade bars.
 */
export function findChanges(
  timeline: Timeline,
  notes: readonly GradedNote[],
  toleranceSeconds = TOLERANCE_SECONDS,
): readonly ChordChange[] {
  const end = takeEnd(notes, timeline, toleranceSeconds);
  const changes: ChordChange[] = [];
  let span = timeline.nextChange(-1);
  let fromChord: Chord | null = null;
  while (span !== null && span.startBeat <= end) {
    const next = timeline.nextChange(span.startBeat);
    if (span.chord !== null && isPlayersTurn(timeline, span.startBeat)) {
      const untilBeat = Math.min(next?.startBeat ?? Infinity, endOfTurn(timeline, span.startBeat));
      const onUntilBeat = span.startBeat + toleranceBeats(timeline, span.startBeat, toleranceSeconds);
      const beatLater = span.startBeat + LANDING_BEATS;
      const landingUntilBeat = beatLater + toleranceBeats(timeline, beatLater, toleranceSeconds);
      const playedAtBeat = timeline.beatMap.beatAt(
        timeline.beatMap.secondsAt(span.startBeat) + PLAYED_AT_SECONDS,
      );
      changes.push({
        span,
        chord: span.chord,
        fromChord,
        untilBeat,
        onUntilBeat,
        playedAtBeat,
        landingUntilBeat,
      });
    }
    fromChord = span.chord;
    span = next;
  }
  return changes;
}

/** The last beat at which a change is still asked about. */
function takeEnd(notes: readonly GradedNote[], timeline: Timeline, toleranceSeconds: number): number {
  const ends = notes.map((note) => {
    const end = endOfNote(note, timeline) - letGoBeats(note.offsetBeat, timeline, toleranceSeconds);
    return Math.max(note.onsetBeat, note.anticipates ?? -1, end);
  });
  return largest(ends, -1) + BEAT_TOLERANCE;
}

/** A note that ends so little past a change was let go at it. */
const letGoBeats = (beat: number, timeline: Timeline, toleranceSeconds: number): number =>
  Math.max(ENDS_AT_CHANGE_BEATS, toleranceBeats(timeline, beat, toleranceSeconds));

function endOfNote({ offsetBeat }: GradedNote, { beatMap, roundBeats }: Timeline): number {
  const chorusStart = Math.floor(offsetBeat / roundBeats) * roundBeats;
  const goesRound = beatMap.bpm !== null && chorusStart > 0;
  return goesRound && offsetBeat - chorusStart < RING_INTO_NEXT_CHORUS_BEATS ? chorusStart : offsetBeat;
}

/** What the rules before have found about a take, for its landings. */
export interface LandingGround {
  readonly notes: readonly GradedNote[];
  readonly phrases: readonly PhraseBounds[];
  /** The moves from b3 to 3, so that a landing on the b3 knows where it went. */
  readonly leans: readonly Lean[];
  readonly timeline: Timeline;
  readonly palette: PaletteOver;
}

/**
 * Judges every change. The landing is the first note attributed to the new chord that starts from the anticipation
 * before the change to one beat (and the tolerance) after it; else the note held across; else the change is open.
 */
export function judgeChanges(changes: readonly ChordChange[], ground: LandingGround): readonly Landing[] {
  const { notes, phrases, leans, timeline, palette } = ground;
  const until = soundingUntil(notes);
  const phraseOf = phraseOfNotes(phrases, notes.length);
  return changes.map((change) => {
    const { span, chord, fromChord } = change;
    const landing = landingCandidates(change, notes).find(({ note, takes }) =>
      holds(takes, note.pitchClass),
    )?.note;
    const held = landing ?? heldAcross(notes, until, change);
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
    const phraseEnd = phrases[phraseOf[held.index]!]!.lastNote;
    return {
      ...bare,
      kind: landing === undefined ? 'held' : 'landing',
      note: held.index,
      degree: degreeOver(held.pitchClass, chord),
      role,
      cents: held.cents,
      offsetMs: landing === undefined ? null : (held.heard.onsetSeconds - seconds) * 1000,
      anticipates: landing !== undefined && isAnEighthEarly(landing, span.startBeat, timeline),
      stepSemitones: before === undefined ? null : held.pitch - before.pitch,
      guideTone: before === undefined ? null : guideToneMotion(before, held, fromChord, chord),
      leansInto: lean?.to ?? null,
      putRight: isChordTone(role) ? null : putRight(held, notes, phraseEnd, change),
      function: landing === undefined && !isChordTone(role) ? heldFunction(held, notes, phraseEnd) : null,
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
  anticipates: false,
  stepSemitones: null,
  guideTone: null,
  leansInto: null,
  putRight: null,
  function: null,
} as const;

/** The last note that starts before a change and sounds on after it, by the tolerance at least. */
function heldAcross(
  notes: readonly GradedNote[],
  until: Float64Array,
  { span, onUntilBeat }: ChordChange,
): GradedNote | undefined {
  const sounds = (latest: number) =>
    latest > span.startBeat + BEAT_TOLERANCE && latest >= onUntilBeat - BEAT_TOLERANCE;
  for (let i = firstFrom(notes, span.startBeat) - 1; i >= 0 && sounds(until[i]!); i--) {
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
  const semitones = note.pitch - before.pitch;
  if (Math.abs(semitones) > STEP_SEMITONES) return null;
  if (!holds(toneMask(fromChord, 'guideTones'), before.pitchClass)) return null;
  if (!holds(toneMask(chord, 'guideTones'), note.pitchClass)) return null;
  return {
    from: degreeOver(before.pitchClass, fromChord),
    to: degreeOver(note.pitchClass, chord),
    semitones,
    kind: semitones === 0 ? 'kept' : 'resolved',
  };
}

/**
 * A note held into a chord it does not fit is a suspension when its next note is a chord tone a step away, whatever
 * chord that one stands over; one that goes on by step to another tone passes.
 */
function heldFunction(
  held: GradedNote,
  notes: readonly GradedNote[],
  phraseEnd: number,
): 'suspension' | 'passing' | 'free' {
  const next = nextPitch(held, notes, phraseEnd);
  if (next === null || Math.abs(next.pitch - held.pitch) > STEP_SEMITONES) return 'free';
  return isChordTone(next.role) ? 'suspension' : 'passing';
}

/** Whether a landing comes early by about the eighth, as an anticipation, rather than by a few milliseconds. */
function isAnEighthEarly({ rule, onsetBeat }: GradedNote, changeBeat: number, timeline: Timeline): boolean {
  const eighth = anticipationBefore(timeline, changeBeat, 'an eighth');
  return rule === 'anticipation' && changeBeat - onsetBeat >= eighth / 2;
}

/** Where a landing on no chord tone is put right: the first chord tone of the same chord, if a step leads to it. */
function putRight(
  landing: GradedNote,
  notes: readonly GradedNote[],
  phraseEnd: number,
  { chord, untilBeat, span }: ChordChange,
): Landing['putRight'] {
  const from = Math.max(landing.onsetBeat, span.startBeat);
  for (let at = landing.index + 1; at <= phraseEnd; at++) {
    const note = notes[at]!;
    const inChord = note.anticipates === null || Math.abs(note.anticipates - span.startBeat) < BEAT_TOLERANCE;
    if (!inChord || note.onsetBeat >= untilBeat - BEAT_TOLERANCE) return null;
    if (!holds(toneMask(chord, 'chordTones'), note.pitchClass)) continue;
    const step = Math.abs(note.pitch - notes[at - 1]!.pitch);
    if (step < 1 || step > STEP_SEMITONES) return null;
    return { note: at, beats: Math.max(0, note.onsetBeat - from) };
  }
  return null;
}

/** The next note of another pitch in the phrase; null where none comes. */
function nextPitch(note: GradedNote, notes: readonly GradedNote[], phraseEnd: number): GradedNote | null {
  for (let at = note.index + 1; at <= phraseEnd; at++) if (notes[at]!.pitch !== note.pitch) return notes[at]!;
  return null;
}
