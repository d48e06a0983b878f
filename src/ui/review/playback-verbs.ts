/** What the review needs of the playback of a take. Seconds count from the first sample. */
import type { Problem } from '../../core/words/problem.ts';
import type { Hearing, Mix, Speed, Stretch } from '../../state/playback.svelte.ts';

export interface PlaybackVerbs {
  readonly playing: boolean;
  readonly seconds: number;
  readonly durationSeconds: number;
  readonly mix: Mix;
  readonly speed: Speed;
  /** The stretch that is gone round, or null. */
  readonly loop: Stretch | null;
  /** Id of the stretch that sounds once now, or null. */
  readonly hearing: string | null;
  /** Why the last `play` did not sound, or null. */
  readonly problem: Problem | null;
  play(fromSeconds?: number): Promise<void>;
  pause(): void;
  toggle(): Promise<void>;
  seek(seconds: number): Promise<void>;
  setMix(mix: Mix): void;
  setSpeed(speed: Speed): Promise<void>;
  setLoop(loop: Stretch | null): Promise<void>;
  hear(hearing: Hearing): Promise<void>;
}
