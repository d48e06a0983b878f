/** What the review needs of the playback of a take. Seconds count from the first sample. */
import type { Problem } from '../../core/words/problem.ts';

export interface PlaybackVerbs {
  readonly playing: boolean;
  readonly seconds: number;
  readonly durationSeconds: number;
  readonly withBand: boolean;
  /** Why the last `play` did not sound, or null. */
  readonly problem: Problem | null;
  play(fromSeconds?: number): Promise<void>;
  pause(): void;
  seek(seconds: number): Promise<void>;
  setWithBand(withBand: boolean): void;
}
