/**
 * Rotations of a chart: the same chart, begun some whole bars later. Notes that ignore the chords score about the same over
 * every rotation, so that the mean over the rotations is what luck gives. The beats keep their times; the chords move by
 * whole bars, and those that would move before the first downbeat follow the last; before the first downbeat there is no
 * chord. A list of beats is rotated as one long chart, which is still played once.
 *
 * What is the same in every rotation (the beats of the notes, how far before a change a note may belong to it) is computed
 * once, so that a rotation costs little more than a search for each note.
 */
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';
import { lastAtOrBefore } from '../../chart/beat-maps.ts';
import type { ChordSpan, Timeline } from '../../chart/timeline.ts';
import type { Chord } from '../../music/chord.ts';
import { sameChord } from '../../music/same-chord.ts';
import { reachBefore, type Anticipation, type Reach } from '../assign/attribute.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { holds, toneMask } from '../assign/tone-sets.ts';

/** Stands where there is no chord. */
export const NO_CHORD = -1;

export interface RotatedChart {
  /** The chords of the chart; below, a chord is its place in this list. */
  readonly chords: readonly Chord[];
  /** The chord of every note, by the rules of attribute.ts, over the chart that begins so many bars later. */
  chordsOfNotes(bars: number): Int32Array;
  /** Every part of every note that stands over one chord, as length-parts.ts has them. */
  eachPart(bars: number, visit: (note: number, chord: number, seconds: number) => void): void;
}

/** How the notes were set against the chart. */
export interface AnticipationRules {
  readonly anticipation: Anticipation;
  readonly toleranceSeconds: number;
}

export function rotatedChart(
  notes: readonly GradedNote[],
  timeline: Timeline,
  rules: AnticipationRules,
): RotatedChart {
  const { beatMap, beatsPerBar, roundBeats } = timeline;
  const goesRound = beatMap.bpm !== null;
  const spans = timeline.spansBetween(0, roundBeats);
  const starts = spans.map(({ startBeat }) => Math.max(0, startBeat));
  const ends = spans.map(({ endBeat }) => Math.min(roundBeats, endBeat));
  const { chords, numbers } = numbered(spans);
  const tones = chords.map((chord) => toneMask(chord, 'chordTones'));
  /** Places in `spans` where the chord is another than before, the last span standing before the first. */
  const changes = spans.flatMap((span, i) => (sameChord(spans.at(i - 1)!.chord, span.chord) ? [] : [i]));
  const changeStarts = changes.map((place) => starts[place]!);
  const reachOf = reachReader(timeline, rules);

  /** Span at a place of the chart that goes round without end. */
  const spanAt = (place: number): number =>
    Math.max(0, lastAtOrBefore(starts, place - Math.floor(place / roundBeats) * roundBeats));

  /** After the end of a list of beats the last chord of the rotated list holds. */
  const within = (place: number, shift: number): number =>
    goesRound ? place : Math.min(place, shift + roundBeats - BEAT_TOLERANCE);

  /** The next change behind a place, or null. */
  function nextChange(
    place: number,
    shift: number,
  ): { readonly beat: number; readonly chord: number } | null {
    if (changes.length === 0) return null;
    const round = Math.floor(place / roundBeats);
    const next = lastAtOrBefore(changeStarts, place - round * roundBeats) + 1;
    const wraps = next === changes.length;
    const at = (wraps ? round + 1 : round) * roundBeats + changeStarts[wraps ? 0 : next]!;
    if (!goesRound && at >= shift + roundBeats - BEAT_TOLERANCE) return null;
    return { beat: at - shift, chord: numbers[changes[wraps ? 0 : next]!]! };
  }

  function chordOf(note: GradedNote, shift: number): number {
    const at = note.onsetBeat + BEAT_TOLERANCE;
    const started = at >= 0;
    const place = within(at + shift, shift);
    const here = started && spans.length > 0 ? numbers[spanAt(place)]! : NO_CHORD;
    if (rules.anticipation === 0 || spans.length === 0 || (!goesRound && !started)) return here;
    const change = started ? nextChange(place, shift) : { beat: 0, chord: numbers[spanAt(shift)]! };
    if (change === null || change.chord === NO_CHORD) return here;
    const { onsetSeconds, offsetSeconds } = note.heard;
    const reach = reachOf(change.beat);
    if (onsetSeconds >= reach.onFromSeconds) return change.chord;
    if (onsetSeconds < reach.fromSeconds || offsetSeconds < reach.onFromSeconds) return here;
    return holds(tones[change.chord]!, note.pitchClass) ? change.chord : here;
  }

  return {
    chords,
    chordsOfNotes: (bars) => Int32Array.from(notes, (note) => chordOf(note, bars * beatsPerBar)),
    eachPart(bars, visit) {
      const shift = bars * beatsPerBar;
      notes.forEach(({ onsetBeat, offsetBeat, heard }, note) => {
        if (!(offsetBeat > onsetBeat) || spans.length === 0) return;
        const first = within(Math.max(0, onsetBeat + BEAT_TOLERANCE) + shift, shift);
        let round = Math.floor(first / roundBeats);
        for (let span = spanAt(first); ; span++) {
          if (span === spans.length) {
            span = 0;
            round++;
          }
          const startBeat = Math.max(0, round * roundBeats + starts[span]! - shift);
          const isLast = !goesRound && startBeat >= roundBeats - BEAT_TOLERANCE;
          if (startBeat >= offsetBeat - BEAT_TOLERANCE || isLast) return;
          const end = round * roundBeats + ends[span]! - shift;
          const endBeat = !goesRound && end >= roundBeats - BEAT_TOLERANCE ? Infinity : end;
          const from = startBeat <= onsetBeat ? heard.onsetSeconds : beatMap.secondsAt(startBeat);
          const to = endBeat >= offsetBeat ? heard.offsetSeconds : beatMap.secondsAt(endBeat);
          if (numbers[span] !== NO_CHORD && to > from) visit(note, numbers[span]!, to - from);
          if (endBeat >= offsetBeat) return;
        }
      });
    },
  };
}

function numbered(spans: readonly ChordSpan[]): {
  readonly chords: readonly Chord[];
  readonly numbers: readonly number[];
} {
  const known = new Map<Chord, number>();
  const numbers = spans.map(({ chord }) => {
    if (chord === null) return NO_CHORD;
    if (!known.has(chord)) known.set(chord, known.size);
    return known.get(chord)!;
  });
  return { chords: [...known.keys()], numbers };
}

/** The edges before a change, worked out once for every beat that changes fall on. */
function reachReader(
  timeline: Timeline,
  { anticipation, toleranceSeconds }: AnticipationRules,
): (beat: number) => Reach {
  const known = new Map<number, Reach>();
  return (beat) => {
    const found = known.get(beat);
    if (found !== undefined) return found;
    const reach = reachBefore(timeline, beat, anticipation, toleranceSeconds);
    known.set(beat, reach);
    return reach;
  };
}
