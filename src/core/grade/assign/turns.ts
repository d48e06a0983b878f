/** Where player and band trade bars, the player answers for the player's own turns alone. */
import { reachBefore, type Anticipation } from './attribute.ts';
import type { Timeline } from '../../chart/timeline.ts';
import { endOfTurn, isPlayersTurn } from '../../chart/turns.ts';
import { TOLERANCE_SECONDS } from './tolerance.ts';
import type { HeardNote } from '../../take/note.ts';

/**
 * The note as far as it is the player's: one that begins in the player's turn, or the anticipation (and the
 * tolerance) before it and sounds on; what rings into the band's turn is cut there. null for a note of the band's turn: the example itself, heard
 * through the room, or playing over it.
 */
export function playersNote(
  note: HeardNote,
  timeline: Timeline,
  anticipation: Anticipation,
  toleranceSeconds: number = TOLERANCE_SECONDS,
): HeardNote | null {
  if (timeline.turnBars === undefined) return note;
  const { beatMap } = timeline;
  const beat = beatMap.beatAt(note.onsetSeconds);
  const end = endOfTurn(timeline, beat);
  if (isPlayersTurn(timeline, beat)) {
    const endSeconds = beatMap.secondsAt(end);
    return note.offsetSeconds <= endSeconds ? note : { ...note, offsetSeconds: endSeconds };
  }
  if (anticipation === 0) return null;
  const reach = reachBefore(timeline, end, anticipation, toleranceSeconds);
  if (note.onsetSeconds >= reach.onFromSeconds) return note;
  return note.onsetSeconds >= reach.fromSeconds && note.offsetSeconds >= reach.onFromSeconds ? note : null;
}

/** Those that are the player's. */
export const playersNotes = (
  notes: readonly HeardNote[],
  timeline: Timeline,
  anticipation: Anticipation,
  toleranceSeconds: number = TOLERANCE_SECONDS,
): readonly HeardNote[] =>
  timeline.turnBars === undefined
    ? notes
    : notes.flatMap((note) => playersNote(note, timeline, anticipation, toleranceSeconds) ?? []);
