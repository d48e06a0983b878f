/** A change of chord, and the notes that may be its landing. */
import type { Chord } from '../../music/chord.ts';
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';
import type { ChordSpan } from '../../chart/timeline.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { LANDING_BEATS } from '../assign/settings.ts';
import { ALL_TONES, toneMask } from '../assign/tone-sets.ts';
import { notesBetween } from '../assign/window.ts';

/** A change of the chart that lies within the take. */
export interface ChordChange {
  readonly span: ChordSpan;
  readonly chord: Chord;
  readonly fromChord: Chord | null;
  /** Where the next chord, or no chord, takes over. */
  readonly untilBeat: number;
  /** Until here a note is played on the change: the tolerance after it. */
  readonly onUntilBeat: number;
  /** Where hands put the change, on average. */
  readonly playedAtBeat: number;
  /** Until here a note may be the landing: a beat and the tolerance after it. */
  readonly landingUntilBeat: number;
}

/** A note that starts so soon after a change is struck on it, rather late: later than that it is another eighth. */
const STRUCK_ON_BEATS = 0.3;

/**
 * Where hands put a beat: skilled soloists play this much behind it on average (64,141 on-beat notes of the Weimar Jazz
 * Database, measured for the project).
 */
export const PLAYED_AT_SECONDS = 0.016;

/** No setting lets a note run further ahead of its change than this. */
export const MOST_ANTICIPATION_BEATS = 4;

/** A note that may be the landing of a change, were it the first; it is for the tones of the mask. */
export interface Candidate {
  readonly note: GradedNote;
  readonly takes: number;
}

/**
 * The notes that may be the landing of a change: those that are early enough for it, and those that start from the
 * change to a beat after it. An early note is taken if it is one of the new chord's tones. Of two notes that are struck
 * one after the other round the change, the one nearer to it is played on it; the other, let go as that one is struck,
 * leads into it and is no landing itself.
 */
export function landingCandidates(change: ChordChange, notes: readonly GradedNote[]): readonly Candidate[] {
  const { span, chord, onUntilBeat, playedAtBeat } = change;
  const isEarly = (note: GradedNote) => isForChange(note.early?.beat ?? null, change);
  const near = notesAround(change, notes).filter(
    (note) =>
      isEarly(note) ||
      isForChange(note.anticipates, change) ||
      (note.anticipates === null && isInLandingWindow(note, change)),
  );
  const struckUntil = Math.max(onUntilBeat, span.startBeat + STRUCK_ON_BEATS) + BEAT_TOLERANCE;
  const struckOn = near.filter((note) => note.onsetBeat <= struckUntil && !isEarly(note));
  const from = (note: GradedNote) => Math.abs(note.onsetBeat - playedAtBeat);
  const leadsInto = (note: GradedNote, other: GradedNote) => {
    const letGoUntil = Math.max(other.onsetBeat, span.startBeat) + onUntilBeat - span.startBeat;
    return (
      other.index > note.index &&
      note.offsetBeat <= letGoUntil + BEAT_TOLERANCE &&
      from(other) < from(note) - BEAT_TOLERANCE
    );
  };
  return near
    .filter(
      (note) =>
        note.onsetBeat >= span.startBeat - BEAT_TOLERANCE ||
        !struckOn.some((other) => leadsInto(note, other)),
    )
    .map((note) => ({ note, takes: isEarly(note) ? toneMask(chord, 'chordTones') : ALL_TONES }));
}

const isForChange = (beat: number | null, { span }: ChordChange): boolean =>
  beat !== null && Math.abs(beat - span.startBeat) < BEAT_TOLERANCE;

/** Whether a note starts from a change to one beat and the tolerance after it, before the next one comes. */
const isInLandingWindow = (note: GradedNote, { span, untilBeat, landingUntilBeat }: ChordChange): boolean =>
  note.onsetBeat >= span.startBeat - BEAT_TOLERANCE &&
  note.onsetBeat <= landingUntilBeat + BEAT_TOLERANCE &&
  note.onsetBeat < untilBeat - BEAT_TOLERANCE;

/** The notes that can have to do with a change: a note anticipates by a few beats at the most, and lands in one. */
const notesAround = ({ span }: ChordChange, notes: readonly GradedNote[]): readonly GradedNote[] =>
  notesBetween(notes, span.startBeat - MOST_ANTICIPATION_BEATS, span.startBeat + 2 * LANDING_BEATS);
