/** What the review needs of the playback of a take. Seconds count from the first sample. */
export interface PlaybackVerbs {
  readonly playing: boolean;
  readonly seconds: number;
  readonly durationSeconds: number;
  play(fromSeconds?: number): void;
  pause(): void;
  seek(seconds: number): void;
}
