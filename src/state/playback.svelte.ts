/** Hearing a take again, with or without its band: play, pause, jump, and where it is. */
import type { Problem } from '../core/words/problem.ts';
import type { BandLevels, FramesPort, OpenPlayer } from './ports.ts';

const SILENT_DB = -60;

export class Playback {
  readonly #player: OpenPlayer;
  readonly #frames: FramesPort;
  readonly #levels: BandLevels;
  #playing = $state.raw(false);
  #seconds = $state.raw(0);
  #withBand = $state.raw(true);
  #problem = $state.raw<Problem | null>(null);
  #stopFrames: (() => void) | null = null;

  constructor(ports: {
    readonly player: OpenPlayer;
    readonly frames: FramesPort;
    /** The band's levels where it is heard. */
    readonly levels: BandLevels;
    readonly withBand: boolean;
  }) {
    this.#player = ports.player;
    this.#frames = ports.frames;
    this.#levels = ports.levels;
    this.setWithBand(ports.withBand);
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

  get withBand(): boolean {
    return this.#withBand;
  }

  /** Why the last `play` did not sound, or null. */
  get problem(): Problem | null {
    return this.#problem;
  }

  /** The band plays along or is silent; takes effect at once. */
  setWithBand(withBand: boolean): void {
    this.#withBand = withBand;
    this.#player.setBandLevels(withBand ? this.#levels : { ...this.#levels, all: SILENT_DB });
  }

  /** Goes on from where it is, or from a place. */
  async play(fromSeconds: number = this.#seconds): Promise<void> {
    this.#seconds = this.#clamp(fromSeconds);
    this.#playing = true;
    const sounding = await this.#player.play(this.#seconds);
    this.#problem = sounding.ok ? null : sounding.problem;
    if (!sounding.ok) this.#halt();
    else if (this.#playing)
      this.#stopFrames ??= this.#frames.each(() => {
        this.#seconds = this.#clamp(this.#player.positionSeconds());
      });
  }

  pause(): void {
    if (!this.#playing) return;
    this.#player.pause();
    this.#seconds = this.#clamp(this.#player.positionSeconds());
    this.#halt();
  }

  async seek(seconds: number): Promise<void> {
    if (this.#playing) await this.play(seconds);
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
