/**
 * Hearing a take again: one transport for every button that sounds. It plays on from a place, goes round a stretch, or
 * plays a stretch once, as it was played or with other notes in its place; slower at the same pitch; line and band, or
 * one of them.
 */
import { good, type Outcome } from '../core/base/outcome.ts';
import type { HeardNote } from '../core/take/note.ts';
import type { Problem } from '../core/words/problem.ts';
import type { BandLevels, FramesPort, OpenPlayer, Passage, TakeAudio } from './ports.ts';
import { fromPcm16 } from '../core/base/pcm16.ts';

const SILENT_DB = -60;

/** What is heard. */
export const mixes = ['both', 'line', 'band'] as const;
export type Mix = (typeof mixes)[number];

/** 1 as it was played. The pitch stays. */
export const speeds = [1, 0.75, 0.5] as const;
export type Speed = (typeof speeds)[number];

/** A stretch of the take, in seconds from its first sample. */
export interface Stretch {
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

/** A stretch that a button plays once. */
export interface Hearing extends Stretch {
  /** Which button: it shows that it is the one that sounds. */
  readonly id: string;
  /** Sound in place of what was played; seconds of the take. Left out: as it was played. */
  readonly notes?: readonly HeardNote[];
}

export interface PlaybackPorts {
  readonly player: OpenPlayer;
  readonly frames: FramesPort;
  /** The band's levels where it is heard. */
  readonly levels: BandLevels;
  readonly mix: Mix;
  /** Notes from second 0 on, on the sound of the take's instrument. */
  render(notes: readonly HeardNote[], durationSeconds: number): Promise<Outcome<TakeAudio>>;
}

export class Playback {
  readonly #ports: PlaybackPorts;
  #playing = $state.raw(false);
  #seconds = $state.raw(0);
  #mix = $state.raw<Mix>('both');
  #speed = $state.raw<Speed>(1);
  #loop = $state.raw<Stretch | null>(null);
  #hearing = $state.raw<Hearing | null>(null);
  #problem = $state.raw<Problem | null>(null);
  #stopFrames: (() => void) | null = null;
  #rendered: { readonly of: Hearing; readonly speed: Speed; readonly line: Passage['line'] } | null = null;
  /** Number of the latest play or pause: an earlier play that is still getting ready does not sound any more. */
  #turn = 0;

  constructor(ports: PlaybackPorts) {
    this.#ports = ports;
    this.setMix(ports.mix);
    ports.player.onEnded(() => {
      this.#halt();
      this.#seconds = this.#hearing?.fromSeconds ?? 0;
      this.#hearing = null;
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
    return this.#ports.player.durationSeconds;
  }

  get mix(): Mix {
    return this.#mix;
  }

  get speed(): Speed {
    return this.#speed;
  }

  /** The stretch that is gone round; null goes on to the end. */
  get loop(): Stretch | null {
    return this.#loop;
  }

  /** Id of the stretch that sounds once now, or null. */
  get hearing(): string | null {
    return this.#hearing?.id ?? null;
  }

  /** Why the last `play` did not sound, or null. */
  get problem(): Problem | null {
    return this.#problem;
  }

  /** Takes effect at once. */
  setMix(mix: Mix): void {
    this.#mix = mix;
    const { player, levels } = this.#ports;
    player.setBandLevels(mix === 'line' ? { ...levels, all: SILENT_DB } : levels);
    player.setTakeLevelDb(mix === 'band' ? SILENT_DB : 0);
  }

  /** While it plays, it goes on at the new speed. */
  async setSpeed(speed: Speed): Promise<void> {
    if (speed === this.#speed) return;
    this.#follow();
    this.#speed = speed;
    if (this.#playing) await this.#sound(this.#seconds);
  }

  /** Sets what is gone round, at least a tenth of a second; null goes round nothing. */
  async setLoop(loop: Stretch | null): Promise<void> {
    this.#follow();
    this.#loop = loop && {
      fromSeconds: this.#clamp(Math.min(loop.fromSeconds, loop.toSeconds - 0.1)),
      toSeconds: this.#clamp(loop.toSeconds),
    };
    if (this.#playing && this.#hearing === null) await this.#sound(this.#inLoop(this.#seconds));
    else if (loop !== null) this.#seconds = this.#inLoop(this.#seconds);
  }

  /** Goes on from where it is, or from a place; in the loop, where there is one. */
  async play(fromSeconds: number = this.#seconds): Promise<void> {
    this.#hearing = null;
    await this.#sound(this.#inLoop(this.#clamp(fromSeconds)));
  }

  /** Plays a stretch once, and stops where it ends. Asked for the stretch that sounds, it stops. */
  async hear(hearing: Hearing): Promise<void> {
    if (this.#playing && this.#hearing?.id === hearing.id) return this.pause();
    this.#hearing = hearing;
    await this.#sound(hearing.fromSeconds);
  }

  pause(): void {
    if (!this.#playing) return;
    this.#turn++;
    this.#follow();
    this.#ports.player.pause();
    this.#halt();
    this.#hearing = null;
  }

  async toggle(): Promise<void> {
    if (this.#playing) this.pause();
    else await this.play();
  }

  async seek(seconds: number): Promise<void> {
    if (this.#playing && this.#hearing === null) await this.play(seconds);
    else {
      this.pause();
      this.#seconds = this.#clamp(seconds);
    }
  }

  dispose(): void {
    this.#turn++;
    this.#halt();
    this.#ports.player.dispose();
  }

  async #sound(fromSeconds: number): Promise<void> {
    const turn = ++this.#turn;
    const { player, frames } = this.#ports;
    this.#seconds = this.#clamp(fromSeconds);
    this.#playing = true;
    // What sounded until now would go on while the next is made ready.
    this.#stopFrames?.();
    this.#stopFrames = null;
    player.pause();
    const passage = await this.#passage();
    if (turn !== this.#turn) return;
    const sounding = passage.ok
      ? await player.play({ fromSeconds: this.#seconds, speed: this.#speed, passage: passage.value })
      : passage;
    if (turn !== this.#turn) return;
    this.#problem = sounding.ok ? null : sounding.problem;
    if (!sounding.ok) this.#halt();
    else this.#stopFrames ??= frames.each(() => this.#follow());
  }

  async #passage(): Promise<Outcome<Passage | null>> {
    const hearing = this.#hearing;
    if (hearing === null) return good(this.#loop && { ...this.#loop, loops: true });
    const { fromSeconds, toSeconds } = hearing;
    const stretch = { fromSeconds, toSeconds, loops: false };
    if (hearing.notes === undefined) return good(stretch);
    const line = await this.#render(hearing, hearing.notes);
    return line.ok ? good({ ...stretch, ...(line.value && { line: line.value }) }) : line;
  }

  /** Notes are rendered slower, not stretched. */
  async #render(of: Hearing, notes: readonly HeardNote[]): Promise<Outcome<Passage['line']>> {
    const speed = this.#speed;
    if (this.#rendered?.of === of && this.#rendered.speed === speed) return good(this.#rendered.line);
    const slower = (seconds: number) => (seconds - of.fromSeconds) / speed;
    const sound = await this.#ports.render(
      notes.map((note) => ({
        ...note,
        onsetSeconds: slower(note.onsetSeconds),
        offsetSeconds: slower(note.offsetSeconds),
      })),
      slower(of.toSeconds),
    );
    if (!sound.ok) return sound;
    const { samples, sampleRate } = sound.value;
    const line = {
      samples: samples instanceof Int16Array ? fromPcm16(samples) : new Float32Array(samples),
      sampleRate,
    };
    this.#rendered = { of, speed, line };
    return good(line);
  }

  #follow(): void {
    if (this.#stopFrames !== null) this.#seconds = this.#clamp(this.#ports.player.positionSeconds());
  }

  #halt(): void {
    this.#playing = false;
    this.#stopFrames?.();
    this.#stopFrames = null;
  }

  #inLoop(seconds: number): number {
    const loop = this.#loop;
    return loop === null || (seconds >= loop.fromSeconds && seconds < loop.toSeconds)
      ? seconds
      : loop.fromSeconds;
  }

  #clamp(seconds: number): number {
    return Math.min(Math.max(seconds, 0), this.durationSeconds);
  }
}
