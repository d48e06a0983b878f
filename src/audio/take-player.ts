/** Plays a recorded take, alone or with its band. */
export interface TakePlayer {
  readonly durationSeconds: number;
  readonly playing: boolean;
  /** Position in the take, as heard now. */
  positionSeconds(): number;
  play(fromSeconds?: number): void;
  pause(): void;
  seek(seconds: number): void;
  setTakeLevelDb(levelDb: number): void;
  dispose(): void;
}
