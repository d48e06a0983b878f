import * as S from '../tuning.ts';
import type { Track } from '../path/track.ts';

/** Does the level of a note that began at frame `from` dip at `frame` and come back, as between two breaths or bows? */
export function breathes(track: Track, from: number, frame: number): boolean {
  const level = track.level(frame);
  if (level > track.level(frame - 1) || level >= track.level(frame + 1)) return false;
  let before = level;
  for (let f = Math.max(from, frame - S.DIP_FRAMES); f < frame; f++)
    before = Math.max(before, track.level(f));
  let after = level;
  for (let f = frame + 1; f <= frame + S.LOOK_AHEAD; f++) after = Math.max(after, track.level(f));
  return before >= level + S.DIP_DB && after >= level + S.DIP_RISE_DB;
}
