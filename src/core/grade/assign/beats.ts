/** Which notes fall on the beats that carry the harmony, and how early or late notes lie. */
import { ON_BEAT_BEATS } from './settings.ts';

/**
 * Strong beats of a bar, from 0, by beats in the bar; every other meter has the first alone. In five and seven they
 * are the starts of the groups (3+2, 2+2+3), in six the dotted halves. *Common practice.*
 */
const STRONG_BEATS: Readonly<Record<number, readonly number[]>> = {
  4: [0, 2],
  5: [0, 3],
  6: [0, 3],
  7: [0, 2, 4],
};

/**
 * Whether a whole beat is a strong one: 1 and 3 in four, 1 in three. In compound time the beat is the dotted quarter,
 * so that 1 and the dotted halves of 12/8 are beats 1 and 3 of its four; 6/8 and 9/8 have the first alone.
 */
export function isStrongBeat(beat: number, beatsPerBar: number): boolean {
  const ofBar = ((beat % beatsPerBar) + beatsPerBar) % beatsPerBar;
  return (STRONG_BEATS[beatsPerBar] ?? [0]).includes(ofBar);
}

/** Whether an onset lies on a beat rather than between two. */
export const isOnBeat = (onsetBeat: number): boolean =>
  Math.abs(onsetBeat - Math.round(onsetBeat)) < ON_BEAT_BEATS;

/**
 * The notes that stand on strong beats: for every strong beat the one whose onset lies nearest, if it lies nearer
 * than a quarter of a beat.
 * @param onsets in beats
 * @returns one flag a note
 */
export function onStrongBeats(onsets: readonly number[], beatsPerBar: number): readonly boolean[] {
  const nearest = new Map<number, number>();
  onsets.forEach((onset, index) => {
    const beat = Math.round(onset);
    if (!isStrongBeat(beat, beatsPerBar) || !isOnBeat(onset)) return;
    const other = nearest.get(beat);
    if (other === undefined || Math.abs(onset - beat) < Math.abs(onsets[other]! - beat))
      nearest.set(beat, index);
  });
  const chosen = new Set(nearest.values());
  return onsets.map((_, index) => chosen.has(index));
}

/**
 * The nearest eighth of the feel, as a beat: whole beats, and between them the second eighth where the swing puts it,
 * or the two of a dotted beat.
 */
export function nearestEighth(onsetBeat: number, swing: number, divisions: 2 | 3): number {
  const whole = Math.floor(onsetBeat);
  const between = divisions === 3 ? [1 / 3, 2 / 3] : [swing];
  const places = [0, ...between, 1].map((place) => whole + place);
  return places.reduce((best, place) =>
    Math.abs(place - onsetBeat) < Math.abs(best - onsetBeat) ? place : best,
  );
}
