/** The swing that was played: where the second eighth of a beat falls. */
import type { SwingPlayed } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { median } from '../../base/statistics.ts';

/** A second eighth falls between these shares of the beat; earlier or later it is another note value. */
const EARLIEST = 0.42;
const LATEST = 0.8;
/** A first eighth lies so near its beat. */
const NEAR_BEAT = 0.2;
/** A median of fewer pairs may be chance. */
const LEAST_PAIRS = 8;

/**
 * Pairs of eighths: beats with exactly one note near the beat and one between, and nothing else. The share is counted
 * from the player's own first eighth to the next beat, so that playing behind the beat is no swing.
 */
export function findSwing(notes: readonly GradedNote[]): SwingPlayed {
  const shares: number[] = [];
  for (let i = 0; i + 1 < notes.length; i++) {
    const first = notes[i]!;
    const second = notes[i + 1]!;
    const beat = Math.round(first.onsetBeat);
    if (Math.abs(first.onsetBeat - beat) > NEAR_BEAT) continue;
    const ownBeat = second.onsetBeat - beat;
    if (ownBeat < EARLIEST || ownBeat > LATEST) continue;
    const next = notes[i + 2];
    if (next !== undefined && next.onsetBeat < beat + 1 - NEAR_BEAT) continue;
    const before = notes[i - 1];
    if (before !== undefined && before.onsetBeat > beat - 1 + LATEST) continue;
    const late = first.onsetBeat - beat;
    shares.push(ownBeat - late);
  }
  return { pairs: shares.length, share: shares.length < LEAST_PAIRS ? null : median(shares) };
}
