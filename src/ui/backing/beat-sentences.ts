/** What is said of a recording's beats. */
import type { BeatTrack } from '../../core/beats/track.ts';

/** 83.42 as "1:23.42". */
export const placeWords = (seconds: number): string => {
  const minutes = Math.floor(seconds / 60);
  return `${minutes}:${(seconds - 60 * minutes).toFixed(2).padStart(5, '0')}`;
};

/** "Bar 3, beat 2, at 0:07.41, set by hand"; before bar 1 "2 beats before bar 1, at 0:00.31". */
export function beatWords({ marks, downbeat }: BeatTrack, index: number, beatsPerBar: number): string {
  const mark = marks[index];
  if (!mark) return 'No beat is chosen';
  const from = index - downbeat;
  const place =
    from < 0
      ? `${-from} ${from === -1 ? 'beat' : 'beats'} before bar 1`
      : `Bar ${1 + Math.floor(from / beatsPerBar)}, beat ${1 + (from % beatsPerBar)}`;
  return `${place}, at ${placeWords(mark.seconds)}${mark.pinned ? ', set by hand' : ''}`;
}

/** "6 taps, 128 a minute"; the tempo is left out until there is one. */
export const tapWords = (taps: number, bpm: number | null): string =>
  `${taps} ${taps === 1 ? 'tap' : 'taps'}${bpm === null ? '' : `, ${Math.round(bpm)} a minute`}`;
