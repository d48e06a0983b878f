/** Heard notes set against the chart: each with its chord, degree and role. */
import { chordOfNote, type Anticipation } from './attribute.ts';
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';
import { keyAt } from '../../chart/keys-through.ts';
import type { Timeline } from '../../chart/timeline.ts';
import { degreeInKey, degreeOver } from '../../music/pitch-names.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import type { HeardNote } from '../../take/note.ts';
import { nameNote } from '../../music/name-note.ts';
import type { GradedNote } from './graded-note.ts';
import { roleOf } from './roles.ts';
import type { PaletteOver } from './scales.ts';

/** How notes are set against a chart. */
export interface NoteRules {
  readonly referenceHz: number;
  readonly anticipation: Anticipation;
  /** Left out, that of tolerance.ts. */
  readonly toleranceSeconds?: number | undefined;
  /** Pitch classes that count as colour. */
  readonly palette: PaletteOver;
}

/** Grades every note, in the order of their onsets; notes that start together stay in the order they came. */
export function gradeNotes(
  notes: readonly HeardNote[],
  timeline: Timeline,
  rules: NoteRules,
): readonly GradedNote[] {
  return [...notes]
    .sort((a, b) => a.onsetSeconds - b.onsetSeconds)
    .map((heard, index) => gradeNote(heard, index, timeline, rules));
}

function gradeNote(heard: HeardNote, index: number, timeline: Timeline, rules: NoteRules): GradedNote {
  const { nearestMidi, cents } = nameNote(heard.midi, rules.referenceHz);
  const pitchClass = wrapPitchClass(nearestMidi);
  const attribution = chordOfNote(
    heard,
    timeline,
    rules.anticipation,
    rules.referenceHz,
    rules.toleranceSeconds,
  );
  const { chord, beat, early } = attribution;
  const offsetBeat = timeline.beatMap.beatAt(heard.offsetSeconds);
  const change = timeline.nextChange(attribution.change?.startBeat ?? beat);
  const crosses = change !== null && offsetBeat > change.startBeat + BEAT_TOLERANCE;
  return {
    index,
    heard,
    pitch: nearestMidi,
    pitchClass,
    cents,
    second: heard.second === null ? null : nameNote(heard.second, rules.referenceHz).nearestMidi,
    onsetBeat: beat,
    offsetBeat,
    chord,
    anticipates: attribution.change?.startBeat ?? null,
    early:
      early === undefined || early.chord === null
        ? null
        : { beat: early.startBeat, chord: early.chord, from: timeline.chordAt(beat) },
    heldInto: crosses ? change.chord : null,
    degree: chord === null ? null : degreeOver(pitchClass, chord),
    role: chord === null ? null : roleOf(pitchClass, chord, rules.palette(chord)),
    keyDegree: degreeInKey(pitchClass, keyAt(timeline, attribution.change?.startBeat ?? beat)),
    rule: attribution.rule,
    aheadBeats: attribution.change === undefined ? null : attribution.change.startBeat - beat,
  };
}
