/** The sweeps of a sound check while they sound, and what the microphone records of them. */
import type { Hop } from '../audio/microphone/hop.ts';
import type { PlayingSounds } from '../audio/playback/play-sounds.ts';
import { bad, type Outcome } from '../core/base/outcome.ts';
import { fromPcm16 } from '../core/files/sound/pcm16.ts';
import {
  checkSweeps,
  judgeSweeps,
  SWEEP_GAP_SECONDS,
  type SweepResult,
} from '../core/room/check/sound-check.ts';
import type { AudioPort } from './ports.ts';
import { Recording } from './recording.ts';

export class SweepRecording {
  readonly #sweeps: readonly Float32Array<ArrayBuffer>[];
  readonly #playing: PlayingSounds;
  readonly #recording: Recording;
  /** Frames that are recorded behind each sweep. */
  readonly #tailFrames: number;
  readonly #lastFrame: number;
  readonly #ended: Promise<void>;
  #end: () => void = () => undefined;

  /** Plays the sweeps. */
  constructor(audio: Pick<AudioPort, 'playSounds'>, sampleRate: number) {
    this.#sweeps = checkSweeps(sampleRate);
    this.#playing = audio.playSounds(this.#sweeps, SWEEP_GAP_SECONDS);
    this.#recording = new Recording(sampleRate);
    this.#tailFrames = Math.round(SWEEP_GAP_SECONDS * sampleRate);
    this.#lastFrame = this.#playing.startFrames.at(-1)! + this.#sweeps.at(-1)!.length + this.#tailFrames;
    this.#ended = new Promise((resolve) => (this.#end = resolve));
  }

  add(hop: Hop): void {
    this.#recording.add(hop);
    if (hop.startFrame + hop.samples.length >= this.#lastFrame) this.#end();
  }

  /** Silences the sweeps and ends the recording before they are over. */
  stop(): void {
    this.#playing.stop();
    this.#end();
  }

  /** Resolves when the last sweep has been recorded, or after `stop`. */
  get ended(): Promise<void> {
    return this.#ended;
  }

  /** Measures with every sweep that was recorded without a hole; fails where there is none. */
  measure(): Outcome<SweepResult> {
    const { sampleRate, gaps } = this.#recording;
    const whole = this.#recording.whole();
    const firstFrame = Math.round((this.#recording.startSeconds ?? 0) * sampleRate);
    const recorded = this.#sweeps
      .map((sweep, i) => {
        const from = this.#playing.startFrames[i]! - firstFrame;
        return { sweep, from, to: from + sweep.length + this.#tailFrames };
      })
      .filter(({ from, to }) => !gaps.some(({ atFrame, frames }) => atFrame < to && atFrame + frames > from));
    if (recorded.length === 0) return bad('soundCheck.soundLost');
    return judgeSweeps(
      recorded.map(({ from, to }) => fromPcm16(whole.subarray(from, to))),
      recorded.map(({ sweep }) => sweep),
      sampleRate,
    );
  }
}
