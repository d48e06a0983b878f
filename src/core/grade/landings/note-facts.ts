/** A graded note as the report has it. */
import type { CorrectedNote } from '../../correct/correct-notes.ts';
import { keyAt } from '../../chart/keys-through.ts';
import type { Timeline } from '../../chart/timeline.ts';
import { nameInKey, nameOverChord, noteName } from '../../music/pitch-names.ts';
import type { HeardNote } from '../../take/note.ts';
import type { ReportNote } from '../../take/schema.ts';
import { durationalAccent } from '../assign/accent.ts';
import { nearestEighth } from '../assign/beats.ts';
import type { FunctionFound } from './functions.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { correctedFact } from './corrected-facts.ts';
import { phraseOfNotes, type PhraseBounds } from '../assign/phrases.ts';
import { offsetMs } from './timing.ts';

/** What other rules found about the notes, one entry a note. */
export interface NoteFindings {
  readonly functions: readonly (FunctionFound | null)[];
  readonly phrases: readonly PhraseBounds[];
  readonly strong: readonly boolean[];
  /** What the player has said of a note and corrected in it; undefined where it is as it was heard. */
  byHand(note: HeardNote): CorrectedNote | undefined;
}

/** Every note of the report, in order. */
export function noteFacts(
  notes: readonly GradedNote[],
  timeline: Timeline,
  { functions, phrases, strong, byHand }: NoteFindings,
): readonly ReportNote[] {
  const phraseOf = phraseOfNotes(phrases, notes.length);
  return notes.map((note, i) => {
    const { heard, pitch, pitchClass, chord, onsetBeat } = note;
    const spelled =
      chord === null ? nameInKey(pitchClass, keyAt(timeline, onsetBeat)) : nameOverChord(pitchClass, chord);
    const phrase = phraseOf[i]!;
    // A note just before a change that counts as played on it stands in the bar of the change.
    const heardBeat = note.rule === 'at change' ? (note.anticipates ?? onsetBeat) : onsetBeat;
    const bar = Math.floor(heardBeat / timeline.beatsPerBar + 1e-9);
    const started = heardBeat >= 0;
    return {
      onsetSeconds: heard.onsetSeconds,
      offsetSeconds: heard.offsetSeconds,
      midi: heard.midi,
      name: noteName(pitch, spelled),
      cents: note.cents,
      spelling: noteName(pitch, spelled),
      beat: onsetBeat,
      endBeat: note.offsetBeat,
      bar: started ? bar % timeline.bars : null,
      chorus: started ? Math.floor(bar / timeline.bars) : null,
      chord: chord?.symbol ?? null,
      degree: note.degree,
      role: note.role,
      keyDegree: note.keyDegree,
      rule: note.rule,
      aheadBeats: note.aheadBeats,
      function: functions[i]?.function ?? null,
      functionNotes: functions[i]?.notes ?? [],
      offGridMs: offsetMs(
        note,
        nearestEighth(onsetBeat, timeline.swing, timeline.divisions),
        timeline.beatMap,
      ),
      weight: accentOf(notes, i),
      strongBeat: strong[i]!,
      phrase,
      phraseEnd: phrases[phrase]!.lastNote === i,
      attack: heard.attack,
      bendSemitones: heard.bendSemitones,
      vibrato: heard.vibrato,
      second: note.second === null ? null : noteName(note.second),
      confidence: heard.confidence,
      chosen: byHand(heard)?.counts === true,
      ...correctedFact(byHand(heard)),
    };
  });
}

/** Weight by the time to the next onset; the last note's own length stands for it. */
export function accentOf(notes: readonly GradedNote[], index: number): number {
  const { onsetSeconds, offsetSeconds } = notes[index]!.heard;
  const next = notes[index + 1]?.heard.onsetSeconds ?? offsetSeconds;
  return durationalAccent(Math.max(0, next - onsetSeconds));
}
