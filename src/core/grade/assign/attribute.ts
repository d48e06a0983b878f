/**
 * Which chord a note belongs to: the chord at its onset, or the next one when the note anticipates it.
 */
import type { Chord } from '../../music/chord.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import { nameNote } from '../../music/name-note.ts';
import { STANDARD_A4_HZ } from '../../music/temperament.ts';
import { SAME_SECONDS, TOLERANCE_SECONDS, toleranceAt } from './tolerance.ts';
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';
import type { ChordSpan, Timeline } from '../../chart/timeline.ts';

/** The chord that a note is heard against, and by which rule. */
export interface Attribution {
  /** null before the first downbeat, where no chord is named yet, and over N.C. */
  readonly chord: Chord | null;
  /** Of the onset, from the first downbeat. */
  readonly beat: number;
  /**
   * 'onset': the chord that stands where the note starts; 'anticipation': the chord that it runs ahead to;
   * 'at change': the chord that arrives within the tolerance after the onset.
   */
  readonly rule: 'onset' | 'anticipation' | 'at change';
  /** The span whose chord the note has before it arrives. */
  readonly change?: ChordSpan;
  /** The change that the note is early enough for and sounds into, whether or not it is one of its tones. */
  readonly early?: ChordSpan;
}

/** A note's times and sounding pitch; `midi` is fractional, against A4 = 440 Hz. */
export interface TimedPitch {
  readonly onsetSeconds: number;
  readonly offsetSeconds: number;
  readonly midi: number;
}

/**
 * The chord of a note. A note that starts within the tolerance before the next change is played on it, whatever its
 * pitch. One that starts the anticipation and the tolerance or less before it, ends no earlier than the tolerance
 * before it, and is a chord tone of the new chord, belongs to the new chord too; every other note to the chord at its
 * onset. A change is where the chord differs from the one before, N.C. being a chord of its own, and the first chord; N.C.
 * is not anticipated. A note over no chord, or just before a chart's first downbeat, can anticipate; a note before the
 * first of listed beats has no chord. With an anticipation of 0 the chord at the onset always stands.
 * @param toleranceSeconds see tolerance.ts; never more than a quarter of the beat before the change
 * @throws RangeError for a negative anticipation or tolerance
 */
export function chordOfNote(
  note: TimedPitch,
  timeline: Timeline,
  anticipation: Anticipation,
  referenceHz: number = STANDARD_A4_HZ,
  toleranceSeconds: number = TOLERANCE_SECONDS,
): Attribution {
  if (anticipation !== 'an eighth' && !(anticipation >= 0)) {
    throw new RangeError(`an anticipation is 0 beats or more, not ${anticipation}`);
  }
  if (!(toleranceSeconds >= 0)) throw new RangeError(`a tolerance is 0 s or more, not ${toleranceSeconds}`);
  const beat = timeline.beatMap.beatAt(note.onsetSeconds);
  const onset: Attribution = { chord: timeline.chordAt(beat), beat, rule: 'onset' };
  // A list of beats says nothing about what comes before it; a chart at a tempo is counted in.
  const unlisted = timeline.beatMap.bpm === null && beat < -BEAT_TOLERANCE;
  if (anticipation === 0 || unlisted) return onset;
  const change = timeline.nextChange(beat);
  if (!change?.chord) return onset;
  const reach = reachBefore(timeline, change.startBeat, anticipation, toleranceSeconds);
  if (note.onsetSeconds >= reach.onFromSeconds) {
    return { chord: change.chord, beat, rule: 'at change', change };
  }
  if (note.onsetSeconds < reach.fromSeconds || note.offsetSeconds < reach.onFromSeconds) return onset;
  const pitchClass = wrapPitchClass(nameNote(note.midi, referenceHz).nearestMidi);
  const fits = change.chord.tones.some((tone) => tone.pitchClass === pitchClass);
  return fits
    ? { chord: change.chord, beat, rule: 'anticipation', change, early: change }
    : { ...onset, early: change };
}

/** From when on a note before a change can be an anticipation of it, and from when on it is played on the change. */
export interface Reach {
  readonly fromSeconds: number;
  readonly onFromSeconds: number;
}

/** The two edges before a change, in seconds of the take. */
export function reachBefore(
  timeline: Timeline,
  changeBeat: number,
  anticipation: Anticipation,
  toleranceSeconds: number,
): Reach {
  const { beatMap } = timeline;
  const tolerance = toleranceAt(timeline, changeBeat, toleranceSeconds) + SAME_SECONDS;
  const eighth = anticipationBefore(timeline, changeBeat, anticipation);
  return {
    fromSeconds: beatMap.secondsAt(changeBeat - eighth) - tolerance,
    onFromSeconds: beatMap.secondsAt(changeBeat) - tolerance,
  };
}

/**
 * An eighth note before the beat, in beats: half a beat straight; swung, as long as the short second eighth; a third
 * of the beat in compound time, whose beat has three eighths and no swing.
 */
export const defaultAnticipationBeats = (swing: number, divisions: 2 | 3 = 2): number =>
  divisions === 3 ? 1 / 3 : 1 - swing;

/** How far a note may run ahead: so many beats, or an eighth note as the bar before the change swings it. */
export type Anticipation = number | 'an eighth';

/** The anticipation before a change, in beats. */
export function anticipationBefore(
  { swing, barSwings, divisions, beatsPerBar, bars }: Timeline,
  changeBeat: number,
  anticipation: Anticipation,
): number {
  if (anticipation !== 'an eighth') return anticipation;
  const bar = Math.max(0, Math.ceil((changeBeat - BEAT_TOLERANCE) / beatsPerBar) - 1);
  return defaultAnticipationBeats(barSwings?.[bar % bars] ?? swing, divisions);
}
