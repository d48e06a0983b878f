/** Notes cut at the changes they cross, so that every part has its own chord. The shares by length count these parts. */
import type { Timeline } from '../../chart/timeline.ts';
import type { Chord } from '../../music/chord.ts';
import type { GradedNote } from './graded-note.ts';

export interface LengthPart {
  readonly note: number;
  readonly pitchClass: number;
  readonly chord: Chord;
  readonly seconds: number;
}

/** Parts over N.C., or before the first downbeat, are left out: they stand outside every share. */
export function splitAtChanges(notes: readonly GradedNote[], timeline: Timeline): readonly LengthPart[] {
  return notes.flatMap((note) => {
    const { onsetBeat, offsetBeat } = note;
    return timeline.spansBetween(onsetBeat, offsetBeat).flatMap(({ chord, startBeat, endBeat }) => {
      if (chord === null) return [];
      const from = startBeat <= onsetBeat ? note.heard.onsetSeconds : timeline.beatMap.secondsAt(startBeat);
      const to = endBeat >= offsetBeat ? note.heard.offsetSeconds : timeline.beatMap.secondsAt(endBeat);
      return to > from ? [{ note: note.index, pitchClass: note.pitchClass, chord, seconds: to - from }] : [];
    });
  });
}
