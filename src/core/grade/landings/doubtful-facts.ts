/** Notes that count in no share, as the report has them: named and set against the chord, and nothing more. */
import type { CorrectedNote } from '../../correct/correct-notes.ts';
import { keyAt } from '../../chart/keys-through.ts';
import type { Timeline } from '../../chart/timeline.ts';
import { nameInKey, nameOverChord, noteName } from '../../music/pitch-names.ts';
import type { HeardNote } from '../../take/note.ts';
import type { DoubtfulNote } from '../../take/schema.ts';
import { correctedFact } from './corrected-facts.ts';
import { gradeNotes, type NoteRules } from '../assign/grade-notes.ts';

/** The doubtful notes of a take, in order of onset. */
export function doubtfulFacts(
  doubtful: readonly HeardNote[],
  timeline: Timeline,
  rules: NoteRules,
  byHand: (note: HeardNote) => CorrectedNote | undefined,
): readonly DoubtfulNote[] {
  return gradeNotes(doubtful, timeline, rules).map(
    ({ heard, pitch, pitchClass, cents, chord, degree, role, onsetBeat, offsetBeat }) => ({
      onsetSeconds: heard.onsetSeconds,
      offsetSeconds: heard.offsetSeconds,
      midi: heard.midi,
      name: noteName(pitch),
      cents,
      spelling: noteName(
        pitch,
        chord === null ? nameInKey(pitchClass, keyAt(timeline, onsetBeat)) : nameOverChord(pitchClass, chord),
      ),
      beat: onsetBeat,
      endBeat: offsetBeat,
      chord: chord?.symbol ?? null,
      degree,
      role,
      confidence: heard.confidence,
      takenOut: byHand(heard)?.counts === false,
      ...correctedFact(byHand(heard)),
    }),
  );
}
