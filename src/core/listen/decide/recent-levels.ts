import type { Track } from '../path/track.ts';
import * as S from '../tuning/notes.ts';

/** The loudest and the quietest level of late, in dBFS: what a note must stand out from. */
export class RecentLevels {
  #loudestDb = S.SILENT_DB;
  #quietestDb = S.FIRST_FLOOR_DB;

  /** Takes the level of the next frame. */
  take(levelDb: number): void {
    this.#loudestDb = Math.max(levelDb, this.#loudestDb - S.RECENT_FALL_DB);
    const above = levelDb - this.#quietestDb;
    this.#quietestDb += above < 0 ? S.FLOOR_FALL * above : S.FLOOR_RISE_DB;
  }

  /** Is the level at this frame and just after it too low for a note to begin? */
  isTooQuiet(track: Track, frame: number): boolean {
    const level = Math.max(track.level(frame), track.level(frame + S.QUIET_FRAMES));
    return level < this.#loudestDb - S.START_DROP_DB || level < this.#quietestDb + S.ABOVE_FLOOR_DB;
  }
}
