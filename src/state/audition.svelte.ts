/** Hearing a recording before it is graded: play, pause, go to another place. */
import type { FramesPort, OpenPlayer } from './ports.ts';
import type { Problem } from '../core/words/problem.ts';

export class Audition {
  readonly #player: Pick<OpenPlayer, 'play' | 'pause' | 'positionSeconds' | 'onEnded' | 'dispose'>;
  readonly #frames: FramesPort;
  readonly durationSeconds: number;
  #playing = $state.raw(false);
  #seconds = $state.raw(0);
  #problem = $state.raw<Problem | null>(null);
  #stopFrames: (() => void) | null = null;

  constructor(player: OpenPlayer, frames: FramesPort) {
    this.#player = player;
    this.#frames = frames;
    this.durationSeconds = player.durationSeconds;
    player.onEnded(() => this.#rest(0));
  }

  get playing(): boolean {
    return this.#playing;
  }

  /** Where it is, or will begin. */
  get seconds(): number {
    return this.#seconds;
  }

  /** Why it did not sound, or null. */
  get problem(): Problem | null {
    return this.#problem;
  }

  /** Plays, or pauses. */
  async toggle(): Promise<void> {
    if (this.#playing) return this.#pause();
    this.#playing = true;
    const sounding = await this.#player.play({ fromSeconds: this.#seconds, speed: 1, passage: null });
    this.#problem = sounding.ok ? null : sounding.problem;
    if (!sounding.ok) this.#rest(this.#seconds);
    else if (this.#playing)
      this.#stopFrames ??= this.#frames.each(() => (this.#seconds = this.#player.positionSeconds()));
  }

  /** Goes to a place, and on from there if it was playing. */
  goTo(seconds: number): void {
    const goesOn = this.#playing;
    if (goesOn) this.#pause();
    this.#seconds = Math.min(this.durationSeconds, Math.max(0, seconds));
    if (goesOn) void this.toggle();
  }

  dispose(): void {
    this.#rest(0);
    this.#player.dispose();
  }

  #pause(): void {
    this.#player.pause();
    this.#rest(this.#player.positionSeconds());
  }

  #rest(seconds: number): void {
    this.#playing = false;
    this.#seconds = seconds;
    this.#stopFrames?.();
    this.#stopFrames = null;
  }
}
