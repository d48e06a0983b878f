/** Hearing a take again: play, pause, jump, and where it is. */
import type { FramesPort, OpenPlayer } from './ports.ts';

export class Playback {
  #player: OpenPlayer;
  #frames: FramesPort;
  #playing = $state.raw(false);
  #seconds = $state.raw(0);
  #stopFrames: (() => void) | null = null;

  constructor(ports: { readonly player: OpenPlayer; readonly frames: FramesPort }) {
    this.#player = ports.player;
    this.#frames = ports.frames;
    this.#player.onEnded(() => {
      this.#halt();
      this.#seconds = 0;
    });
  }

  get playing(): boolean {
    return this.#playing;
  }

  /** Where the playing is, in seconds from the first sample. */
  get seconds(): number {
    return this.#seconds;
  }

  get durationSeconds(): number {
    return this.#player.durationSeconds;
  }

  play(fromSeconds: number = this.#seconds): void {
    this.#seconds = this.#clamp(fromSeconds);
    this.#player.play(this.#seconds);
    this.#playing = true;
    this.#stopFrames ??= this.#frames.each(() => {
      this.#seconds = this.#clamp(this.#player.positionSeconds());
    });
  }

  pause(): void {
    if (!this.#playing) return;
    this.#seconds = this.#clamp(this.#player.positionSeconds());
    this.#player.pause();
    this.#halt();
  }

  seek(seconds: number): void {
    if (this.#playing) this.play(seconds);
    else this.#seconds = this.#clamp(seconds);
  }

  dispose(): void {
    this.#halt();
    this.#player.dispose();
  }

  #halt(): void {
    this.#playing = false;
    this.#stopFrames?.();
    this.#stopFrames = null;
  }

  #clamp(seconds: number): number {
    return Math.min(Math.max(seconds, 0), this.durationSeconds);
  }
}
