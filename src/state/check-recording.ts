/** The sounds of a sound check while they are played, and what the microphone records of them. */
import type { Hop } from '../audio/microphone/hop.ts';
import type { PlayingSounds } from '../audio/playback/play-sounds.ts';
import type { Outcome } from '../core/base/outcome.ts';
import type { CheckSounds } from './check-sounds.ts';
import type { AudioPort } from './ports.ts';
import { Recording } from './recording.ts';

export class CheckRecording<Measured> {
  readonly #check: CheckSounds<Measured>;
  readonly #playing: PlayingSounds;
  readonly #recording: Recording;
  readonly #lastFrame: number;
  readonly #ended: Promise<void>;
  #end: () => void = () => undefined;

  /** Plays the sounds. */
  constructor(audio: Pick<AudioPort, 'playSounds'>, sampleRate: number, check: CheckSounds<Measured>) {
    this.#check = check;
    this.#playing = audio.playSounds(check.sounds, check.silenceSeconds);
    this.#recording = new Recording(sampleRate);
    this.#lastFrame = this.#playing.startFrames.at(-1)! + check.framesFromLastStart;
    this.#ended = new Promise((resolve) => (this.#end = resolve));
  }

  add(hop: Hop): void {
    this.#recording.add(hop);
    if (hop.startFrame + hop.samples.length >= this.#lastFrame) this.#end();
  }

  /** Silences the sounds and ends the recording before they are over. */
  stop(): void {
    this.#playing.stop();
    this.#end();
  }

  /** Resolves when everything has been recorded, or after `stop`. */
  get ended(): Promise<void> {
    return this.#ended;
  }

  measure(): Outcome<Measured> {
    return this.#check.measure(this.#recording, this.#playing.startFrames);
  }
}
