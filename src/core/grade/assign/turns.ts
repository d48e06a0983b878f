/** Where player and band trade bars, the player answers for the player's own turns alone. */
import { anticipationBefore, type Anticipation } from './attribute.ts';
import { BEAT_TOLERANCE } from '../../chart/build-timeline.ts';
import type { Timeline } from '../../chart/timeline.ts';
import { endOfTurn, isPlayersTurn } from '../../chart/turns.ts';
import type { HeardNote } from '../../take/note.ts';

/**
 * The note as far as it is the player's: one that begins in the player's turn, or the anticipation before it and sounds
 * on; what rings into the band's turn is cut there. null for a note of the band's turn: the example itself, heard
 * through the room, or playing over it.
 */
export function playersNote(
  note: HeardNote,
  timeline: Timeline,
  anticipation: Anticipation,
): HeardNote | null {
  if (timeline.turnBars === undefined) return note;
  const { beatMap } = timeline;
  const beat = beatMap.beatAt(note.onsetSeconds);
  const end = endOfTurn(timeline, beat);
  if (isPlayersTurn(timeline, beat)) {
    const endSeconds = beatMap.secondsAt(end);
    return note.offsetSeconds <= endSeconds ? note : { ...note, offsetSeconds: endSeconds };
  }
  const ahead = end - beat;
  const soundsOn = beatMap.beatAt(note.offsetSeconds) - end > BEAT_TOLERANCE;
  return soundsOn && ahead <= anticipationBefore(timeline, end, anticipation) + BEAT_TOLERANCE ? note : null;
}

/** Those that are the player's. */
export const playersNotes = (
  notes: readonly HeardNote[],
  timeline: Timeline,
  anticipation: Anticipation,
): readonly HeardNote[] =>
  timeline.turnBars === undefined
    ? notes
    : notes.flatMap((note) => playersNote(note, timeline, anticipation) ?? []);
