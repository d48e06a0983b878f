/** What is said of a recording's beats. */
import type { BeatTrack } from '../../core/beats/track.ts';
import type { Words } from '../../core/words/words.ts';

/** 83.42 as "1:23.42". */
export const placeWords = (seconds: number): string => {
  const minutes = Math.floor(seconds / 60);
  return `${minutes}:${(seconds - 60 * minutes).toFixed(2).padStart(5, '0')}`;
};

/** "Bar 3, beat 2, at 0:07.41, set by hand"; before bar 1 "2 beats before bar 1, at 0:00.31". */
export function beatWords(
  { marks, downbeat }: BeatTrack,
  index: number,
  beatsPerBar: number,
  { backing }: Words,
): string {
  const mark = marks[index];
  if (!mark) return backing.noBeatChosen;
  const from = index - downbeat;
  const time = placeWords(mark.seconds);
  const beat =
    from < 0
      ? backing.beatBefore({ beats: -from, time })
      : backing.beatAt({ bar: 1 + Math.floor(from / beatsPerBar), beat: 1 + (from % beatsPerBar), time });
  return mark.pinned ? backing.setByHand({ beat }) : beat;
}

/** "6 taps, 128 a minute"; the tempo is left out until there is one. */
export const tapWords = (taps: number, bpm: number | null, { backing }: Words): string =>
  backing.taps({ taps, bpm: bpm === null ? null : Math.round(bpm) });
